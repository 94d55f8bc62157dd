package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;

/**
 * Turns the axes of a frame's hubs to one side of it.
 *
 * <p>Steps: 1. along a member, the axis of one end is mirrored in the plane that halves the member: on any round or flat
 * surface it then lies on the axis of the other end. How well it does so, from −1 to 1, tells whether the two face one
 * side. 2. Members are taken in the order of how clearly they tell, and join the hubs to trees; each hub's sense follows
 * from its tree. 3. Each tree as a whole faces away from the middle of its hubs where it is round enough to have an inside;
 * or else up, if it has an upper side; or else away from the middle all the same; a plane wall along +x, or +y.
 */
final class Outward {

    /**
     * A frame is round when its axes reach outward by this share of the hubs' distances from their middle: about what a cap
     * of a sphere has that is seen from the centre under 40° from its axis. Our choice, no source.
     */
    private static final double ROUND = 0.5;

    /** A frame whose axes reach up by this on the mean has an upper side. Our choice, no source. */
    private static final double UPPER = 0.1;

    /** Shares below this are 0. */
    private static final double NOTHING = 1e-6;

    private final DomeParts parts;
    private final double[] axes;
    private final int[] above;
    private final boolean[] flipped;

    private Outward(DomeParts parts, double[] axes) {
        this.parts = parts;
        this.axes = axes;
        this.above = new int[parts.nodeCount()];
        this.flipped = new boolean[parts.nodeCount()];
        Arrays.setAll(above, node -> node);
    }

    /**
     * Turns axes.
     *
     * @param parts nodes and members
     * @param axes three for each node, unit, of either sense; those that are NaN stay so
     */
    static void turn(DomeParts parts, double[] axes) {
        Outward outward = new Outward(parts, axes);
        outward.join();
        outward.face();
    }

    /** How well the axes of a member's ends face one side: 1 wholly, −1 when they face opposite sides. */
    static double facing(DomeParts parts, double[] axes, int member) {
        int a = parts.members()[2 * member];
        int b = parts.members()[2 * member + 1];
        Vec3 along = parts.node(b).minus(parts.node(a)).unit();
        Vec3 end = DomeParts.vector(axes, b);
        return DomeParts.vector(axes, a).dot(end.minus(along.times(2 * end.dot(along))));
    }

    private void join() {
        long[] order = new long[parts.memberCount()];
        int count = 0;
        for (int m = 0; m < parts.memberCount(); m++) {
            double clear = StrictMath.abs(facing(parts, axes, m));
            if (!Double.isNaN(clear)) {
                // The bits of a float that is not negative are in the order of its value.
                float doubt = (float) StrictMath.max(0, 1 - clear);
                order[count++] = (long) Float.floatToIntBits(doubt) << Integer.SIZE | m;
            }
        }
        Arrays.sort(order, 0, count);
        for (int i = 0; i < count; i++) {
            int m = (int) order[i];
            join(parts.members()[2 * m], parts.members()[2 * m + 1], facing(parts, axes, m) < 0);
        }
    }

    private void join(int a, int b, boolean opposite) {
        int rootA = root(a);
        int rootB = root(b);
        if (rootA != rootB) {
            int low = StrictMath.min(rootA, rootB);
            int high = StrictMath.max(rootA, rootB);
            above[high] = low;
            flipped[high] = opposite ^ flippedOf(a, rootA) ^ flippedOf(b, rootB);
        }
    }

    // After a root is found, each node on the way hangs on it directly.
    private int root(int node) {
        int root = node;
        boolean sense = false;
        while (above[root] != root) {
            sense ^= flipped[root];
            root = above[root];
        }
        for (int at = node; above[at] != root && at != root; ) {
            int next = above[at];
            boolean rest = sense ^ flipped[at];
            above[at] = root;
            flipped[at] = sense;
            sense = rest;
            at = next;
        }
        return root;
    }

    private boolean flippedOf(int node, int root) {
        return node != root && flipped[node];
    }

    private void face() {
        int nodes = parts.nodeCount();
        double[] middles = new double[3 * nodes];
        int[] sizes = new int[nodes];
        for (int node = 0; node < nodes; node++) {
            int root = root(node);
            sizes[root]++;
            DomeParts.put(middles, root, DomeParts.vector(middles, root).plus(parts.node(node)));
        }
        double[] out = new double[nodes];
        double[] reach = new double[nodes];
        double[] sums = new double[3 * nodes];
        for (int node = 0; node < nodes; node++) {
            Vec3 axis = sensed(node);
            if (!Double.isNaN(axis.x())) {
                int root = root(node);
                Vec3 from =
                        parts.node(node).minus(DomeParts.vector(middles, root).times(1.0 / sizes[root]));
                out[root] += axis.dot(from);
                reach[root] += from.norm();
                DomeParts.put(sums, root, DomeParts.vector(sums, root).plus(axis));
            }
        }
        boolean[] inward = new boolean[nodes];
        for (int root = 0; root < nodes; root++) {
            inward[root] =
                    inward(out[root] / reach[root], DomeParts.vector(sums, root).times(1.0 / sizes[root]));
        }
        for (int node = 0; node < nodes; node++) {
            Vec3 axis = sensed(node);
            DomeParts.put(axes, node, inward[root(node)] ? axis.times(-1) : axis);
        }
    }

    private Vec3 sensed(int node) {
        Vec3 axis = DomeParts.vector(axes, node);
        return flippedOf(node, root(node)) ? axis.times(-1) : axis;
    }

    private static boolean inward(double out, Vec3 mean) {
        if (StrictMath.abs(out) > ROUND) {
            return out < 0;
        }
        if (StrictMath.abs(mean.z()) > UPPER) {
            return mean.z() < 0;
        }
        for (double way : new double[] {out, mean.x(), mean.y()}) {
            if (StrictMath.abs(way) > NOTHING) {
                return way < 0;
            }
        }
        return false;
    }
}
