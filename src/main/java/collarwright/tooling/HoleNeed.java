package collarwright.tooling;

import collarwright.collar.CollarBody;
import collarwright.collar.Direction;
import collarwright.geometry.Interval;

/**
 * What a hole has to fit.
 *
 * @param body the collar
 * @param strut strut diameter with its limits
 * @param toward where the strut has to point
 */
public record HoleNeed(CollarBody body, Interval strut, Direction toward) {

    /**
     * The need of a strut in the plane of the collar's axis.
     *
     * @param body the collar
     * @param strut strut diameter with its limits
     * @param tilt the lean that is needed, 0 or more
     */
    public HoleNeed(CollarBody body, Interval strut, double tilt) {
        this(body, strut, new Direction(leaning(tilt), 0));
    }

    private static double leaning(double tilt) {
        if (!(tilt >= 0)) {
            throw new IllegalArgumentException("lean " + tilt);
        }
        return tilt;
    }

    /**
     * Returns how far the strut has to lean.
     *
     * @return tilt and swing as one angle
     */
    public double lean() {
        return toward.swing() == 0 ? StrictMath.abs(toward.tilt()) : toward.lean();
    }

    /**
     * Finds the least hole for the thickest strut and wall.
     *
     * @return its diameter; infinite if no hole narrower than the bore does
     */
    public double required() {
        return body.required(strut.max(), toward, body.bearing().max());
    }
}
