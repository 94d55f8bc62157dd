package collarwright.tooling;

/**
 * One hole of a pattern, with the reason for its size.
 *
 * @param number from 1, clockwise from above, hole 1 on the 0° line
 * @param azimuth of its axis, clockwise from above, from the 0° line, in [0, 2π)
 * @param height of its axis above the collar's mid-plane, + toward TOP
 * @param neededLean the largest lean that a strut in this hole needs
 * @param required the least diameter that allows it, for the thickest strut and bearing wall
 * @param cutter the cutter that makes it
 * @param swing how far that strut points to the side of the hole's axis, clockwise from above; 0 unless the hole is shared
 * @param tiltLimit where a nominal strut binds in the nominal hole and wall
 * @param tiltMin where the tightest case binds: thickest strut, smallest hole, thickest wall
 * @param tiltMax where the loosest case binds: thinnest strut, largest hole, thinnest wall
 * @param tolerance how the limit answers to the sizes
 */
public record Hole(
        int number,
        double azimuth,
        double height,
        double neededLean,
        double required,
        Cutter cutter,
        double swing,
        double tiltLimit,
        double tiltMin,
        double tiltMax,
        Tolerance tolerance) {
    /** Checks the number and the azimuth. */
    public Hole {
        if (number < 1 || !(azimuth >= 0 && azimuth < 2 * StrictMath.PI)) {
            throw new IllegalArgumentException("hole " + number + " at " + azimuth);
        }
    }

    /**
     * A hole for one strut, without its tolerance.
     *
     * @param number from 1
     * @param azimuth of its axis
     * @param height of its axis above the mid-plane
     * @param neededLean lean that the strut needs
     * @param required least diameter that allows it
     * @param cutter the cutter that makes it
     * @param tiltLimit where a nominal strut binds
     * @param tiltMin where the tightest case binds
     * @param tiltMax where the loosest case binds
     */
    public Hole(
            int number,
            double azimuth,
            double height,
            double neededLean,
            double required,
            Cutter cutter,
            double tiltLimit,
            double tiltMin,
            double tiltMax) {
        this(number, azimuth, height, neededLean, required, cutter, 0, tiltLimit, tiltMin, tiltMax, Tolerance.NONE);
    }

    /**
     * The same hole elsewhere on a collar.
     *
     * @param toNumber its number there
     * @param toAzimuth its azimuth there
     * @param toHeight its height there
     * @return the hole
     */
    public Hole at(int toNumber, double toAzimuth, double toHeight) {
        return new Hole(
                toNumber,
                toAzimuth,
                toHeight,
                neededLean,
                required,
                cutter,
                swing,
                tiltLimit,
                tiltMin,
                tiltMax,
                tolerance);
    }

    /**
     * Returns how much further than needed the strut can lean.
     *
     * @return tilt limit less needed lean; negative if the hole stops the strut short
     */
    public double slack() {
        return tiltLimit - neededLean;
    }

    /**
     * Returns the diameter of the hole as it is drilled.
     *
     * @return nominal as-drilled diameter
     */
    public double diameter() {
        return cutter.asDrilled().nominal();
    }
}
