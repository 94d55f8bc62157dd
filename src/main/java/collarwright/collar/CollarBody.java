package collarwright.collar;

import collarwright.geometry.Interval;
import java.util.Optional;

/**
 * The pipe ring that holes are drilled into.
 *
 * @param outerRadius outside radius, measured where it was measured
 * @param wall wall thickness with its limits
 * @param width length of the ring along its axis
 * @param rims size of the 45° chamfer, even around both rims of every hole; 0 for sharp rims, below half the thinnest wall
 * @param measuredBearing how much of the wall bears, measured on a trial piece with its 95 % limits, 0 to the thickest wall,
 *     in the middle of the wall; empty if the full wall bears, less its eased rims
 */
public record CollarBody(
        double outerRadius, Interval wall, double width, double rims, Optional<Interval> measuredBearing) {
    /** Checks the sizes. */
    public CollarBody {
        if (!(outerRadius > 0 && wall.min() > 0 && wall.max() < outerRadius && width > 0)) {
            throw new IllegalArgumentException("a collar needs a radius, a smaller wall and a width");
        }
        if (!(rims >= 0 && rims < wall.min() / 2)) {
            throw new IllegalArgumentException("rims of " + rims + " on a wall of " + wall.min());
        }
        if (measuredBearing.isPresent()
                && !(rims == 0
                        && measuredBearing.get().min() >= 0
                        && measuredBearing.get().max() <= wall.max())) {
            throw new IllegalArgumentException(
                    "a bearing wall of " + measuredBearing.get() + " in a wall of " + wall + " with rims of " + rims);
        }
    }

    /**
     * A collar on which nothing was tried yet: its full wall bears, less its eased rims.
     *
     * @param outerRadius outside radius, measured where it was measured
     * @param wall wall thickness with its limits
     * @param width length of the ring along its axis
     * @param rims size of the 45° chamfer, 0 for sharp rims
     */
    public CollarBody(double outerRadius, Interval wall, double width, double rims) {
        this(outerRadius, wall, width, rims, Optional.empty());
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
     * Returns the wall that bears, with its limits: what {@link #tiltLimit} and {@link #required} want to be told.
     *
     * @return the measured bearing wall; the wall itself where none was measured
     */
    public Interval bearing() {
        return measuredBearing.orElse(wall);
    }

    /**
     * Finds where a strut binds in a hole of this collar: on its rims, which lie nearer together where they are eased or
     * where less than the wall bears.
     *
     * @param strut strut diameter
     * @param hole hole diameter, at least the strut's and below the bore
     * @param bearing thickness that bears, within the limits of {@link #bearing()}
     * @return the tilt limit
     */
    public double tiltLimit(double strut, double hole, double bearing) {
        return RoundHole.tiltLimit(strut, hole, innerRim(bearing), outerRim(bearing));
    }

    /**
     * Finds where a strut binds that leans to the side as well.
     *
     * @param strut strut diameter
     * @param hole hole diameter, at least the strut's and below the bore
     * @param bearing thickness that bears, within the limits of {@link #bearing()}
     * @param toward the direction whose bearing it leans in
     * @return the lean at which it binds
     */
    public double tiltLimit(double strut, double hole, double bearing, Direction toward) {
        return toward.swing() == 0
                ? tiltLimit(strut, hole, bearing)
                : SwungContact.tiltLimit(strut, hole, rimsAt(bearing), toward.bearing());
    }

    private SwungContact.Wall rimsAt(double bearing) {
        return new SwungContact.Wall(innerRim(bearing), outerRim(bearing));
    }

    /**
     * Finds the least hole for a direction.
     *
     * @param strut strut diameter
     * @param toward where the strut has to point
     * @param bearing thickness that bears, within the limits of {@link #bearing()}
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     */
    public double required(double strut, Direction toward, double bearing) {
        if (toward.swing() == 0) {
            return required(strut, StrictMath.abs(toward.tilt()), bearing);
        }
        return inBore(SwungContact.required(strut, toward, rimsAt(bearing)), bearing);
    }

    private double inBore(double least, double bearing) {
        double bore = 2 * (measuredBearing.isPresent() ? leastInnerRadius() : outerRadius - bearing);
        return least < bore ? least : Double.POSITIVE_INFINITY;
    }

    /**
     * Finds the least hole for a lean.
     *
     * @param strut strut diameter
     * @param lean the lean that is needed
     * @param bearing thickness that bears, within the limits of {@link #bearing()}
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     */
    public double required(double strut, double lean, double bearing) {
        return inBore(RoundHole.required(strut, lean, innerRim(bearing), outerRim(bearing)), bearing);
    }

    /**
     * Returns the radius at which a strut touches inside.
     *
     * @param bearing thickness that bears
     * @return the inside radius, further out where the rim is eased; half of a measured bearing wall within the middle of
     *     the nominal wall
     */
    public double innerRim(double bearing) {
        return measuredBearing.isPresent() ? midRadius() - bearing / 2 : outerRadius - bearing + rims;
    }

    /**
     * Returns the radius at which a strut touches outside.
     *
     * @param bearing thickness that bears
     * @return the outside radius, further in where the rim is eased; half of a measured bearing wall beyond the middle of
     *     the nominal wall
     */
    public double outerRim(double bearing) {
        return measuredBearing.isPresent() ? midRadius() + bearing / 2 : outerRadius - rims;
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
