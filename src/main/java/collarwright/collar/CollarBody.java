package collarwright.collar;

import collarwright.geometry.Interval;

/**
 * The pipe ring that holes are drilled into.
 *
 * @param outerRadius outside radius, measured where it was measured
 * @param wall wall thickness with its limits
 * @param width length of the ring along its axis
 */
public record CollarBody(double outerRadius, Interval wall, double width) {
    /** Checks the sizes. */
    public CollarBody {
        if (!(outerRadius > 0 && wall.min() > 0 && wall.max() < outerRadius && width > 0)) {
            throw new IllegalArgumentException("a collar needs a radius, a smaller wall and a width");
        }
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
