package collarwright.hub;

/**
 * How near two struts or two hubs have to be to count as equal.
 *
 * @param length of chords, in the dome's unit
 * @param angle of axial angles, twists and gaps
 * @param twist whether struts that differ by their twist alone are different; not where no tie holes are drilled
 */
public record Alike(Within length, Within angle, boolean twist) {

    /** For domes that we compute ourselves: only rounding is let pass. */
    public static final Alike EXACT = new Alike(new Within(1e-9, 0), new Within(1e-9, 1e-9), true);

    /**
     * A tolerance.
     *
     * @param relative share of the number
     * @param absolute in its unit
     */
    public record Within(double relative, double absolute) {
        /**
         * Tells whether a larger number is as good as another.
         *
         * @param first the smaller
         * @param number the larger
         * @return true if they are equal
         */
        public boolean same(double first, double number) {
            return number <= first + relative * StrictMath.abs(first) + absolute;
        }
    }

    /**
     * For frames from outside.
     *
     * @param length how far apart two equal lengths may be, in the dome's unit
     * @param angle how far apart two equal angles may be
     * @return the tolerances
     */
    public static Alike within(double length, double angle) {
        return new Alike(new Within(1e-9, length), new Within(1e-9, angle), true);
    }

    /**
     * The same, for struts without tie holes.
     *
     * @return tolerances that do not look at the twist
     */
    public Alike untwisted() {
        return new Alike(length, angle, false);
    }
}
