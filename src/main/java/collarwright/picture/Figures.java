package collarwright.picture;

import collarwright.machining.ProgramUnits;
import collarwright.units.Angles;
import collarwright.units.Decimals;

/**
 * Numbers as they stand in pictures: one unit, the one that the shop works in.
 *
 * @param units the shop's unit of length
 */
public record Figures(ProgramUnits units) {

    /**
     * A length on a hub or a strut.
     *
     * @param length mm
     * @return such as {@code 77.8 mm} or {@code 3.063 in}
     */
    public String length(double length) {
        return units == ProgramUnits.MM
                ? Decimals.fixed(length, 1) + " mm"
                : Decimals.fixed(length / units.millimetres(), 3) + " in";
    }

    /**
     * A size of stock or of a cutter.
     *
     * @param length mm
     * @return such as {@code 40.05 mm} or {@code 0.922 in}
     */
    public String size(double length) {
        return units == ProgramUnits.MM
                ? Decimals.trimmed(length, 2) + " mm"
                : Decimals.fixed(length / units.millimetres(), 3) + " in";
    }

    /**
     * A length on the dome.
     *
     * @param length mm
     * @return such as {@code 2830 mm} or {@code 111.4 in}
     */
    public String span(double length) {
        return units == ProgramUnits.MM
                ? Decimals.fixed(length, 0) + " mm"
                : Decimals.fixed(length / units.millimetres(), 1) + " in";
    }

    /**
     * An angle.
     *
     * @param radians any angle
     * @return such as {@code 58.28°}; 0 has no decimals
     */
    public static String degrees(double radians) {
        return radians == 0 ? "0°" : Decimals.fixed(Angles.degrees(radians), 2) + "°";
    }
}
