package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.List;

/**
 * A whole sphere: the grid of a breakdown on every triangle of the base, brought to the unit sphere.
 *
 * <p>A grid point is a whole-number mixture of the corners of its triangle, in parts of T. Points on a shared edge or
 * corner are one node, because a node is named by those corners and parts alone. A line of the grid that leaves a triangle
 * goes on in the one beyond the edge, folded flat into the same plane.
 */
final class SphereNet {

    /** Steps to the six neighbours on the grid, counted along its first axis and the axis 60° to the left of it. */
    private final int[][] steps = {{1, 0}, {0, 1}, {-1, 1}, {-1, 0}, {0, -1}, {1, -1}};

    private static final int MOST_CORNERS = 16;
    private static final int MOST_NEIGHBOURS = 6;

    private final Breakdown breakdown;
    private final List<int[]> faces;
    private final int[] beyond = new int[MOST_CORNERS * MOST_CORNERS];
    private final long[] keys;
    private final double[] coordinates;
    private final int[] edges;

    /** A sphere of equal chords with a corner of the base up. */
    SphereNet(Base base, Breakdown breakdown) {
        this(base, breakdown, Subdivision.CHORDS, Up.VERTEX);
    }

    /**
     * Lays out a sphere.
     *
     * @throws IllegalArgumentException for equal arcs of any class but I
     */
    SphereNet(Base base, Breakdown breakdown, Subdivision subdivision, Up up) {
        if (subdivision == Subdivision.ARCS && breakdown.geodesicClass() != 1) {
            throw new IllegalArgumentException("equal arcs are for class I (c = 0) only, not " + breakdown);
        }
        this.breakdown = breakdown;
        this.faces = base.faces();
        for (int[] face : faces) {
            for (int k = 0; k < 3; k++) {
                beyond[side(face[(k + 1) % 3], face[k])] = face[(k + 2) % 3];
            }
        }
        this.keys = nodes();
        this.coordinates = places(new FacePoints(subdivision, up.turned(base)));
        this.edges = edges();
    }

    private static int side(int from, int to) {
        return from * MOST_CORNERS + to;
    }

    int nodeCount() {
        return keys.length;
    }

    /** Members in the order of their first and second node, the first the lower one. */
    int edgeCount() {
        return edges.length / 2;
    }

    int edgeA(int edge) {
        return edges[2 * edge];
    }

    int edgeB(int edge) {
        return edges[2 * edge + 1];
    }

    Vec3 node(int node) {
        return new Vec3(coordinates[3 * node], coordinates[3 * node + 1], coordinates[3 * node + 2]);
    }

    /** x, y and z of every node in turn, on the unit sphere; a copy. */
    double[] coordinates() {
        return coordinates.clone();
    }

    private double[] places(FacePoints points) {
        double[] places = new double[3 * keys.length];
        for (int i = 0; i < keys.length; i++) {
            Vec3 at = NodeKeys.point(keys[i], breakdown.t(), points);
            places[3 * i] = at.x();
            places[3 * i + 1] = at.y();
            places[3 * i + 2] = at.z();
        }
        return places;
    }

    private long[] nodes() {
        long[] found = new long[faces.size() * (breakdown.t() + 3 * (breakdown.b() + breakdown.c()) + 3)];
        int[] count = {0};
        for (int[] face : faces) {
            onGrid((x, y) -> found[count[0]++] = NodeKeys.key(face, parts(x, y)));
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

    // Up to six neighbours of every node, those of a higher number only. Collected node by node, because sorting all
    // edges
    // took longer than all else together.
    private int[] edges() {
        int[] higher = new int[MOST_NEIGHBOURS * keys.length];
        int[] count = new int[keys.length];
        for (int[] face : faces) {
            join(face, higher, count);
        }
        int[] edges = new int[2 * Arrays.stream(count).sum()];
        int filled = 0;
        for (int from = 0; from < keys.length; from++) {
            int first = MOST_NEIGHBOURS * from;
            Arrays.sort(higher, first, first + count[from]);
            for (int i = 0; i < count[from]; i++) {
                edges[filled++] = from;
                edges[filled++] = higher[first + i];
            }
        }
        return edges;
    }

    private void join(int[] face, int[] higher, int[] count) {
        // One point more all round, so that every step from the grid ends in the table.
        int wide = breakdown.b() + breakdown.c() + 3;
        int origin = breakdown.c() + 1 + wide;
        int[] numbers = new int[wide * wide];
        Arrays.fill(numbers, -1);
        onGrid((x, y) -> numbers[origin + x + wide * y] = index(NodeKeys.key(face, parts(x, y))));
        onGrid((x, y) -> {
            int from = numbers[origin + x + wide * y];
            for (int[] step : steps) {
                int to = numbers[origin + x + step[0] + wide * (y + step[1])];
                to = to < 0 ? beyondEdge(face, parts(x + step[0], y + step[1])) : to;
                if (to > from && !has(higher, from, count[from], to)) {
                    higher[MOST_NEIGHBOURS * from + count[from]++] = to;
                }
            }
        });
    }

    private static boolean has(int[] higher, int from, int count, int to) {
        for (int i = MOST_NEIGHBOURS * from; i < MOST_NEIGHBOURS * from + count; i++) {
            if (higher[i] == to) {
                return true;
            }
        }
        return false;
    }

    // The node at a grid point just beyond one of the face's edges; −1 if it is beyond a corner, where the faces there
    // have it themselves.
    private int beyondEdge(int[] face, int[] parts) {
        for (int k = 0; k < 3; k++) {
            if (parts[k] < 0) {
                int i = (k + 1) % 3;
                int j = (k + 2) % 3;
                int other = beyond[side(face[i], face[j])];
                int[] folded = {parts[i] + parts[k], parts[j] + parts[k], -parts[k]};
                return inside(folded) ? index(NodeKeys.key(new int[] {face[i], face[j], other}, folded)) : -1;
            }
        }
        return -1;
    }

    private int index(long key) {
        return Arrays.binarySearch(keys, key);
    }
}
