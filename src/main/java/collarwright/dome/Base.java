package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The regular solid whose triangles are broken down, on the unit sphere: corner 0 is at +z, corner 1 on the +x meridian,
 * and every ring of corners runs clockwise seen from above.
 */
public enum Base {
    /** 20 triangles, five at a corner. */
    ICOSAHEDRON(10),
    /** 8 triangles, four at a corner: half of it stands on a flat floor for every even and odd frequency. */
    OCTAHEDRON(4),
    /** 4 triangles, three at a corner. */
    TETRAHEDRON(2);

    private final int nodesPerT;

    Base(int nodesPerT) {
        this.nodesPerT = nodesPerT;
    }

    /**
     * Counts the nodes of a whole sphere: V = aT + 2, and with it E = 3aT and F = 2aT.
     *
     * <p>Source: A. Siber, Icosadeltahedral Geometry of Geodesic Domes, Fullerenes and Viruses, Symmetry 12(4):556, 2020,
     * for the icosahedron; Euler's formula for the others.
     *
     * @return a, so 10, 4 or 2
     */
    public int nodesPerT() {
        return nodesPerT;
    }

    /**
     * Returns the corners.
     *
     * @return unit vectors
     */
    List<Vec3> corners() {
        List<Vec3> corners = new ArrayList<>();
        corners.add(new Vec3(0, 0, 1));
        switch (this) {
            case ICOSAHEDRON -> {
                double z = 1 / StrictMath.sqrt(5);
                ring(corners, 5, 2 * z, z, 0);
                ring(corners, 5, 2 * z, -z, 0.5);
                corners.add(new Vec3(0, 0, -1));
            }
            case OCTAHEDRON -> {
                corners.add(new Vec3(1, 0, 0));
                corners.add(new Vec3(0, -1, 0));
                corners.add(new Vec3(-1, 0, 0));
                corners.add(new Vec3(0, 1, 0));
                corners.add(new Vec3(0, 0, -1));
            }
            case TETRAHEDRON -> ring(corners, 3, StrictMath.sqrt(8) / 3, -1.0 / 3, 0);
        }
        return List.copyOf(corners);
    }

    private static void ring(List<Vec3> corners, int count, double radius, double z, double shift) {
        for (int k = 0; k < count; k++) {
            double angle = -2 * StrictMath.PI * (k + shift) / count;
            corners.add(new Vec3(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle), z));
        }
    }

    /**
     * Returns the triangles.
     *
     * @return three corners each, counter-clockwise seen from outside
     */
    List<int[]> faces() {
        return switch (this) {
            case ICOSAHEDRON -> icosahedron();
            case OCTAHEDRON -> octahedron();
            case TETRAHEDRON ->
                List.of(new int[] {0, 2, 1}, new int[] {0, 3, 2}, new int[] {0, 1, 3}, new int[] {1, 2, 3});
        };
    }

    private static List<int[]> icosahedron() {
        List<int[]> faces = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            int next = (k + 1) % 5;
            faces.add(new int[] {0, 1 + next, 1 + k});
            faces.add(new int[] {1 + k, 1 + next, 6 + k});
            faces.add(new int[] {1 + next, 6 + next, 6 + k});
            faces.add(new int[] {11, 6 + k, 6 + next});
        }
        return faces;
    }

    private static List<int[]> octahedron() {
        List<int[]> faces = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            int next = (k + 1) % 4;
            faces.add(new int[] {0, 1 + next, 1 + k});
            faces.add(new int[] {5, 1 + k, 1 + next});
        }
        return faces;
    }
}
