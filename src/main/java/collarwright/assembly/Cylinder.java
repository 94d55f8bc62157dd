package collarwright.assembly;

import collarwright.geometry.Vec3;

/**
 * A solid cylinder with square ends, such as a strut or a centre ring that is taken as full.
 *
 * @param start middle of one end face
 * @param direction unit, from there along the axis into the cylinder
 * @param length of the axis
 * @param radius of the cylinder
 */
public record Cylinder(Vec3 start, Vec3 direction, double length, double radius) {
    /** Checks the sizes. */
    public Cylinder {
        if (!(length > 0 && radius > 0) || StrictMath.abs(direction.norm() - 1) > 1e-9) {
            throw new IllegalArgumentException("a cylinder needs a unit direction, a length and a radius");
        }
    }

    /**
     * Returns a point of the axis.
     *
     * @param along how far from the start
     * @return the point
     */
    public Vec3 at(double along) {
        return start.plus(direction.times(along));
    }
}
