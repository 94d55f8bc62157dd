package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Finds nodes of a net by their place, and compares whole nets as sets of segments. */
final class NodeFinder {

    private final SphereNet net;
    private final double same;
    private final Map<List<Long>, List<Integer>> cells = new HashMap<>();

    NodeFinder(SphereNet net, double same) {
        this.net = net;
        this.same = same;
        for (int node = 0; node < net.nodeCount(); node++) {
            cells.computeIfAbsent(cell(net.node(node), 0, 0, 0), k -> new ArrayList<>())
                    .add(node);
        }
    }

    private List<Long> cell(Vec3 at, int x, int y, int z) {
        return List.of(part(at.x()) + x, part(at.y()) + y, part(at.z()) + z);
    }

    private long part(double value) {
        return (long) StrictMath.floor(value / (4 * same));
    }

    /** The node at a place; −1 if there is none, or more than one. */
    int at(Vec3 place) {
        List<Integer> found = new ArrayList<>();
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                for (int z = -1; z <= 1; z++) {
                    for (int node : cells.getOrDefault(cell(place, x, y, z), List.of())) {
                        if (net.node(node).minus(place).norm() <= same) {
                            found.add(node);
                        }
                    }
                }
            }
        }
        return found.size() == 1 ? found.get(0) : -1;
    }

    /** The net's edges as pairs of its nodes, the lower first. */
    static Set<List<Integer>> segments(SphereNet net) {
        Set<List<Integer>> segments = new HashSet<>();
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            segments.add(List.of(net.edgeA(edge), net.edgeB(edge)));
        }
        return segments;
    }

    /** Another net's segments, moved, as pairs of this net's nodes. */
    Set<List<Integer>> segments(SphereNet other, UnaryOperator<Vec3> moved) {
        Set<List<Integer>> segments = new HashSet<>();
        for (int edge = 0; edge < other.edgeCount(); edge++) {
            int a = at(moved.apply(other.node(other.edgeA(edge))));
            int b = at(moved.apply(other.node(other.edgeB(edge))));
            segments.add(List.of(StrictMath.min(a, b), StrictMath.max(a, b)));
        }
        return segments;
    }
}
