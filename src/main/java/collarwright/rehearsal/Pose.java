package collarwright.rehearsal;

/**
 * Where the tool stands; an axis that no program has moved yet is NaN.
 *
 * @param x mm
 * @param y mm
 * @param z mm
 * @param a degrees
 */
record Pose(double x, double y, double z, double a) {

    static final Pose UNKNOWN = new Pose(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    Pose withZ(double newZ) {
        return new Pose(x, y, newZ, a);
    }
}
