package collarwright.dome;

import collarwright.geometry.Vec3;

/** The main directions of a symmetric 3 × 3 matrix, by Jacobi's rotations. */
final class SymmetricAxes {

    private static final int SWEEPS = 30;

    private SymmetricAxes() {}

    /**
     * Finds the direction of the least value.
     *
     * @param matrix symmetric, no negative values; it is used up
     * @param undetermined least share of the largest value that the second must have
     * @return a unit vector; NaN where two values are as good as 0
     */
    static Vec3 least(double[][] matrix, double undetermined) {
        double[][] axes = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            if (matrix[0][1] == 0 && matrix[0][2] == 0 && matrix[1][2] == 0) {
                break;
            }
            rotate(matrix, axes, 0, 1);
            rotate(matrix, axes, 0, 2);
            rotate(matrix, axes, 1, 2);
        }
        int least = 0;
        double largest = 0;
        for (int i = 0; i < 3; i++) {
            least = matrix[i][i] < matrix[least][least] ? i : least;
            largest = StrictMath.max(largest, matrix[i][i]);
        }
        double second = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            second = i == least ? second : StrictMath.min(second, matrix[i][i]);
        }
        if (!(second > undetermined * largest)) {
            return new Vec3(Double.NaN, Double.NaN, Double.NaN);
        }
        return new Vec3(axes[0][least], axes[1][least], axes[2][least]).unit();
    }

    private static void rotate(double[][] m, double[][] axes, int p, int q) {
        if (m[p][q] == 0) {
            return;
        }
        double theta = (m[q][q] - m[p][p]) / (2 * m[p][q]);
        double t = 1 / (StrictMath.abs(theta) + StrictMath.sqrt(theta * theta + 1));
        t = theta < 0 ? -t : t;
        double c = 1 / StrictMath.sqrt(t * t + 1);
        double s = t * c;
        for (int k = 0; k < 3; k++) {
            double kp = m[k][p];
            double kq = m[k][q];
            m[k][p] = c * kp - s * kq;
            m[k][q] = s * kp + c * kq;
        }
        for (int k = 0; k < 3; k++) {
            double pk = m[p][k];
            double qk = m[q][k];
            m[p][k] = c * pk - s * qk;
            m[q][k] = s * pk + c * qk;
            double ap = axes[k][p];
            double aq = axes[k][q];
            axes[k][p] = c * ap - s * aq;
            axes[k][q] = s * ap + c * aq;
        }
        m[p][q] = 0;
        m[q][p] = 0;
    }
}
