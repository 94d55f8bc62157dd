package collarwright.hub;

import java.util.Arrays;

/**
 * The kinds of numbers: in rising order, a number opens a new kind when it is not equal to the first of the last one.
 *
 * <p>The kinds are those of a walk over the sorted numbers, but sorting is spared: they are dropped into narrow bins of
 * rising size, and a bin whose least and largest number are of one kind needs no look inside. Only where two kinds meet
 * in one bin are its numbers sorted. A 64-frequency sphere has 122,880 numbers of 1,056 kinds.
 */
final class NumberBins {

    private static final int MIXED = -1;

    private final double[] numbers;
    private final Alike.Within within;
    private final double least;
    private final double scale;
    private final int[] kindOfBin;
    private double[] firsts = new double[16];
    private int kinds;

    NumberBins(double[] numbers, Alike.Within within) {
        this.numbers = numbers;
        this.within = within;
        double low = least(numbers, 0, numbers.length);
        double high = largest(numbers, 0, numbers.length);
        int bins = Integer.highestOneBit(numbers.length | 1);
        this.least = low;
        this.scale = high > low ? (bins - 1) / (high - low) : 0;
        this.kindOfBin = new int[bins];
        walk();
    }

    int kinds() {
        return kinds;
    }

    // The least number of a kind.
    double first(int kind) {
        return firsts[kind];
    }

    int kindOf(double number) {
        int kind = kindOfBin[bin(number)];
        if (kind != MIXED) {
            return kind;
        }
        int at = Arrays.binarySearch(firsts, 0, kinds, number);
        return at >= 0 ? at : -at - 2;
    }

    // Never falls as the number grows.
    private int bin(double number) {
        return (int) ((number - least) * scale);
    }

    private void walk() {
        int[] binStart = binStarts();
        double[] byBin = byBin(binStart.clone());
        for (int bin = 0; bin < kindOfBin.length; bin++) {
            int from = binStart[bin];
            int to = binStart[bin + 1];
            if (from == to) {
                continue;
            }
            open(least(byBin, from, to));
            if (opens(largest(byBin, from, to))) {
                Arrays.sort(byBin, from, to);
                Arrays.stream(byBin, from, to).forEach(this::open);
                kindOfBin[bin] = MIXED;
            } else {
                kindOfBin[bin] = kinds - 1;
            }
        }
    }

    private int[] binStarts() {
        int[] starts = new int[kindOfBin.length + 1];
        for (double number : numbers) {
            starts[bin(number) + 1]++;
        }
        for (int bin = 0; bin < kindOfBin.length; bin++) {
            starts[bin + 1] += starts[bin];
        }
        return starts;
    }

    private double[] byBin(int[] next) {
        double[] byBin = new double[numbers.length];
        for (double number : numbers) {
            byBin[next[bin(number)]++] = number;
        }
        return byBin;
    }

    private static double least(double[] values, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            least = StrictMath.min(least, values[i]);
        }
        return least;
    }

    private static double largest(double[] values, int from, int to) {
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            largest = StrictMath.max(largest, values[i]);
        }
        return largest;
    }

    private boolean opens(double number) {
        return kinds == 0 || !within.same(firsts[kinds - 1], number);
    }

    private void open(double number) {
        if (opens(number)) {
            firsts = kinds < firsts.length ? firsts : Arrays.copyOf(firsts, 2 * kinds);
            firsts[kinds++] = number;
        }
    }
}
