package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole class I icosahedron built the other way round: every one of the twenty faces is divided on its own, from corners
 * given by the golden ratio, and what coincides is merged. Knows nothing of rows, tiers or places.
 */
final class FaceByFaceSphere {

    private static final double SAME = 1e-9;

    private final int frequency;
    private final List<Vec3> points = new ArrayList<>();
    private final List<int[]> edges = new ArrayList<>();

    FaceByFaceSphere(int frequency) {
        this.frequency = frequency;
        List<Vec3> corners = corners();
        double edge = 2 / StrictMath.sqrt((5 + StrictMath.sqrt(5)) / 2);
        for (int i = 0; i < 12; i++) {
            for (int j = i + 1; j < 12; j++) {
                for (int k = j + 1; k < 12; k++) {
                    if (near(corners.get(i), corners.get(j), edge)
                            && near(corners.get(j), corners.get(k), edge)
                            && near(corners.get(k), corners.get(i), edge)) {
                        divide(corners.get(i), corners.get(j), corners.get(k));
                    }
                }
            }
        }
    }

    private static boolean near(Vec3 a, Vec3 b, double distance) {
        return StrictMath.abs(a.minus(b).norm() - distance) < SAME;
    }

    // The corners (0, ±1, ±φ) and their cyclic shifts, turned so that (0, 1, φ) is up and a neighbour lies over +x.
    private static List<Vec3> corners() {
        double phi = (1 + StrictMath.sqrt(5)) / 2;
        List<Vec3> raw = new ArrayList<>();
        for (int a = -1; a <= 1; a += 2) {
            for (int b = -1; b <= 1; b += 2) {
                raw.add(new Vec3(0, a, b * phi).unit());
                raw.add(new Vec3(a, b * phi, 0).unit());
                raw.add(new Vec3(b * phi, 0, a).unit());
            }
        }
        Vec3 up = new Vec3(0, 1, phi).unit();
        Vec3 meridian = new Vec3(0, -1, phi).unit();
        Vec3 ahead = meridian.minus(up.times(meridian.dot(up))).unit();
        Vec3 left = up.cross(ahead);
        return raw.stream()
                .map(v -> new Vec3(v.dot(ahead), v.dot(left), v.dot(up)))
                .toList();
    }

    private void divide(Vec3 a, Vec3 b, Vec3 c) {
        int n = frequency;
        int[][] at = new int[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; i + j <= n; j++) {
                Vec3 flat = a.times(n - i - j).plus(b.times(i)).plus(c.times(j));
                at[i][j] = merged(flat.unit());
                if (i > 0) {
                    edge(at[i][j], at[i - 1][j]);
                    edge(at[i][j], at[i - 1][j + 1]);
                }
                if (j > 0) {
                    edge(at[i][j], at[i][j - 1]);
                }
            }
        }
    }

    private int merged(Vec3 point) {
        int found = find(points, point);
        if (found < 0) {
            points.add(point);
            return points.size() - 1;
        }
        return found;
    }

    static int find(List<Vec3> points, Vec3 point) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).minus(point).norm() < SAME) {
                return i;
            }
        }
        return -1;
    }

    private void edge(int a, int b) {
        int low = StrictMath.min(a, b);
        int high = StrictMath.max(a, b);
        if (edges.stream().noneMatch(e -> e[0] == low && e[1] == high)) {
            edges.add(new int[] {low, high});
        }
    }

    List<Vec3> points() {
        return List.copyOf(points);
    }

    /** Pairs of indexes into the points, the lower first. */
    List<int[]> edges() {
        return List.copyOf(edges);
    }
}
