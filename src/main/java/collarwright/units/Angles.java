package collarwright.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns angles into what a person reads, and back; inside the program every angle is in radians. */
public final class Angles {

    private static final String EXPECTED = "an angle, such as 0.5 deg";
    private static final Pattern TEXT = Pattern.compile("([+-]?) ?" + NumberText.NUMBER + " ?(\\D.*)?");

    private Angles() {}

    /**
     * Reads an angle.
     *
     * @param text such as {@code 0.5 deg} or {@code 0.5°}; a bare number is in degrees too
     * @return degrees of any size and sign, or why it was refused
     */
    public static Reading<Double> parseDegrees(String text) {
        String plain = NumberText.plain(text);
        Optional<Reading<Double>> refused = NumberText.refuse(text, plain, EXPECTED);
        if (refused.isPresent()) {
            return refused.get();
        }
        Matcher match = TEXT.matcher(plain);
        String unit = match.matches() && match.group(3) != null ? match.group(3).strip() : "";
        if (!match.matches() || !degree(unit)) {
            boolean length = LengthUnit.parse(unit).isPresent() && !unit.isEmpty();
            return Reading.refused(
                    Refusal.Fault.UNREADABLE,
                    EXPECTED,
                    Quoted.text(text) + (length ? "; " + unit + " is a unit of length" : ""),
                    "write the angle in degrees: a number and deg or °");
        }
        return NumberText.number(match.group(2))
                .then(number -> Reading.of(match.group(1).equals("-") ? -number.value() : number.value()));
    }

    private static boolean degree(String unit) {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "", "°", "deg", "deg.", "degree", "degrees" -> true;
            default -> false;
        };
    }

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
