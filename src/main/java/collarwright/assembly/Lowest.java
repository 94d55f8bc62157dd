package collarwright.assembly;

import java.util.function.DoubleUnaryOperator;

/** Least values of functions of one number over a stretch. */
final class Lowest {

    private static final int STEPS = 60;
    private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    private Lowest() {}

    /** Where a function that falls and then rises is least, by the golden section; within 1e-12 of the stretch. */
    static double at(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = f.applyAsDouble(left);
        double atRight = f.applyAsDouble(right);
        for (int step = 0; step < STEPS; step++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = f.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = f.applyAsDouble(right);
            }
        }
        return (low + high) / 2;
    }

    /**
     * The least value of any function whose dips are wider than the stretch divided by the cells: the best cell of an even
     * division and its neighbours, searched by the golden section.
     */
    static double of(DoubleUnaryOperator f, double from, double to, int cells) {
        double cell = (to - from) / cells;
        double best = best(f, from, cell, cells);
        double low = StrictMath.max(from, best - cell);
        double high = StrictMath.min(to, best + cell);
        return StrictMath.min(f.applyAsDouble(best), f.applyAsDouble(at(f, low, high)));
    }

    /** The same once around a circle. */
    static double around(DoubleUnaryOperator f, int cells) {
        double cell = 2 * StrictMath.PI / cells;
        double best = best(f, 0, cell, cells);
        return f.applyAsDouble(at(f, best - cell, best + cell));
    }

    private static double best(DoubleUnaryOperator f, double from, double cell, int cells) {
        double best = from;
        double least = f.applyAsDouble(from);
        for (int i = 1; i <= cells; i++) {
            double value = f.applyAsDouble(from + i * cell);
            if (value < least) {
                least = value;
                best = from + i * cell;
            }
        }
        return best;
    }
}
