package collarwright.cutting;

import java.util.Arrays;

/** What is cut from one stick of a stock: counts of some kinds of pieces, ascending by kind. */
final class Pattern implements Comparable<Pattern> {
    final int stock;
    final int[] kinds;
    final int[] counts;

    private Pattern(int stock, int[] kinds, int[] counts) {
        this.stock = stock;
        this.kinds = kinds;
        this.counts = counts;
    }

    /** Counts of all kinds, most of them 0. */
    static Pattern of(int stock, int[] all) {
        int used = 0;
        for (int count : all) {
            used += count > 0 ? 1 : 0;
        }
        int[] kinds = new int[used];
        int[] counts = new int[used];
        int at = 0;
        for (int kind = 0; kind < all.length; kind++) {
            if (all[kind] > 0) {
                kinds[at] = kind;
                counts[at++] = all[kind];
            }
        }
        return new Pattern(stock, kinds, counts);
    }

    boolean empty() {
        return kinds.length == 0;
    }

    /** Whether it cuts no more than is wanted. */
    boolean within(int[] wanted) {
        for (int i = 0; i < kinds.length; i++) {
            if (counts[i] > wanted[kinds[i]]) {
                return false;
            }
        }
        return true;
    }

    /** The same stick without what is not wanted. */
    Pattern trimmed(int[] wanted) {
        if (within(wanted)) {
            return this;
        }
        int[] all = new int[wanted.length];
        for (int i = 0; i < kinds.length; i++) {
            all[kinds[i]] = StrictMath.min(counts[i], wanted[kinds[i]]);
        }
        return of(stock, all);
    }

    /** The same pieces from another stock. */
    Pattern on(int other) {
        return new Pattern(other, kinds, counts);
    }

    void take(int[] wanted, int times) {
        for (int i = 0; i < kinds.length; i++) {
            wanted[kinds[i]] -= times * counts[i];
        }
    }

    /** How often it can be cut before more is cut than wanted. */
    int times(int[] wanted) {
        int most = Integer.MAX_VALUE;
        for (int i = 0; i < kinds.length; i++) {
            most = StrictMath.min(most, wanted[kinds[i]] / counts[i]);
        }
        return most;
    }

    long sum(long[] values) {
        long sum = 0;
        for (int i = 0; i < kinds.length; i++) {
            sum += values[kinds[i]] * counts[i];
        }
        return sum;
    }

    int[] spread(int size) {
        int[] all = new int[size];
        for (int i = 0; i < kinds.length; i++) {
            all[kinds[i]] = counts[i];
        }
        return all;
    }

    @Override
    public int compareTo(Pattern other) {
        int byStock = Integer.compare(stock, other.stock);
        int byKinds = byStock != 0 ? byStock : Arrays.compare(kinds, other.kinds);
        // More of the longest first.
        return byKinds != 0 ? byKinds : Arrays.compare(other.counts, counts);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern p && compareTo(p) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * stock + Arrays.hashCode(kinds)) + Arrays.hashCode(counts);
    }
}
