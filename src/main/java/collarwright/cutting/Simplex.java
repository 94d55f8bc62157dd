package collarwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Least cost of rows of equations with amounts of 0 or more: the revised simplex method with an explicit inverse. Columns may
 * be added while it stands. Plain double arithmetic in one order, which Java 17 rounds alike everywhere (JLS 17, 15.4), so
 * that every machine takes the same steps.
 */
final class Simplex {

    private static final double TINY = 1e-9;
    private static final int REFRESH = 150;
    private static final int STALLED = 500;

    private static final class Column {
        private final int[] rows;
        private final double[] factors;
        private final double cost;

        Column(int[] rows, double[] factors, double cost) {
            this.rows = rows;
            this.factors = factors;
            this.cost = cost;
        }

        double times(double[] row) {
            double sum = 0;
            for (int i = 0; i < rows.length; i++) {
                sum += row[rows[i]] * factors[i];
            }
            return sum;
        }
    }

    private final int size;
    private final double[] rhs;
    private final List<Column> columns = new ArrayList<>();
    private final int[] basis;
    private double[][] inverse;
    private double[] amounts;
    private int sinceRefresh;
    private int stalled;
    private long steps;
    private boolean[] inBasis;

    /** Starts with one column for each row alone; right sides are 0 or more. */
    Simplex(double[] rhs, double[] startCost) {
        size = rhs.length;
        this.rhs = rhs.clone();
        basis = new int[size];
        inverse = new double[size][size];
        amounts = rhs.clone();
        inBasis = new boolean[2 * size];
        for (int i = 0; i < size; i++) {
            columns.add(new Column(new int[] {i}, new double[] {1}, startCost[i]));
            basis[i] = i;
            inBasis[i] = true;
            inverse[i][i] = 1;
        }
    }

    int add(int[] rows, double[] factors, double cost) {
        columns.add(new Column(rows, factors, cost));
        if (columns.size() > inBasis.length) {
            inBasis = Arrays.copyOf(inBasis, 2 * inBasis.length);
        }
        return columns.size() - 1;
    }

    long steps() {
        return steps;
    }

    int size() {
        return columns.size();
    }

    double[] duals() {
        double[] duals = new double[size];
        for (int i = 0; i < size; i++) {
            double cost = columns.get(basis[i]).cost;
            if (cost != 0) {
                double[] row = inverse[i];
                for (int k = 0; k < size; k++) {
                    duals[k] += cost * row[k];
                }
            }
        }
        return duals;
    }

    /** Amounts of all columns. */
    double[] solution() {
        double[] all = new double[columns.size()];
        for (int i = 0; i < size; i++) {
            all[basis[i]] = StrictMath.max(0, amounts[i]);
        }
        return all;
    }

    /** Goes to the least cost; false if it was cut off by the number of its steps. */
    boolean solve(int mostSteps) {
        for (int step = 0; step < mostSteps; step++) {
            steps++;
            int in = entering(duals());
            if (in < 0) {
                return true;
            }
            if (!pivot(in)) {
                return false;
            }
        }
        return false;
    }

    private int entering(double[] duals) {
        int best = -1;
        double least = -TINY;
        for (int j = 0; j < columns.size(); j++) {
            if (inBasis[j]) {
                continue;
            }
            Column column = columns.get(j);
            double reduced = column.cost - column.times(duals);
            if (reduced < least) {
                best = j;
                least = reduced;
                if (stalled > STALLED) {
                    break;
                }
            }
        }
        return best;
    }

    private boolean pivot(int in) {
        Column column = columns.get(in);
        double[] way = new double[size];
        for (int i = 0; i < size; i++) {
            way[i] = column.times(inverse[i]);
        }
        int out = leaving(way);
        if (out < 0) {
            return false;
        }
        double amount = StrictMath.max(0, amounts[out]) / way[out];
        stalled = amount > 1e-12 ? 0 : stalled + 1;
        inBasis[basis[out]] = false;
        inBasis[in] = true;
        basis[out] = in;
        replace(way, out);
        amounts[out] = amount;
        for (int i = 0; i < size; i++) {
            if (i != out) {
                amounts[i] -= amount * way[i];
            }
        }
        if (++sinceRefresh >= REFRESH) {
            refresh();
        }
        return true;
    }

    private int leaving(double[] way) {
        int out = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            if (way[i] > 1e-7) {
                double ratio = StrictMath.max(0, amounts[i]) / way[i];
                boolean tie = out >= 0 && ratio <= least + 1e-13;
                if (ratio < least - 1e-13 || (tie && way[i] > way[out]) || out < 0) {
                    least = StrictMath.min(least, ratio);
                    out = i;
                }
            }
        }
        return out;
    }

    private void replace(double[] way, int out) {
        double[] pivotRow = inverse[out];
        for (int k = 0; k < size; k++) {
            pivotRow[k] /= way[out];
        }
        for (int i = 0; i < size; i++) {
            double factor = way[i];
            if (i != out && factor != 0) {
                double[] row = inverse[i];
                for (int k = 0; k < size; k++) {
                    row[k] -= factor * pivotRow[k];
                }
            }
        }
    }

    // Inverts the basis anew and so takes rounding errors out.
    private void refresh() {
        sinceRefresh = 0;
        double[][] left = new double[size][size];
        for (int i = 0; i < size; i++) {
            Column column = columns.get(basis[i]);
            for (int k = 0; k < column.rows.length; k++) {
                left[column.rows[k]][i] = column.factors[k];
            }
        }
        double[][] right = new double[size][size];
        for (int i = 0; i < size; i++) {
            right[i][i] = 1;
        }
        if (!Inverse.solve(left, right)) {
            return;
        }
        inverse = right;
        amounts = new double[size];
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < size; k++) {
                amounts[i] += inverse[i][k] * rhs[k];
            }
        }
    }
}
