package collarwright.units;

import java.util.Locale;
import java.util.Optional;

/** Knows the units of other dimensions, so that a speed given for a length is named as one. */
final class Dimensions {

    private Dimensions() {}

    /**
     * Names the dimension of a unit that is not a length.
     *
     * @param unit what stands after the number
     * @return such as {@code a speed}, or empty if it is unknown
     */
    static Optional<String> of(String unit) {
        String plain = unit.toLowerCase(Locale.ROOT);
        return switch (plain) {
            case "deg", "degree", "degrees", "°", "rad", "radian", "radians" -> Optional.of("an angle");
            case "s", "sec", "second", "seconds", "min", "minute", "minutes", "h", "hour", "hours", "ms" ->
                Optional.of("a time");
            case "kg", "g", "lb", "lbs", "oz", "t" -> Optional.of("a mass");
            case "%", "percent" -> Optional.of("a share");
            case "rpm", "/min", "rev/min", "r/min", "u/min" -> Optional.of("a speed of turning");
            case "mph", "kph", "km/h", "sfm", "sfpm", "ipm", "fpm" -> Optional.of("a speed");
            case "mm/rev", "in/rev", "ipr", "mm/turn" -> Optional.of("a feed for each turn");
            case "mm2", "mm^2", "mm²", "cm2", "cm²", "m2", "m²", "in2", "in²", "sq in", "sq ft", "ft2" ->
                Optional.of("an area");
            case "mm3", "mm³", "cm3", "cm³", "m3", "m³", "l", "ml" -> Optional.of("a volume");
            case "n", "kn", "lbf" -> Optional.of("a force");
            case "psi", "bar", "mpa", "kpa", "pa" -> Optional.of("a pressure");
            case "°c", "°f", "k" -> Optional.of("a temperature");
            default -> lengthOverTime(plain) ? Optional.of("a speed") : Optional.empty();
        };
    }

    private static boolean lengthOverTime(String plain) {
        int slash = plain.indexOf('/');
        if (slash <= 0 || LengthUnit.parse(plain.substring(0, slash).strip()).isEmpty()) {
            return false;
        }
        return switch (plain.substring(slash + 1).strip()) {
            case "s", "sec", "second", "seconds", "min", "minute", "minutes", "h", "hour" -> true;
            default -> false;
        };
    }
}
