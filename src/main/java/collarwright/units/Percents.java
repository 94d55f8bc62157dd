package collarwright.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads shares in percent. */
public final class Percents {

    private static final String EXPECTED = "a share from 0 to 100 %, such as 3 %";
    private static final Pattern TEXT = Pattern.compile("([+-]?) ?" + NumberText.NUMBER + " ?(\\D.*)?");

    private Percents() {}

    /**
     * Reads a share.
     *
     * @param text such as {@code 3 %}; a bare number is in percent too
     * @return percent, 0 to 100, or why it was refused
     */
    public static Reading<Double> parse(String text) {
        String plain = NumberText.plain(text);
        Optional<Reading<Double>> refused = NumberText.refuse(text, plain, EXPECTED);
        if (refused.isPresent()) {
            return refused.get();
        }
        Matcher match = TEXT.matcher(plain);
        if (!match.matches() || !percent(match.group(3))) {
            return Reading.refused(
                    Refusal.Fault.UNREADABLE, EXPECTED, Quoted.text(text), "write a number and the sign %");
        }
        return NumberText.number(match.group(2))
                .then(number -> from(match.group(1).equals("-") ? -number.value() : number.value()));
    }

    /**
     * Takes a bare number as percent.
     *
     * @param percent any double
     * @return percent, 0 to 100, or why it was refused
     */
    public static Reading<Double> from(double percent) {
        if (!Double.isFinite(percent)) {
            return Reading.refused(
                    Refusal.Fault.NOT_A_NUMBER, EXPECTED, Quoted.number(percent), "write the number in digits");
        }
        if (percent < 0 || percent > 100) {
            return Reading.refused(
                    Refusal.Fault.OUT_OF_RANGE, EXPECTED, Decimals.trimmed(percent, 6) + " %", "write a share from 0 to 100 %");
        }
        return Reading.of(percent == 0 ? 0 : percent);
    }

    private static boolean percent(@org.jspecify.annotations.Nullable String unit) {
        return unit == null || unit.equals("%") || unit.equals("percent");
    }
}
