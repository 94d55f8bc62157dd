package collarwright.machining;

import collarwright.units.Decimals;

/**
 * The steps in which a program can say a length, an angle or a feed.
 *
 * <p>All canonical moves lie on this grid, so a program printed with cycles and one printed without hold the same
 * positions.
 *
 * @param units unit of lengths
 * @param decimals decimals of a length in that unit
 * @param angleDecimals decimals of degrees
 */
public record Grid(ProgramUnits units, int decimals, int angleDecimals) {

    /**
     * The grid of a machine's programs.
     *
     * @param post how its programs are written
     * @param units unit of lengths; inches get one more decimal than millimetres
     * @return the grid
     */
    public static Grid of(Machine.Post post, ProgramUnits units) {
        int more = units == ProgramUnits.INCH ? 1 : 0;
        return new Grid(units, post.lengthDecimals() + more, post.angleDecimals());
    }

    /**
     * Returns the length of one step.
     *
     * @return mm
     */
    public double step() {
        return units.millimetres() / scale(decimals);
    }

    /**
     * Moves a length to the nearest step.
     *
     * @param length any finite length
     * @return the nearest length that a program can say
     */
    public double snap(double length) {
        return at(StrictMath.rint(length / units.millimetres() * scale(decimals)));
    }

    /**
     * Moves a length to the next step upward.
     *
     * @param length any finite length
     * @return the least length on the grid that is not below it (but for a millionth of a step)
     */
    public double snapUp(double length) {
        return at(StrictMath.ceil(length / units.millimetres() * scale(decimals) - 1e-6));
    }

    /**
     * Moves an angle to the nearest step.
     *
     * @param angleDegrees any finite angle
     * @return the nearest angle that a program can say
     */
    public double snapDegrees(double angleDegrees) {
        double k = scale(angleDecimals);
        return StrictMath.rint(angleDegrees * k) / k;
    }

    /**
     * Moves a feed down to a step (0.1 mm/min or 0.01 in/min), but to one step at least.
     *
     * @param mmPerMin a feed above 0
     * @return the feed that a program can say, mm/min, above 0
     */
    public double snapFeed(double mmPerMin) {
        double k = scale(feedDecimals());
        double steps = StrictMath.floor(mmPerMin / units.millimetres() * k + 1e-6);
        return StrictMath.max(steps, 1) / k * units.millimetres();
    }

    /**
     * Prints a length.
     *
     * @param length mm
     * @return in the program's unit, such as {@code 12.500}
     */
    public String length(double length) {
        return Decimals.fixed(
                StrictMath.rint(length / units.millimetres() * scale(decimals)) / scale(decimals), decimals);
    }

    /**
     * Prints an angle; degrees are the same under both units.
     *
     * @param angleDegrees degrees
     * @return such as {@code 58.283}
     */
    public String degrees(double angleDegrees) {
        return Decimals.fixed(angleDegrees, angleDecimals);
    }

    /**
     * Prints a feed.
     *
     * @param mmPerMin mm/min
     * @return in the program's unit per minute, such as {@code 70.0}
     */
    public String feed(double mmPerMin) {
        return Decimals.fixed(mmPerMin / units.millimetres(), feedDecimals());
    }

    private int feedDecimals() {
        return units == ProgramUnits.INCH ? 2 : 1;
    }

    private double at(double steps) {
        return steps / scale(decimals) * units.millimetres();
    }

    /** Exact up to 22 decimals. */
    private static double scale(int decimals) {
        double scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        return scale;
    }
}
