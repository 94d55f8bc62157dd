package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The nodes of a sphere by tiers: how many struts they are from the apex, which is every node of the largest z. */
final class Tiers {

    /** Nodes nearer to a meridian than this angle stand on it, whatever rounding says. */
    private static final double ON_MERIDIAN = 1e-9;

    /** Heights nearer than this are one height. */
    private static final double SAME_HEIGHT = 1e-9;

    private final SphereNet net;
    private final double[] coordinates;
    private final int[] tier;
    private final int[][] neighbours;
    private final int last;

    private Tiers(SphereNet net) {
        this.net = net;
        int nodes = net.nodeCount();
        this.coordinates = net.coordinates();
        this.tier = new int[nodes];
        this.neighbours = neighbours();
        this.last = spread();
    }

    static Tiers of(SphereSettings sphere) {
        return new Tiers(new SphereNet(sphere.base(), sphere.breakdown(), sphere.subdivision(), sphere.up()));
    }

    /** The number of the last tier of the whole sphere. */
    int last() {
        return last;
    }

    private double z(int node) {
        return coordinates[3 * node + 2];
    }

    // Tier by tier from the apex outward.
    private int spread() {
        double highest =
                IntStream.range(0, tier.length).mapToDouble(this::z).max().orElseThrow();
        Arrays.fill(tier, -1);
        int[] queue = new int[tier.length];
        int filled = 0;
        for (int node = 0; node < tier.length; node++) {
            if (z(node) >= highest - SAME_HEIGHT) {
                tier[node] = 0;
                queue[filled++] = node;
            }
        }
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
        int[][] found = new int[degree.length][];
        Arrays.setAll(found, node -> new int[degree[node]]);
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            int a = net.edgeA(edge);
            int b = net.edgeB(edge);
            found[a][--degree[a]] = b;
            found[b][--degree[b]] = a;
        }
        return found;
    }

    /** What is left of the sphere when the rest is cut off. */
    DomeParts cut(DomeSettings settings) {
        boolean[] kept = kept(settings.cut());
        // What the cut took a strut from stands on the ground; a node that has them all hangs above it.
        return parts(settings, kept, node -> kept(kept, node) < neighbours[node].length);
    }

    private boolean[] kept(Cut cut) {
        boolean[] kept = new boolean[tier.length];
        if (cut instanceof Cut.Tiers tiers) {
            mark(kept, node -> tier[node] <= tiers.last());
        } else {
            double above = ((Cut.Height) cut).above();
            mark(kept, node -> z(node) >= above - SAME_HEIGHT);
            dropLoose(kept);
        }
        return kept;
    }

    /** Whether a cut leaves the whole sphere. */
    boolean whole(Cut cut) {
        boolean[] kept = kept(cut);
        return IntStream.range(0, kept.length).allMatch(node -> kept[node]);
    }

    private static void mark(boolean[] kept, IntPredicate keep) {
        for (int node = 0; node < kept.length; node++) {
            kept[node] = keep.test(node);
        }
    }

    private int kept(boolean[] kept, int node) {
        int count = 0;
        for (int next : neighbours[node]) {
            count += kept[next] ? 1 : 0;
        }
        return count;
    }

    // A node that hangs on one strut holds nothing; without it the next may hang on one too.
    private void dropLoose(boolean[] kept) {
        boolean dropped = true;
        while (dropped) {
            dropped = false;
            for (int node = 0; node < kept.length; node++) {
                if (kept[node] && kept(kept, node) < 2) {
                    kept[node] = false;
                    dropped = true;
                }
            }
        }
    }

    private DomeParts parts(DomeSettings settings, boolean[] kept, IntPredicate foot) {
        int[] order = order(kept);
        int[] place = new int[tier.length];
        Arrays.fill(place, -1);
        int lastTier = order.length == 0 ? 0 : tier[order[order.length - 1]];
        int[] tierStart = new int[lastTier + 2];
        double[] placed = new double[3 * order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
            tierStart[tier[order[i]] + 1] = i + 1;
            System.arraycopy(coordinates, 3 * order[i], placed, 3 * i, 3);
        }
        int[] feet = IntStream.range(0, order.length)
                .filter(i -> foot.test(order[i]))
                .toArray();
        NodeNames names = NodeNames.tiers(tierStart, settings.tiersFromFoot());
        return new DomeParts(settings, placed, placed, members(place), new Role[0], names, feet, new double[0]);
    }

    // By tier, by turn, and on one meridian by height: turns that differ by rounding alone are one.
    private int[] order(boolean[] kept) {
        double[] turns = new double[tier.length];
        Arrays.setAll(turns, node -> turn(net.node(node)));
        Comparator<Integer> byTurn =
                Comparator.<Integer>comparingInt(node -> tier[node]).thenComparingDouble(node -> turns[node]);
        Integer[] order = IntStream.range(0, tier.length)
                .filter(node -> kept[node])
                .boxed()
                .sorted(byTurn)
                .toArray(Integer[]::new);
        for (int i = 1; i < order.length; i++) {
            boolean oneTier = tier[order[i]] == tier[order[i - 1]];
            if (oneTier && turns[order[i]] - turns[order[i - 1]] < ON_MERIDIAN) {
                turns[order[i]] = turns[order[i - 1]];
            }
        }
        Arrays.sort(
                order,
                byTurn.thenComparing(
                        Comparator.comparingDouble((Integer node) -> z(node)).reversed()));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
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

    // Clockwise from the +x meridian seen from above, from 0 to below a full turn; a pole stands on that meridian.
    private static double turn(Vec3 at) {
        if (at.x() * at.x() + at.y() * at.y() < ON_MERIDIAN * ON_MERIDIAN) {
            return 0;
        }
        double clockwise = -StrictMath.atan2(at.y(), at.x());
        double turn = clockwise < 0 ? clockwise + 2 * StrictMath.PI : clockwise;
        return turn > 2 * StrictMath.PI - ON_MERIDIAN || turn < ON_MERIDIAN ? 0 : turn;
    }
}
