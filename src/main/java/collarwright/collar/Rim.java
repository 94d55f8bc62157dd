package collarwright.collar;

import collarwright.geometry.Vec3;

/**
 * An edge of a hole that a strut may touch: a closed curve in the hole's frame (x outward through the hole's centre, from
 * the collar's axis; z along that axis, toward TOP; y completes it).
 */
@FunctionalInterface
public interface Rim {

    /**
     * A point of the edge.
     *
     * @param turn round the hole, in [0, 2π): 0 toward TOP, a quarter turn toward y
     * @return where it is
     */
    Vec3 at(double turn);

    /**
     * A point of a cylinder about the collar's axis.
     *
     * @param radius of the cylinder
     * @param y to the side, smaller than the radius
     * @param z height
     * @return the point outside
     */
    static Vec3 on(double radius, double y, double z) {
        return new Vec3(StrictMath.sqrt(radius * radius - y * y), y, z);
    }
}
