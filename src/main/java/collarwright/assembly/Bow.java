package collarwright.assembly;

/**
 * How far a strut has to bow so that its ends come nearer to each other, and what that does to its outside fibres. Small
 * deflections of an even, straight, elastic strut with free-turning ends.
 *
 * <p>Pushed together at its ends it bows as half a sine wave of height h: shortening {@code π²h²/(4L)}, curvature {@code π²h/L²}
 * in the middle, strain {@code π·d·√(δ/L)/L}. Pulled aside in the middle it takes the shape of a beam on two supports under
 * one load: shortening {@code 2.4·h²/L}, curvature {@code 12h/L²}, strain {@code (d/2)·12h/L²}. (Deflection curves: Gere and
 * Timoshenko, Mechanics of Materials, buckling of a pinned column and the table of deflections of simple beams; the shortening
 * is half the integral of the squared slope. BowTest integrates both curves.)
 *
 * @param diameter of the strut
 * @param length between its ends
 * @param shortening how much nearer its ends have to come, 0 or more
 */
public record Bow(double diameter, double length, double shortening) {

    private static final double PULLED = 2.4;

    /** Checks the sizes. */
    public Bow {
        if (!(diameter > 0 && length > 0 && shortening >= 0)) {
            throw new IllegalArgumentException("a bow of " + diameter + ", " + length + ", " + shortening);
        }
    }

    /**
     * Returns how high the strut bows when its ends are pushed together.
     *
     * @return height in the middle
     */
    public double riseWhenPushed() {
        return 2 * StrictMath.sqrt(shortening * length) / StrictMath.PI;
    }

    /**
     * Returns how far the middle goes aside when it is pulled.
     *
     * @return height in the middle
     */
    public double riseWhenPulled() {
        return StrictMath.sqrt(shortening * length / PULLED);
    }

    /**
     * Returns the strain of the outside when its ends are pushed together.
     *
     * @return change of length by length
     */
    public double strainWhenPushed() {
        return StrictMath.PI * diameter * StrictMath.sqrt(shortening / length) / length;
    }

    /**
     * Returns the strain of the outside when it is pulled aside in the middle.
     *
     * @return change of length by length
     */
    public double strainWhenPulled() {
        return 6 * diameter * riseWhenPulled() / (length * length);
    }

    /**
     * Returns the larger strain.
     *
     * @return change of length by length
     */
    public double strain() {
        return StrictMath.max(strainWhenPushed(), strainWhenPulled());
    }
}
