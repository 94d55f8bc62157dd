package collarwright.dome;

import collarwright.geometry.Vec3;

/**
 * Names for the points of the grids on all triangles of a base: the corners that have a part of the point, in their order,
 * and their parts. Points on a shared edge or corner have one name, whichever triangle they are seen in.
 */
final class NodeKeys {

    private static final int NO_CORNER = 15;
    private static final int PART_BITS = 15;
    private static final long PART = (1 << PART_BITS) - 1;

    private NodeKeys() {}

    /** Corners with a part of the point, in their order; then the parts of the first two. */
    static long key(int[] face, int[] parts) {
        long a = held(face[0], parts[0]);
        long b = held(face[1], parts[1]);
        long c = held(face[2], parts[2]);
        long low = StrictMath.min(StrictMath.min(a, b), c);
        long high = StrictMath.max(StrictMath.max(a, b), c);
        long mid = a + b + c - low - high;
        long corners = (low >> PART_BITS) << 8 | (mid >> PART_BITS) << 4 | high >> PART_BITS;
        return ((corners << PART_BITS) | (low & PART)) << PART_BITS | (mid & PART);
    }

    private static long held(int corner, int part) {
        return part == 0 ? (long) NO_CORNER << PART_BITS : ((long) corner << PART_BITS) | part;
    }

    /** The point that a key names, on a grid of so many parts. */
    static Vec3 point(long key, int whole, FacePoints points) {
        int[] corner = new int[3];
        int count = 0;
        for (int i = 0; i < 3; i++) {
            corner[i] = (int) (key >> (4 * (2 - i) + 2 * PART_BITS)) & NO_CORNER;
            count += corner[i] == NO_CORNER ? 0 : 1;
        }
        int first = (int) (key >> PART_BITS & PART);
        int second = (int) (key & PART);
        return points.at(count, corner, new int[] {first, second, whole - first - second});
    }
}
