package collarwright.frame;

import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Finds members that meet away from a common node: that cross, lie on each other, or end on another's length.
 *
 * <p>Members are sorted by length into levels, each with cells of a power of two that is longer than its members. A member
 * is sampled at steps of half a cell and put into the cells of its samples; it is compared with what stands in touching
 * cells of its own and of all coarser levels. So a long member among many short ones costs no more than a short one.
 */
public final class Crossings {

    private final FrameNet net;
    private final IntPredicate wanted;
    private final double tolerance;
    private final int finest;
    private final boolean[] levels;
    private final Ints next = new Ints();
    private final Ints held = new Ints();
    private final Ints cells = new Ints();
    private final int[] levelOf;
    private int[] heads = {};

    /** Takes what was found. */
    @FunctionalInterface
    public interface Meeting {
        /**
         * Two members that meet.
         *
         * @param first the member that comes first
         * @param second the other
         * @param apart least distance of their axes, in the frame's unit
         */
        void found(int first, int second, double apart);
    }

    private Crossings(FrameNet net, IntPredicate wanted, double tolerance) {
        this.net = net;
        this.wanted = wanted;
        this.tolerance = tolerance;
        // Cells of four tolerances: what meets then has samples in cells that touch.
        this.finest = StrictMath.getExponent(4 * tolerance);
        this.levelOf = new int[net.memberCount()];
        int coarsest = 0;
        for (int m = 0; m < levelOf.length; m++) {
            levelOf[m] = StrictMath.max(0, StrictMath.getExponent(along(m).norm()) - finest);
            coarsest = StrictMath.max(coarsest, levelOf[m]);
        }
        this.levels = new boolean[coarsest + 1];
    }

    /**
     * Finds the pairs of members that come nearer to each other than a distance and have no node in common.
     *
     * @param net the frame
     * @param wanted members of which one at least is in each pair
     * @param tolerance the distance, above 0
     * @param meeting takes each pair once
     */
    public static void each(FrameNet net, IntPredicate wanted, double tolerance, Meeting meeting) {
        new Crossings(net, wanted, tolerance).look(meeting);
    }

    private Vec3 along(int member) {
        return net.node(net.memberB(member)).minus(net.node(net.memberA(member)));
    }

    private double cell(int level) {
        return StrictMath.scalb(1.0, finest + level + 1);
    }

    private void look(Meeting meeting) {
        heads = new int[Integer.highestOneBit(StrictMath.max(16, 4 * net.memberCount()))];
        Arrays.fill(heads, -1);
        for (int m = 0; m < net.memberCount(); m++) {
            put(m);
        }
        int[] seen = new int[net.memberCount()];
        Arrays.fill(seen, -1);
        for (int m = 0; m < net.memberCount(); m++) {
            for (int level = levelOf[m]; level < levels.length; level++) {
                if (levels[level]) {
                    look(m, level, seen, meeting);
                }
            }
        }
    }

    private void put(int member) {
        int level = levelOf[member];
        levels[level] = true;
        int steps = steps(member, level);
        long last = 0;
        for (int i = 0; i <= steps; i++) {
            Vec3 at = sample(member, i, steps);
            long key = key(level, cell(at.x(), level), cell(at.y(), level), cell(at.z(), level));
            if (i == 0 || key != last) {
                held.add(member);
                cells.add((int) (key >>> 32));
                next.add(heads[slot(key)]);
                heads[slot(key)] = held.size() - 1;
            }
            last = key;
        }
    }

    private int steps(int member, int level) {
        return StrictMath.max(1, (int) StrictMath.ceil(2 * along(member).norm() / cell(level)));
    }

    private Vec3 sample(int member, int step, int steps) {
        return net.node(net.memberA(member)).plus(along(member).times((double) step / steps));
    }

    private long cell(double coordinate, int level) {
        return (long) StrictMath.floor(coordinate / cell(level));
    }

    private static long key(int level, long x, long y, long z) {
        long hash = (x * 0x9E3779B97F4A7C15L)
                ^ (y * 0xC2B2AE3D27D4EB4FL)
                ^ (z * 0x165667B19E3779F9L)
                ^ (level * 0x27D4EB2F165667C5L);
        return hash ^ (hash >>> 29);
    }

    private int slot(long key) {
        return (int) (key & (heads.length - 1));
    }

    private void look(int member, int level, int[] seen, Meeting meeting) {
        int steps = steps(member, level);
        for (int step = 0; step <= steps; step++) {
            Vec3 at = sample(member, step, steps);
            long x = cell(at.x(), level);
            long y = cell(at.y(), level);
            long z = cell(at.z(), level);
            for (int shift = 0; shift < 27; shift++) {
                long key = key(level, x + shift / 9 - 1, y + shift / 3 % 3 - 1, z + shift % 3 - 1);
                for (int i = heads[slot(key)]; i >= 0; i = next.get(i)) {
                    int other = held.get(i);
                    // Within a level each pair is met from both sides; the later one tells it.
                    boolean again = levelOf[other] == levelOf[member] && other >= member;
                    if (!again && cells.get(i) == (int) (key >>> 32) && seen[other] != member) {
                        seen[other] = member;
                        compare(StrictMath.min(member, other), StrictMath.max(member, other), meeting);
                    }
                }
            }
        }
    }

    private void compare(int first, int second, Meeting meeting) {
        int a = net.memberA(first);
        int b = net.memberB(first);
        int c = net.memberA(second);
        int d = net.memberB(second);
        if (a == c || a == d || b == c || b == d || !(wanted.test(first) || wanted.test(second))) {
            return;
        }
        double apart = Segments.apart(net.node(a), net.node(b), net.node(c), net.node(d));
        if (apart < tolerance) {
            meeting.found(first, second, apart);
        }
    }
}
