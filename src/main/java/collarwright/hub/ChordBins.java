package collarwright.hub;

import java.util.Arrays;

/**
 * The kinds of chords: in rising order, a chord opens a new kind when it is not equal to the first of the last one.
 *
 * <p>The kinds are those of a walk over the sorted chords, but sorting is spared: chords are dropped into narrow bins of
 * rising size, and a bin whose least and largest chord are of one kind needs no look inside. Only where two kinds meet in
 * one bin are its chords sorted. A 64-frequency sphere has 122,880 chords of 1,056 kinds.
 */
final class ChordBins {

    private static final int MIXED = -1;

    private final double[] chords;
    private final double least;
    private final double scale;
    private final int[] kindOfBin;
    private double[] firsts = new double[16];
    private int kinds;

    ChordBins(double[] chords) {
        this.chords = chords;
        double low = least(chords, 0, chords.length);
        double high = largest(chords, 0, chords.length);
        int bins = Integer.highestOneBit(chords.length | 1);
        this.least = low;
        this.scale = high > low ? (bins - 1) / (high - low) : 0;
        this.kindOfBin = new int[bins];
        walk();
    }

    int kinds() {
        return kinds;
    }

    // The least chord of a kind.
    double first(int kind) {
        return firsts[kind];
    }

    int kindOf(double chord) {
        int kind = kindOfBin[bin(chord)];
        if (kind != MIXED) {
            return kind;
        }
        int at = Arrays.binarySearch(firsts, 0, kinds, chord);
        return at >= 0 ? at : -at - 2;
    }

    // Never falls as the chord grows.
    private int bin(double chord) {
        return (int) ((chord - least) * scale);
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
        for (double chord : chords) {
            starts[bin(chord) + 1]++;
        }
        for (int bin = 0; bin < kindOfBin.length; bin++) {
            starts[bin + 1] += starts[bin];
        }
        return starts;
    }

    private double[] byBin(int[] next) {
        double[] byBin = new double[chords.length];
        for (double chord : chords) {
            byBin[next[bin(chord)]++] = chord;
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
        double largest = 0;
        for (int i = from; i < to; i++) {
            largest = StrictMath.max(largest, values[i]);
        }
        return largest;
    }

    private boolean opens(double chord) {
        return kinds == 0 || chord > firsts[kinds - 1] * (1 + Hubs.TOLERANCE);
    }

    private void open(double chord) {
        if (opens(chord)) {
            firsts = kinds < firsts.length ? firsts : Arrays.copyOf(firsts, 2 * kinds);
            firsts[kinds++] = chord;
        }
    }
}
