package collarwright.tooling;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;

/**
 * The cheapest ways to split a row of needs into runs that share a cutter each.
 *
 * <p>Costs are joined from the last need back to the first, so that a sum is always rounded in the same way.
 */
final class Splits {

    private final double[][] costs;
    private final DoubleBinaryOperator join;

    /**
     * Takes a table of costs.
     *
     * @param costs of each need (row) with each cutter (column); infinite where the cutter will not do
     * @param join puts costs together: their sum or the larger one
     */
    Splits(double[][] costs, DoubleBinaryOperator join) {
        this.costs = costs;
        this.join = join;
    }

    /**
     * Solves for every number of runs.
     *
     * @param most most runs
     * @return {@code [k][i]}: the least cost of the needs from i on with at most k runs; infinite where none will do
     */
    double[][] solve(int most) {
        int needs = costs.length;
        double[][] best = new double[most + 1][needs + 1];
        for (double[] row : best) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
            row[needs] = 0;
        }
        for (int k = 1; k <= most; k++) {
            for (int cutter = 0; cutter < costs[0].length; cutter++) {
                double[] run = run(cutter, best[k - 1]);
                for (int i = 0; i < needs; i++) {
                    best[k][i] = StrictMath.min(best[k][i], run[i]);
                }
            }
        }
        return best;
    }

    // The least cost from each need on, where that need has this cutter; after its run come those of one run less.
    private double[] run(int cutter, double[] after) {
        double[] run = new double[costs.length];
        double next = Double.POSITIVE_INFINITY;
        for (int i = costs.length - 1; i >= 0; i--) {
            next = join.applyAsDouble(costs[i][cutter], StrictMath.min(next, after[i + 1]));
            run[i] = next;
        }
        return run;
    }

    /**
     * Finds the cutters of a solution, the smaller one wherever two do as well.
     *
     * @param best what {@link #solve} returned
     * @param runs how many runs
     * @return the cutter of each run, by column
     */
    IntStream trace(double[][] best, int runs) {
        int[] taken = new int[runs];
        int need = 0;
        int count = 0;
        while (need < costs.length) {
            double[] after = best[runs - count - 1];
            int cutter = 0;
            double[] run = run(cutter, after);
            while (run[need] != best[runs - count][need]) {
                run = run(++cutter, after);
            }
            taken[count++] = cutter;
            need++;
            while (need < costs.length && run[need] <= after[need]) {
                need++;
            }
        }
        return Arrays.stream(taken, 0, count);
    }
}
