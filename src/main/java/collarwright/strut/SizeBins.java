package collarwright.strut;

import collarwright.geometry.Interval;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How struts of natural material (bamboo, poles) are sorted by size, so that each bin gets holes of its own.
 *
 * @param limits the outside diameters between which the bins lie, ascending: one more than there are bins
 * @param chosen the bin that a job drills for, from 1; empty for the whole range
 */
public record SizeBins(List<Double> limits, Optional<Integer> chosen) {

    /** Most bins that a shop can keep apart. Our choice, no source. */
    public static final int MOST = 9;

    /** Checks that the limits ascend and that the chosen bin is one of them. */
    public SizeBins {
        limits = List.copyOf(limits);
        if (limits.size() < 3 || limits.size() > MOST + 1 || !(limits.get(0) > 0)) {
            throw new IllegalArgumentException("2 to " + MOST + " bins: " + limits);
        }
        for (int i = 1; i < limits.size(); i++) {
            if (!(limits.get(i) > limits.get(i - 1)) || limits.get(i) == Double.POSITIVE_INFINITY) {
                throw new IllegalArgumentException("limits that ascend: " + limits);
            }
        }
        if (chosen.isPresent() && (chosen.get() < 1 || chosen.get() >= limits.size())) {
            throw new IllegalArgumentException("bin " + chosen.get() + " of " + limits);
        }
    }

    /**
     * Bins of equal width.
     *
     * @param whole least and largest outside diameter
     * @param count how many bins, 2 to {@value #MOST}
     * @param chosen the bin that a job drills for, from 1
     * @return the bins
     */
    public static SizeBins equal(Interval whole, int count, Optional<Integer> chosen) {
        List<Double> limits = IntStream.rangeClosed(0, count)
                .mapToObj(i -> (whole.min() * (count - i) + whole.max() * i) / count)
                .toList();
        return new SizeBins(limits, chosen);
    }

    /**
     * Counts the bins.
     *
     * @return 2 to {@value #MOST}
     */
    public int count() {
        return limits.size() - 1;
    }

    /**
     * Returns the sizes of a bin.
     *
     * @param bin from 1
     * @return its least and largest outside diameter, the middle as nominal
     */
    public Interval bin(int bin) {
        return Interval.between(limits.get(bin - 1), limits.get(bin));
    }

    /**
     * Returns the sizes of all bins together.
     *
     * @return least and largest outside diameter, the middle as nominal
     */
    public Interval whole() {
        return Interval.between(limits.get(0), limits.get(limits.size() - 1));
    }
}
