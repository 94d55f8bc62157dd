package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.List;

/**
 * A whole sphere: the grid of a breakdown on every face of the base, pushed out to the unit sphere and turned so that
 * what is to be up is up.
 *
 * <p>A grid point is a whole-number mixture of the corners of its face, in parts of T. Points on a shared edge or corner
 * are one node, because a node is named by those corners and parts alone. A line of the grid that leaves a face goes on in
 * the face beyond the edge, folded flat into the same plane.
 */
final class SphereNet {

    private static final int NO_CORNER = 15;
    private static final int PART_BITS = 15;

    private final Breakdown breakdown;
    private final List<Vec3> corners;
    private final List<int[]> faces;
    private final int[] beyond = new int[(NO_CORNER + 1) * (NO_CORNER + 1)];
    private final long[] keys;
    private final long[] edges;
    private final double[] coordinates;

    SphereNet(SphereSettings sphere) {
        this.breakdown = sphere.breakdown();
        Base base = sphere.base();
        this.corners = base.corners();
        this.faces = base.faces();
        for (int[] face : faces) {
            for (int k = 0; k < 3; k++) {
                beyond[side(face[(k + 1) % 3], face[k])] = face[(k + 2) % 3];
            }
        }
        this.keys = nodes();
        this.edges = edges();
        this.coordinates = coordinates(sphere);
    }

    private static int side(int from, int to) {
        return from * (NO_CORNER + 1) + to;
    }

    int nodeCount() {
        return keys.length;
    }

    /** Members in the order of their first and second node, the first the lower one. */
    int edgeCount() {
        return edges.length;
    }

    int edgeA(int edge) {
        return (int) (edges[edge] / keys.length);
    }

    int edgeB(int edge) {
        return (int) (edges[edge] % keys.length);
    }

    Vec3 node(int node) {
        return DomeParts.vector(coordinates, node);
    }

    /** Three for each node. They belong to the net. */
    double[] coordinates() {
        return coordinates;
    }

    private double[] coordinates(SphereSettings sphere) {
        Turned turned = Turned.of(sphere, corners, faces.get(0));
        boolean arcs = sphere.subdivision() == Subdivision.ARCS;
        EqualArcs equalArcs = new EqualArcs(breakdown.b());
        double[] found = new double[3 * keys.length];
        int[] corner = new int[3];
        int[] part = new int[3];
        for (int node = 0; node < keys.length; node++) {
            unpack(keys[node], corner, part);
            Vec3 at = arcs ? equalArcs.node(corners, corner, part) : onChords(corner, part);
            DomeParts.put(found, node, turned.apply(at));
        }
        return found;
    }

    private void unpack(long key, int[] corner, int[] part) {
        for (int i = 0; i < 3; i++) {
            corner[i] = (int) (key >> (4 * (2 - i) + 2 * PART_BITS)) & NO_CORNER;
        }
        part[0] = (int) (key >> PART_BITS) & ((1 << PART_BITS) - 1);
        part[1] = (int) key & ((1 << PART_BITS) - 1);
        part[2] = breakdown.t() - part[0] - part[1];
        for (int i = 0; i < 3; i++) {
            part[i] = corner[i] == NO_CORNER ? 0 : part[i];
        }
    }

    private Vec3 onChords(int[] corner, int[] part) {
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < 3; i++) {
            if (part[i] > 0) {
                sum = sum.plus(corners.get(corner[i]).times(part[i]));
            }
        }
        return sum.unit();
    }

    private long[] nodes() {
        long[] found = new long[faces.size() * (breakdown.t() + 3 * (breakdown.b() + breakdown.c()) + 3)];
        int[] count = {0};
        for (int[] face : faces) {
            onGrid((x, y) -> found[count[0]++] = key(face, parts(x, y)));
        }
        return Arrays.stream(found, 0, count[0]).sorted().distinct().toArray();
    }

    /** A point of the grid. */
    private interface Point {
        void at(int x, int y);
    }

    // The face's corners lie at (0, 0), (b, c) and (−c, b + c).
    private void onGrid(Point point) {
        for (int y = 0; y <= breakdown.b() + breakdown.c(); y++) {
            for (int x = -breakdown.c(); x <= breakdown.b(); x++) {
                if (inside(parts(x, y))) {
                    point.at(x, y);
                }
            }
        }
    }

    private int[] parts(int x, int y) {
        int b = breakdown.b();
        int c = breakdown.c();
        int second = x * (b + c) + y * c;
        int third = b * y - c * x;
        return new int[] {breakdown.t() - second - third, second, third};
    }

    private static boolean inside(int[] parts) {
        return parts[0] >= 0 && parts[1] >= 0 && parts[2] >= 0;
    }

    // Corners with a part of the node, in their order; then the parts of the first two.
    private static long key(int[] face, int[] parts) {
        long[] held = new long[3];
        for (int i = 0; i < 3; i++) {
            held[i] = parts[i] == 0 ? (long) NO_CORNER << PART_BITS : ((long) face[i] << PART_BITS) | parts[i];
        }
        Arrays.sort(held);
        long key = 0;
        for (long h : held) {
            key = (key << 4) | (h >> PART_BITS);
        }
        long mask = (1 << PART_BITS) - 1;
        return (((key << PART_BITS) | (held[0] & mask)) << PART_BITS) | (held[1] & mask);
    }

    private long[] edges() {
        int t = breakdown.t();
        long[] found = new long[6 * faces.size() * (t + 3 * (breakdown.b() + breakdown.c()) + 3)];
        int[] count = {0};
        for (int[] face : faces) {
            onGrid((x, y) -> {
                int from = index(key(face, parts(x, y)));
                // The six neighbours on the grid, along its first axis and the axis 60° to the left of it.
                for (int step = 0; step < 6; step++) {
                    int right = step == 0 || step == 5 ? 1 : step == 2 || step == 3 ? -1 : 0;
                    int left = step == 1 || step == 2 ? 1 : step == 4 || step == 5 ? -1 : 0;
                    int to = reached(face, parts(x + right, y + left));
                    if (to > from) {
                        found[count[0]++] = (long) from * keys.length + to;
                    }
                }
            });
        }
        return Arrays.stream(found, 0, count[0]).sorted().distinct().toArray();
    }

    // The node at a grid point in the face or just beyond one of its edges; −1 if it is beyond a corner, where the
    // faces
    // there have it themselves.
    private int reached(int[] face, int[] parts) {
        if (inside(parts)) {
            return index(key(face, parts));
        }
        for (int k = 0; k < 3; k++) {
            if (parts[k] < 0) {
                int i = (k + 1) % 3;
                int j = (k + 2) % 3;
                int other = beyond[side(face[i], face[j])];
                int[] folded = {parts[i] + parts[k], parts[j] + parts[k], -parts[k]};
                return inside(folded) ? index(key(new int[] {face[i], face[j], other}, folded)) : -1;
            }
        }
        return -1;
    }

    private int index(long key) {
        return Arrays.binarySearch(keys, key);
    }
}
