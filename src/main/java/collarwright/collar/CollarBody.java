package collarwright.collar;

import collarwright.geometry.Interval;

/**
 * The pipe ring that holes are drilled into.
 *
 * @param outerRadius outside radius, measured where it was measured
 * @param wall wall thickness with its limits
 * @param width length of the ring along its axis
 * @param rims size of the 45° chamfer, even around both rims of every hole; 0 for sharp rims, below half the thinnest wall
 */
public record CollarBody(double outerRadius, Interval wall, double width, double rims) {
    /** Checks the sizes. */
    public CollarBody {
        if (!(outerRadius > 0 && wall.min() > 0 && wall.max() < outerRadius && width > 0)) {
            throw new IllegalArgumentException("a collar needs a radius, a smaller wall and a width");
        }
        if (!(rims >= 0 && rims < wall.min() / 2)) {
            throw new IllegalArgumentException("rims of " + rims + " on a wall of " + wall.min());
        }
    }

    /**
     * A collar whose holes keep sharp rims.
     *
     * @param outerRadius outside radius, measured where it was measured
     * @param wall wall thickness with its limits
     * @param width length of the ring along its axis
     */
    public CollarBody(double outerRadius, Interval wall, double width) {
        this(outerRadius, wall, width, 0);
    }

    /**
     * Finds where a strut binds in a hole of this collar: on its rims, which lie nearer together where they are eased.
     *
     * @param strut strut diameter
     * @param hole hole diameter, at least the strut's and below the bore
     * @param thickness of the wall, within its limits
     * @return the tilt limit
     */
    public double tiltLimit(double strut, double hole, double thickness) {
        return RoundHole.tiltLimit(strut, hole, outerRadius - thickness + rims, outerRadius - rims);
    }

    /**
     * Finds where a strut binds that leans to the side as well.
     *
     * @param strut strut diameter
     * @param hole hole diameter, at least the strut's and below the bore
     * @param thickness of the wall, within its limits
     * @param toward the direction whose bearing it leans in
     * @return the lean at which it binds
     */
    public double tiltLimit(double strut, double hole, double thickness, Direction toward) {
        return toward.swing() == 0
                ? tiltLimit(strut, hole, thickness)
                : SwungContact.tiltLimit(strut, hole, bearing(thickness), toward.bearing());
    }

    private SwungContact.Wall bearing(double thickness) {
        return new SwungContact.Wall(outerRadius - thickness + rims, outerRadius - rims);
    }

    /**
     * Finds the least hole for a direction.
     *
     * @param strut strut diameter
     * @param toward where the strut has to point
     * @param thickness of the wall, within its limits
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     */
    public double required(double strut, Direction toward, double thickness) {
        if (toward.swing() == 0) {
            return required(strut, StrictMath.abs(toward.tilt()), thickness);
        }
        double least = SwungContact.required(strut, toward, bearing(thickness));
        return least < 2 * (outerRadius - thickness) ? least : Double.POSITIVE_INFINITY;
    }

    /**
     * Finds the least hole for a lean.
     *
     * @param strut strut diameter
     * @param lean the lean that is needed
     * @param thickness of the wall, within its limits
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     */
    public double required(double strut, double lean, double thickness) {
        double least = RoundHole.required(strut, lean, outerRadius - thickness + rims, outerRadius - rims);
        return least < 2 * (outerRadius - thickness) ? least : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns the inside radius with the nominal wall.
     *
     * @return outer radius less nominal wall
     */
    public double innerRadius() {
        return outerRadius - wall.nominal();
    }

    /**
     * Returns the smallest inside radius.
     *
     * @return outer radius less the thickest wall
     */
    public double leastInnerRadius() {
        return outerRadius - wall.max();
    }

    /**
     * Returns the radius of the middle of the wall.
     *
     * @return outer radius less half the nominal wall
     */
    public double midRadius() {
        return outerRadius - wall.nominal() / 2;
    }
}
