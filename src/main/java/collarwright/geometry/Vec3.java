package collarwright.geometry;

/**
 * A point or a direction in space, right-handed axes.
 *
 * @param x along +x
 * @param y along +y
 * @param z along +z
 */
public record Vec3(double x, double y, double z) {

    /**
     * Adds.
     *
     * @param o the other
     * @return this + o
     */
    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    /**
     * Subtracts.
     *
     * @param o the other
     * @return this − o
     */
    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    /**
     * Scales.
     *
     * @param k the factor
     * @return k · this
     */
    public Vec3 times(double k) {
        return new Vec3(k * x, k * y, k * z);
    }

    /**
     * Inner product.
     *
     * @param o the other
     * @return this · o
     */
    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    /**
     * Outer product.
     *
     * @param o the other
     * @return this × o, right-handed
     */
    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    /**
     * Length.
     *
     * @return the Euclidean norm
     */
    public double norm() {
        return StrictMath.sqrt(dot(this));
    }

    /**
     * Direction.
     *
     * @return this scaled to length 1
     * @throws IllegalArgumentException if the length is 0 or not finite, or its square is too small or large for a double
     */
    public Vec3 unit() {
        double n = norm();
        if (!(n > 0 && n < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a vector of length " + n + " has no direction");
        }
        return times(1 / n);
    }
}
