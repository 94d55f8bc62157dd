package collarwright.frame;

import java.util.Arrays;

/** Finds the point that a new one coincides with, by cells of the tolerance's size. */
final class PointGrid {

    private final double tolerance;
    private final double cell;
    private final Doubles points = new Doubles();
    private final Ints next = new Ints();
    private int[] heads = new int[1 << 12];

    /**
     * An empty grid.
     *
     * @param tolerance points nearer than this, or exactly equal, are one
     */
    PointGrid(double tolerance) {
        this.tolerance = tolerance;
        this.cell = StrictMath.max(tolerance, 1e-9);
        Arrays.fill(heads, -1);
    }

    int size() {
        return next.size();
    }

    double coordinate(int index) {
        return points.get(index);
    }

    /** The index of the first point that this one coincides with, or of this one itself, which is then kept. */
    int index(double x, double y, double z) {
        long cx = cell(x);
        long cy = cell(y);
        long cz = cell(z);
        int found = -1;
        for (int shift = 0; shift < 27; shift++) {
            int slot = slot(cx + shift / 9 - 1, cy + shift / 3 % 3 - 1, cz + shift % 3 - 1);
            for (int at = heads[slot]; at >= 0; at = next.get(at)) {
                if ((found < 0 || at < found) && near(at, x, y, z)) {
                    found = at;
                }
            }
        }
        return found >= 0 ? found : keep(x, y, z, slot(cx, cy, cz));
    }

    private int keep(double x, double y, double z, int slot) {
        points.add(x);
        points.add(y);
        points.add(z);
        next.add(heads[slot]);
        heads[slot] = next.size() - 1;
        if (next.size() > heads.length) {
            grow();
        }
        return next.size() - 1;
    }

    // Chains are rebuilt in a table twice as large.
    private void grow() {
        int[] kept = new int[next.size()];
        heads = new int[2 * heads.length];
        Arrays.fill(heads, -1);
        for (int at = 0; at < kept.length; at++) {
            int slot = slot(cell(points.get(3 * at)), cell(points.get(3 * at + 1)), cell(points.get(3 * at + 2)));
            kept[at] = heads[slot];
            heads[slot] = at;
        }
        next.set(kept);
    }

    private boolean near(int at, double x, double y, double z) {
        double dx = points.get(3 * at) - x;
        double dy = points.get(3 * at + 1) - y;
        double dz = points.get(3 * at + 2) - z;
        double square = dx * dx + dy * dy + dz * dz;
        return square == 0 || square < tolerance * tolerance;
    }

    private long cell(double coordinate) {
        return (long) StrictMath.floor(coordinate / cell);
    }

    private int slot(long x, long y, long z) {
        long hash = (x * 0x9E3779B97F4A7C15L) ^ (y * 0xC2B2AE3D27D4EB4FL) ^ (z * 0x165667B19E3779F9L);
        hash ^= hash >>> 29;
        return (int) (hash & (heads.length - 1));
    }
}
