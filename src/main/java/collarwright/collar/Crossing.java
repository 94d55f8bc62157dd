package collarwright.collar;

import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a figure passes zero, between a place where it is above and one where it is below. Each step goes where the
 * straight line through both ends passes; an end that stays in place twice counts half the next time, so that both ends
 * move (false position in its Illinois form).
 */
final class Crossing {

    private static final int MOST_STEPS = 80;
    /** A step leaves at least this part of the way on either side. */
    private static final double LEAST_PART = 1e-4;

    private Crossing() {}

    /**
     * Searches.
     *
     * @param figure what passes zero
     * @param above a place where it is not below 0
     * @param below a place on either side where it is below 0
     * @param near how near the two ends come, or the last two places
     * @return the place
     */
    static double between(DoubleUnaryOperator figure, double above, double below, double near) {
        double a = above;
        double b = below;
        double fa = figure.applyAsDouble(a);
        double fb = figure.applyAsDouble(b);
        double weightA = fa;
        double weightB = fb;
        int last = 0;
        double moved = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS && StrictMath.min(StrictMath.abs(b - a), moved) > near; step++) {
            double part = StrictMath.min(1 - LEAST_PART, StrictMath.max(LEAST_PART, weightA / (weightA - weightB)));
            double next = a + (b - a) * part;
            double f = figure.applyAsDouble(next);
            int side = f >= 0 ? 1 : -1;
            // A step from the better end that is this short has arrived.
            moved = StrictMath.abs(next - (StrictMath.abs(fa) < StrictMath.abs(fb) ? a : b));
            if (side > 0) {
                a = next;
                fa = f;
                weightB = last == side ? weightB / 2 : fb;
                weightA = f;
            } else {
                b = next;
                fb = f;
                weightA = last == side ? weightA / 2 : fa;
                weightB = f;
            }
            last = side;
        }
        return a - fa * (b - a) / (fb - fa);
    }
}
