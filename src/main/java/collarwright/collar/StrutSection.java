package collarwright.collar;

/**
 * The cross section of a strut: round, or an ellipse.
 *
 * @param largest its largest diameter
 * @param smallest its smallest diameter, above 0
 */
public record StrutSection(double largest, double smallest) {

    /** Checks the order. */
    public StrutSection {
        if (!(smallest > 0 && largest >= smallest && largest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a strut of " + largest + " by " + smallest);
        }
    }

    /**
     * A round strut.
     *
     * @param diameter of the strut
     * @return its section
     */
    public static StrutSection round(double diameter) {
        return new StrutSection(diameter, diameter);
    }

    /**
     * Tells whether it is round.
     *
     * @return true if it is as wide every way
     */
    public boolean isRound() {
        return largest == smallest;
    }

    /**
     * Makes it thicker.
     *
     * @param more what is added to both diameters
     * @return the section
     */
    public StrutSection thicker(double more) {
        return new StrutSection(largest + more, smallest + more);
    }
}
