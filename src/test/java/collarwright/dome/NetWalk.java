package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Walks on a net: knows its nodes' places and its edges only, nothing of grids, bases or T. */
final class NetWalk {

    private final SphereNet net;
    private final List<List<Integer>> neighbours = new ArrayList<>();

    NetWalk(SphereNet net) {
        this.net = net;
        for (int node = 0; node < net.nodeCount(); node++) {
            neighbours.add(new ArrayList<>());
        }
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            neighbours.get(net.edgeA(edge)).add(net.edgeB(edge));
            neighbours.get(net.edgeB(edge)).add(net.edgeA(edge));
        }
        for (int node = 0; node < net.nodeCount(); node++) {
            int centre = node;
            neighbours.get(node).sort(Comparator.comparingDouble(other -> turn(centre, other)));
        }
    }

    // Counter-clockwise seen from outside, from any direction.
    private double turn(int centre, int other) {
        Vec3 up = net.node(centre);
        Vec3 ahead = up.cross(StrictMath.abs(up.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0));
        Vec3 to = net.node(other);
        return StrictMath.atan2(to.dot(up.cross(ahead)), to.dot(ahead));
    }

    /** The neighbours of a node, counter-clockwise seen from outside. */
    List<Integer> neighbours(int node) {
        return List.copyOf(neighbours.get(node));
    }

    /** Nodes with as many struts as told. */
    List<Integer> withStruts(int count) {
        return IntStream.range(0, net.nodeCount())
                .filter(node -> neighbours.get(node).size() == count)
                .boxed()
                .toList();
    }

    /** Where one gets after coming from one node to the next and turning left by so many gaps from straight on. */
    int onward(int from, int at, int left) {
        List<Integer> round = neighbours.get(at);
        return round.get((round.indexOf(from) + 3 + left) % round.size());
    }

    /** All faces, found by keeping right at every node: counter-clockwise seen from outside, each once. */
    List<List<Integer>> faces() {
        Set<List<Integer>> done = new HashSet<>();
        List<List<Integer>> faces = new ArrayList<>();
        for (int a = 0; a < net.nodeCount(); a++) {
            for (int b : neighbours.get(a)) {
                if (!done.contains(List.of(a, b))) {
                    faces.add(face(a, b, done));
                }
            }
        }
        return faces;
    }

    private List<Integer> face(int a, int b, Set<List<Integer>> done) {
        List<Integer> face = new ArrayList<>();
        int from = a;
        int at = b;
        while (done.add(List.of(from, at))) {
            face.add(from);
            List<Integer> round = neighbours.get(at);
            int next = round.get((round.indexOf(from) + round.size() - 1) % round.size());
            from = at;
            at = next;
        }
        return face;
    }
}
