package collarwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads lengths as people write them. Range checks are {@link Length}'s. */
final class LengthText {

    private static final Pattern ONE = Pattern.compile("([+-]?) ?" + NumberText.NUMBER + " ?(\\D.*)?");
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "([+-]?) ?" + NumberText.NUMBER + " ?('|ft\\.?|foot|feet) ?-? ?" + NumberText.NUMBER
                    + " ?(\"|in\\.?|inch|inches)?",
            Pattern.CASE_INSENSITIVE);

    private static final Set<String> OTHER_LENGTHS = Set.of(
            "km", "kilometre", "kilometer", "dm", "um", "µm", "nm", "yd", "yard", "yards", "mi", "mile", "miles");

    private LengthText() {}

    /**
     * Says what a length should look like.
     *
     * @param zero whether 0 may stand there
     * @return for the expected part of a finding
     */
    static String expected(Length.Zero zero) {
        return switch (zero) {
            case REFUSED -> "a length above 0, such as 38 mm or 1-1/2 in";
            case ALLOWED -> "a length of 0 or more, such as 2 mm or 1/16 in";
            case EITHER_SIDE -> "a position, such as -40 mm or 8 in";
        };
    }

    /**
     * Reads a length of any size and sign.
     *
     * @param text as written
     * @param bare the unit of a number without one
     * @param zero whether 0 may stand there, for the wording
     * @return the length, or why it cannot be read
     */
    static Reading<Length> parse(String text, LengthUnit bare, Length.Zero zero) {
        String expected = expected(zero);
        String plain = NumberText.plain(text);
        Optional<Reading<Length>> refused = NumberText.refuse(text, plain, expected);
        if (refused.isPresent()) {
            return refused.get();
        }
        Matcher both = FEET_AND_INCHES.matcher(plain);
        if (both.matches()) {
            return feetAndInches(both);
        }
        Matcher one = ONE.matcher(plain);
        if (!one.matches()) {
            return Reading.refused(
                    Refusal.Fault.UNREADABLE, expected, Quoted.text(text), "write the number first, then its unit");
        }
        String unit = one.group(3) == null ? "" : one.group(3).strip();
        return unit(unit, one.group(2), bare, text, expected)
                .then(u -> NumberText.number(one.group(2)).then(n -> Reading.of(length(one.group(1), n, u))));
    }

    private static Length length(String sign, Ratio number, LengthUnit unit) {
        Ratio size = number.times(unit.millimetres());
        return new Length(sign.equals("-") ? size.times(Ratio.of(-1, 1)) : size, unit);
    }

    private static Reading<Length> feetAndInches(Matcher both) {
        return NumberText.number(both.group(2))
                .then(feet -> NumberText.number(both.group(4)).then(inches -> {
                    Ratio whole = feet.times(Ratio.of(12, 1)).plus(inches);
                    return Reading.of(new Length(
                            length(both.group(1), whole, LengthUnit.IN).millimetres(), LengthUnit.FT));
                }));
    }

    private static Reading<LengthUnit> unit(String unit, String number, LengthUnit bare, String text, String expected) {
        if (unit.isEmpty()) {
            // 1-1/2 in a metric job is an inch size whose unit was left out far more often than one and a half mm.
            return NumberText.fraction(number) && !bare.imperial()
                    ? Reading.refused(
                            Refusal.Fault.UNREADABLE,
                            expected,
                            Quoted.text(text) + ", a fraction without a unit",
                            "write the unit: " + number + " in")
                    : Reading.of(bare);
        }
        Optional<LengthUnit> known = LengthUnit.parse(unit);
        if (known.isPresent()) {
            return Reading.of(known.get());
        }
        Optional<String> other = Dimensions.of(unit);
        return other.isPresent()
                ? Reading.refused(
                        Refusal.Fault.UNREADABLE,
                        expected,
                        Quoted.text(text) + "; " + unit + " is the unit of " + other.get(),
                        otherHints(unit, number))
                : unknown(unit, number, text, expected);
    }

    private static String otherHints(String unit, String number) {
        int slash = unit.indexOf('/');
        Optional<LengthUnit> above =
                slash > 0 ? LengthUnit.parse(unit.substring(0, slash).strip()) : Optional.empty();
        return above.map(u -> "if a length is meant, write " + number + " " + u.symbol())
                .orElse("write the length in mm, cm, m, in or ft");
    }

    private static Reading<LengthUnit> unknown(String unit, String number, String text, String expected) {
        List<String> hints = new ArrayList<>();
        // A length all right, but not one of a workshop: a unit that is spelt like it is a thousandth of it or less.
        List<String> names = OTHER_LENGTHS.contains(unit.toLowerCase(Locale.ROOT))
                ? List.of()
                : Spelling.nearest(unit, LengthUnit.allNames(), 2);
        for (String near : names) {
            LengthUnit.parse(near).ifPresent(u -> {
                String hint = "write " + number + " " + u.symbol();
                if (!hints.contains(hint)) {
                    hints.add(hint);
                }
            });
        }
        hints.add("the units of length are mm, cm, m, in and ft");
        return Reading.refused(
                Refusal.Fault.UNREADABLE,
                expected,
                Quoted.text(text) + "; " + Quoted.text(unit) + " is not a unit",
                hints.toArray(String[]::new));
    }
}
