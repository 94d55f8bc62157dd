package collarwright.geometry;

/**
 * A size with its limits.
 *
 * @param min the least it can be
 * @param nominal the value to count with
 * @param max the most it can be
 */
public record Interval(double min, double nominal, double max) {

    /** Checks the order and that all are finite. */
    public Interval {
        if (!(min <= nominal && nominal <= max) || min == Double.NEGATIVE_INFINITY || max == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("not an interval: " + min + ", " + nominal + ", " + max);
        }
    }

    /**
     * A size without spread.
     *
     * @param value the size
     * @return the interval that holds only it
     */
    public static Interval of(double value) {
        return new Interval(value, value, value);
    }

    /**
     * A size known by its limits.
     *
     * @param min the least
     * @param max the most
     * @return the interval with the middle as its nominal value
     */
    public static Interval between(double min, double max) {
        return new Interval(min, (min + max) / 2, max);
    }
}
