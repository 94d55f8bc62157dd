package collarwright.units;

/** Turns angles into what a person reads, and back; inside the program every angle is in radians. */
public final class Angles {

    private Angles() {}

    /**
     * Radians to degrees.
     *
     * @param radians an angle in radians
     * @return the angle in degrees
     */
    public static double degrees(double radians) {
        return radians * 180 / StrictMath.PI;
    }

    /**
     * Degrees to radians.
     *
     * @param angleDegrees an angle in degrees
     * @return the angle in radians
     */
    public static double radians(double angleDegrees) {
        return angleDegrees * StrictMath.PI / 180;
    }

    /**
     * Prints an angle in degrees and whole minutes.
     *
     * @param radians an angle in radians, 0 or more
     * @return such as {@code 58° 17'}; the minutes are rounded and carried
     * @throws IllegalArgumentException if the angle is NaN, infinite or negative
     */
    public static String degreesMinutes(double radians) {
        if (!(radians >= 0 && radians < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not an angle of 0 or more: " + radians);
        }
        long minutes = StrictMath.round(degrees(radians) * 60);
        long rest = minutes % 60;
        return minutes / 60 + "° " + (rest < 10 ? "0" : "") + rest + "'";
    }
}
