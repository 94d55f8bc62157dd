package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The nodes of a sphere by tiers: how many struts they are from the apex, the node at +z. */
final class Tiers {

    /** Nodes nearer to the +x meridian than this angle stand on it, whatever rounding says. */
    private static final double ON_MERIDIAN = 1e-9;

    private final SphereNet net;
    private final int[] tier;
    private final int last;

    Tiers(SphereNet net) {
        this.net = net;
        this.tier = new int[net.nodeCount()];
        this.last = spread(apex());
    }

    /** The number of the last tier of the whole sphere. */
    int last() {
        return last;
    }

    private int apex() {
        return IntStream.range(0, net.nodeCount())
                .boxed()
                .max(Comparator.comparingDouble(node -> net.node(node).z()))
                .orElseThrow();
    }

    // Tier by tier from the apex outward.
    private int spread(int apex) {
        int[][] neighbours = neighbours();
        Arrays.fill(tier, -1);
        int[] queue = new int[tier.length];
        queue[0] = apex;
        tier[apex] = 0;
        int filled = 1;
        for (int at = 0; at < filled; at++) {
            for (int next : neighbours[queue[at]]) {
                if (tier[next] < 0) {
                    tier[next] = tier[queue[at]] + 1;
                    queue[filled++] = next;
                }
            }
        }
        return tier[queue[filled - 1]];
    }

    private int[][] neighbours() {
        int[] degree = new int[net.nodeCount()];
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            degree[net.edgeA(edge)]++;
            degree[net.edgeB(edge)]++;
        }
        int[][] neighbours = new int[degree.length][];
        Arrays.setAll(neighbours, node -> new int[degree[node]]);
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            int a = net.edgeA(edge);
            int b = net.edgeB(edge);
            neighbours[a][--degree[a]] = b;
            neighbours[b][--degree[b]] = a;
        }
        return neighbours;
    }

    /** The dome that is left of the sphere when the tiers after the last row are cut off. */
    Dome cut(DomeSettings settings) {
        List<Integer> kept = IntStream.range(0, tier.length)
                .filter(node -> tier[node] <= settings.rows())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(node -> tier[node])
                        .thenComparingDouble(node -> turn(net.node(node)))
                        .thenComparing(Comparator.<Integer>comparingDouble(
                                        node -> net.node(node).z())
                                .reversed()))
                .toList();
        int[] place = new int[tier.length];
        Arrays.fill(place, -1);
        int[] tierStart = new int[settings.rows() + 2];
        double[] coordinates = new double[3 * kept.size()];
        for (int i = 0; i < kept.size(); i++) {
            int node = kept.get(i);
            place[node] = i;
            tierStart[tier[node] + 1] = i + 1;
            Vec3 at = net.node(node);
            coordinates[3 * i] = at.x();
            coordinates[3 * i + 1] = at.y();
            coordinates[3 * i + 2] = at.z();
        }
        return new Dome(settings, coordinates, tierStart, members(place));
    }

    private int[] members(int[] place) {
        long size = place.length;
        long[] kept = IntStream.range(0, net.edgeCount())
                .filter(e -> place[net.edgeA(e)] >= 0 && place[net.edgeB(e)] >= 0)
                .mapToLong(e -> {
                    int a = place[net.edgeA(e)];
                    int b = place[net.edgeB(e)];
                    return StrictMath.min(a, b) * size + StrictMath.max(a, b);
                })
                .sorted()
                .toArray();
        int[] members = new int[2 * kept.length];
        for (int i = 0; i < kept.length; i++) {
            members[2 * i] = (int) (kept[i] / size);
            members[2 * i + 1] = (int) (kept[i] % size);
        }
        return members;
    }

    // Clockwise from the +x meridian seen from above, from 0 to below a full turn.
    private static double turn(Vec3 at) {
        double clockwise = -StrictMath.atan2(at.y(), at.x());
        double turn = clockwise < 0 ? clockwise + 2 * StrictMath.PI : clockwise;
        return turn > 2 * StrictMath.PI - ON_MERIDIAN || turn < ON_MERIDIAN ? 0 : turn;
    }
}
