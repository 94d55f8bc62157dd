package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import java.util.Arrays;

/**
 * Finds members that meet away from a common node: that cross, lie on each other, or end on another's length.
 *
 * <p>Each member is sampled at steps of half a cell and put into the cells of its samples; two members that meet have
 * samples in cells that touch.
 */
final class Crossings {

    private final FrameNet net;
    private final double tolerance;
    private final double cell;
    private int[] heads = new int[0];
    private final Ints next = new Ints();
    private final Ints held = new Ints();
    private final Ints cells = new Ints();

    Crossings(FrameNet net, double tolerance) {
        this.net = net;
        this.tolerance = tolerance;
        double sum = 0;
        double longest = 0;
        for (int m = 0; m < net.memberCount(); m++) {
            double length = along(m).norm();
            sum += length;
            longest = StrictMath.max(longest, length);
        }
        // About a member's length, but never so fine that one long member fills a thousand cells.
        this.cell = StrictMath.max(StrictMath.max(sum / net.memberCount(), longest / 200), 4 * tolerance);
    }

    private Vec3 along(int member) {
        return net.node(net.memberB(member)).minus(net.node(net.memberA(member)));
    }

    void tell(RawFrame raw) {
        heads = new int[Integer.highestOneBit(StrictMath.max(16, 4 * net.memberCount()))];
        Arrays.fill(heads, -1);
        int[] seen = new int[net.memberCount()];
        Arrays.fill(seen, -1);
        for (int m = 0; m < net.memberCount(); m++) {
            int steps = steps(m);
            for (int i = 0; i <= steps; i++) {
                look(raw, m, sample(m, i, steps), seen);
            }
            long last = Long.MIN_VALUE;
            for (int i = 0; i <= steps; i++) {
                Vec3 at = sample(m, i, steps);
                long key = key(cell(at.x()), cell(at.y()), cell(at.z()));
                if (key != last) {
                    put(m, key);
                }
                last = key;
            }
        }
    }

    private int steps(int member) {
        return (int) StrictMath.ceil(2 * along(member).norm() / cell);
    }

    private Vec3 sample(int member, int step, int steps) {
        return net.node(net.memberA(member)).plus(along(member).times((double) step / steps));
    }

    private long cell(double coordinate) {
        return (long) StrictMath.floor(coordinate / cell);
    }

    private static long key(long x, long y, long z) {
        long hash = (x * 0x9E3779B97F4A7C15L) ^ (y * 0xC2B2AE3D27D4EB4FL) ^ (z * 0x165667B19E3779F9L);
        return hash ^ (hash >>> 29);
    }

    private int slot(long key) {
        return (int) (key & (heads.length - 1));
    }

    private void put(int member, long key) {
        held.add(member);
        cells.add((int) (key >>> 32));
        next.add(heads[slot(key)]);
        heads[slot(key)] = held.size() - 1;
    }

    private void look(RawFrame raw, int member, Vec3 at, int[] seen) {
        long x = cell(at.x());
        long y = cell(at.y());
        long z = cell(at.z());
        for (int shift = 0; shift < 27; shift++) {
            long key = key(x + shift / 9 - 1, y + shift / 3 % 3 - 1, z + shift % 3 - 1);
            for (int i = heads[slot(key)]; i >= 0; i = next.get(i)) {
                int other = held.get(i);
                if (cells.get(i) == (int) (key >>> 32) && seen[other] != member) {
                    seen[other] = member;
                    compare(raw, other, member);
                }
            }
        }
    }

    private void compare(RawFrame raw, int first, int second) {
        int a = net.memberA(first);
        int b = net.memberB(first);
        int c = net.memberA(second);
        int d = net.memberB(second);
        if (a == c || a == d || b == c || b == d) {
            return;
        }
        double apart = Segments.apart(net.node(a), net.node(b), net.node(c), net.node(d));
        if (apart < tolerance) {
            raw.stop(
                    Code.FRAME_CROSSING,
                    new Where.Part(raw.file() + " / members " + named(first) + " and " + named(second)),
                    "members that meet at their nodes only",
                    "they come within " + collarwright.units.Decimals.fixed(apart, 3) + " mm of each other",
                    "put a node where they meet, or take one of them out");
        }
    }

    private String named(int member) {
        return number(net.memberA(member)) + "/" + number(net.memberB(member));
    }

    private String number(int node) {
        String digits = Integer.toString(node + 1);
        int width = StrictMath.max(3, Integer.toString(net.nodeCount()).length());
        return "N" + "0".repeat(width - digits.length()) + digits;
    }
}
