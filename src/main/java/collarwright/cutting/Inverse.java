package collarwright.cutting;

/** Inverts a square matrix by elimination, the largest element of a column first. */
final class Inverse {

    private Inverse() {}

    /** Turns {@code left} into the unit matrix and {@code right}, the unit matrix, into its inverse; false if there is none. */
    static boolean solve(double[][] left, double[][] right) {
        int size = left.length;
        for (int c = 0; c < size; c++) {
            int pivot = c;
            for (int r = c + 1; r < size; r++) {
                if (StrictMath.abs(left[r][c]) > StrictMath.abs(left[pivot][c])) {
                    pivot = r;
                }
            }
            if (StrictMath.abs(left[pivot][c]) < 1e-11) {
                return false;
            }
            swap(left, c, pivot);
            swap(right, c, pivot);
            divide(left[c], right[c], left[c][c]);
            for (int r = 0; r < size; r++) {
                double factor = left[r][c];
                if (r != c && factor != 0) {
                    subtract(left[r], left[c], factor);
                    subtract(right[r], right[c], factor);
                }
            }
        }
        return true;
    }

    private static void swap(double[][] rows, int a, int b) {
        double[] row = rows[a];
        rows[a] = rows[b];
        rows[b] = row;
    }

    private static void divide(double[] left, double[] right, double by) {
        for (int k = 0; k < left.length; k++) {
            left[k] /= by;
            right[k] /= by;
        }
    }

    private static void subtract(double[] row, double[] other, double factor) {
        for (int k = 0; k < row.length; k++) {
            row[k] -= factor * other[k];
        }
    }
}
