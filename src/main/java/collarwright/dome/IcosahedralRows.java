package collarwright.dome;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Lays out a class I icosahedron, vertex up, row by row from the apex.
 *
 * <p>The icosahedron has a top cap of 5 faces, a belt of 10 and a bottom cap of 5; a frequency n gives n rows of
 * triangles to each. A node of row r is a whole-number mixture of the corners of its face (equal chords on the flat
 * face), pushed out to the sphere. Rows are laid out clockwise seen from above; where a row does not begin on the +x
 * meridian its numbering is turned so that place 1 is the first node at or clockwise of it.
 *
 * <p>Source of the subdivision: J. D. Clinton, Advanced Structural Geometry Studies, Part I, NASA CR-1734, 1971, class
 * I, method 1 (method's name from memory).
 */
final class IcosahedralRows {

    /** The apex of an icosahedron has five nodes below it, and no node has more after it. */
    private static final int MOST_HIGHER = 5;

    private final int n;
    private final int rows;
    private final DomeSettings settings;
    private final double[][] upper = new double[6][];
    private final double[][] lower = new double[7][];
    private final int[] tierStart;
    private final double[] coordinates;

    IcosahedralRows(DomeSettings settings) {
        this.settings = settings;
        this.n = settings.sphere().breakdown().b();
        this.rows = ((Cut.Tiers) settings.cut()).last();
        this.tierStart = new int[rows + 2];
        for (int row = 0; row <= rows; row++) {
            tierStart[row + 1] = tierStart[row] + sizeOfRow(row);
        }
        this.coordinates = new double[3 * tierStart[rows + 1]];
        placeCorners();
    }

    private int sizeOfRow(int row) {
        if (row == 0 || row == 3 * n) {
            return 1;
        }
        return 5 * StrictMath.min(n, StrictMath.min(row, 3 * n - row));
    }

    // Corners of the belt: the upper ring starts on +x, the lower ring half a step clockwise of it.
    private void placeCorners() {
        double z = 1 / StrictMath.sqrt(5);
        double ring = 2 * z;
        for (int k = 0; k < upper.length; k++) {
            double angle = -StrictMath.PI * (2 * (k % 5)) / 5;
            upper[k] = new double[] {ring * StrictMath.cos(angle), ring * StrictMath.sin(angle), z};
        }
        for (int k = 0; k < lower.length; k++) {
            double angle = -StrictMath.PI * (2 * (k % 5) + 1) / 5;
            lower[k] = new double[] {ring * StrictMath.cos(angle), ring * StrictMath.sin(angle), -z};
        }
    }

    DomeParts build() {
        coordinates[2] = 1;
        for (int row = 1; row <= rows; row++) {
            if (row <= n) {
                layCap(row);
            } else if (row <= 2 * n) {
                layBelt(row, row - n);
            } else {
                layFoot(row, row - 2 * n);
            }
        }
        int[] feet = rows == 3 * n
                ? new int[0]
                : IntStream.range(tierStart[rows], tierStart[rows + 1]).toArray();
        NodeNames names = NodeNames.tiers(tierStart, settings.tiersFromFoot());
        return new DomeParts(settings, coordinates, coordinates, members(), new Role[0], names, feet, new double[0]);
    }

    private void layCap(int row) {
        double[] apex = {0, 0, 1};
        for (int k = 0; k < 5; k++) {
            for (int i = 0; i < row; i++) {
                mix(row, k * row + i, new double[][] {apex, upper[k], upper[k + 1]}, n - row, row - i, i);
            }
        }
    }

    private void layBelt(int row, int m) {
        for (int k = 0; k < 5; k++) {
            for (int i = 0; i < n - m; i++) {
                mix(row, k * n + i, new double[][] {upper[k], upper[k + 1], lower[k]}, n - m - i, i, m);
            }
            for (int i = 0; i < m; i++) {
                mix(row, k * n + n - m + i, new double[][] {upper[k + 1], lower[k], lower[k + 1]}, n - m, m - i, i);
            }
        }
    }

    private void layFoot(int row, int q) {
        double[] nadir = {0, 0, -1};
        if (q == n) {
            coordinates[3 * tierStart[row] + 2] = -1;
            return;
        }
        int side = n - q;
        for (int k = 0; k < 5; k++) {
            for (int i = 0; i < side; i++) {
                mix(row, k * side + i, new double[][] {lower[k], lower[k + 1], nadir}, side - i, i, q);
            }
        }
    }

    private void mix(int row, int laid, double[][] corners, int a, int b, int c) {
        double x = a * corners[0][0] + b * corners[1][0] + c * corners[2][0];
        double y = a * corners[0][1] + b * corners[1][1] + c * corners[2][1];
        double z = a * corners[0][2] + b * corners[1][2] + c * corners[2][2];
        double norm = StrictMath.sqrt(x * x + y * y + z * z);
        int at = 3 * node(row, laid);
        coordinates[at] = x / norm;
        coordinates[at + 1] = y / norm;
        coordinates[at + 2] = z / norm;
    }

    // Rows of the belt and below begin clockwise of the +x meridian; this many of their last nodes come before.
    private int turnOf(int row) {
        if (row <= n || row == 3 * n) {
            return 0;
        }
        return row <= 2 * n ? (row - n) / 2 : (3 * n - row) / 2;
    }

    // Laid places run on past the row's end and one before its start: both come round.
    private int node(int row, int laid) {
        int size = sizeOfRow(row);
        int place = laid + turnOf(row);
        return tierStart[row] + (place < 0 ? place + size : place < size ? place : place - size);
    }

    // Node after node, each one's members to higher nodes sorted: so the whole list comes out in order.
    private int[] members() {
        int[] members = new int[6 * tierStart[rows + 1]];
        int[] higher = new int[MOST_HIGHER];
        int count = 0;
        for (int row = 0; row <= rows; row++) {
            int size = sizeOfRow(row);
            int turn = turnOf(row);
            for (int place = 0; place < size; place++) {
                int found = alongRow(row, place, size, higher);
                found = row < rows
                        ? down(row, place < turn ? place - turn + size : place - turn, higher, found)
                        : found;
                Arrays.sort(higher, 0, found);
                for (int i = 0; i < found; i++) {
                    members[count++] = tierStart[row] + place;
                    members[count++] = higher[i];
                }
            }
        }
        return Arrays.copyOf(members, count);
    }

    // The neighbours in the row that come after a node; its last node follows on its first.
    private int alongRow(int row, int place, int size, int[] higher) {
        int found = 0;
        if (place + 1 < size) {
            higher[found++] = tierStart[row] + place + 1;
            if (place == 0) {
                higher[found++] = tierStart[row] + size - 1;
            }
        }
        return found;
    }

    // The neighbours in the next row.
    private int down(int row, int laid, int[] higher, int found) {
        int next = row + 1;
        int added = found;
        if (row == 0) {
            for (int k = 0; k < 5; k++) {
                higher[added++] = node(next, k);
            }
        } else if (row < n) {
            int below = laid / row * next + laid % row;
            higher[added++] = node(next, below);
            higher[added++] = node(next, below + 1);
            if (laid % row == 0) {
                higher[added++] = node(next, below - 1);
            }
        } else if (row < 2 * n) {
            higher[added++] = node(next, laid);
            higher[added++] = node(next, laid - 1);
        } else {
            int side = 3 * n - row;
            int below = laid / side * (side - 1) + laid % side;
            higher[added++] = node(next, below);
            if (laid % side > 0) {
                higher[added++] = node(next, below - 1);
            }
        }
        return added;
    }
}
