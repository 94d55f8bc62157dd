package collarwright.collar;

import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * An oval strut may lie in its hole at any roll about itself: the least and the most of a figure over all rolls. Tried
 * every 15°; between, from the parabola through the best and its neighbours.
 *
 * @param least the least of the figure
 * @param leastRoll the roll it has it at, from the largest diameter upright
 * @param most the most of the figure
 * @param mostRoll the roll it has it at
 */
public record Rolls(double least, double leastRoll, double most, double mostRoll) {

    private static final int TRIED = 12;

    /**
     * Returns the rolls that are tried.
     *
     * @return angles from 0 up to half a turn
     */
    public static double[] tried() {
        return DoubleStream.iterate(0, i -> i + 1)
                .limit(TRIED)
                .map(i -> i * StrictMath.PI / TRIED)
                .toArray();
    }

    /**
     * Looks for both ends of a figure.
     *
     * @param strut the strut; for a round one the figure is asked for once
     * @param figure of the roll
     * @return both ends
     */
    public static Rolls of(StrutSection strut, DoubleFunction<Double> figure) {
        if (strut.isRound()) {
            double only = figure.apply(0);
            return new Rolls(only, 0, only, 0);
        }
        double[] rolls = tried();
        double[] figures = new double[TRIED];
        int low = 0;
        int high = 0;
        for (int i = 0; i < TRIED; i++) {
            figures[i] = figure.apply(rolls[i]);
            low = figures[i] < figures[low] ? i : low;
            high = figures[i] > figures[high] ? i : high;
        }
        double lowRoll = top(figures, low);
        double highRoll = top(figures, high);
        double lowThere = figure.apply(lowRoll);
        double highThere = figure.apply(highRoll);
        boolean lower = lowThere < figures[low];
        boolean higher = highThere > figures[high];
        return new Rolls(
                lower ? lowThere : figures[low],
                lower ? lowRoll : rolls[low],
                higher ? highThere : figures[high],
                higher ? highRoll : rolls[high]);
    }

    private static double top(double[] figures, int at) {
        double before = figures[(at + TRIED - 1) % TRIED];
        double after = figures[(at + 1) % TRIED];
        double bend = before - 2 * figures[at] + after;
        double shift = bend == 0 ? 0 : (before - after) / (2 * bend);
        double roll = (at + StrictMath.max(-0.5, StrictMath.min(0.5, shift))) * StrictMath.PI / TRIED;
        return roll < 0 ? roll + StrictMath.PI : roll;
    }
}
