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
 * @param tiltLimit where a nominal strut binds in the nominal hole and wall
 * @param tiltMin where the tightest case binds: thickest strut, smallest hole, thickest wall
 * @param tiltMax where the loosest case binds: thinnest strut, largest hole, thinnest wall
 */
public record Hole(
        int number,
        double azimuth,
        double height,
        double neededLean,
        double required,
        Cutter cutter,
        double tiltLimit,
        double tiltMin,
        double tiltMax) {
    /** Checks the number and the azimuth. */
    public Hole {
        if (number < 1 || !(azimuth >= 0 && azimuth < 2 * StrictMath.PI)) {
            throw new IllegalArgumentException("hole " + number + " at " + azimuth);
        }
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
