package collarwright.units;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Gives the millimetres of a sentence in inches as well, inches first, for people who work in inches: {@code at least 17.00
 * mm} becomes {@code at least 0.669 in (17.00 mm)}, and {@code 160.1 mm (6.303 in)} becomes {@code 6.303 in (160.1 mm)}.
 * What stands in quotation marks is left as it was written, and so is what is already told in inches first.
 */
public final class InchesFirst {

    private static final String NUMBER = "-?\\d+(?:\\.\\d+)?";
    private static final String SIZE = "(" + NUMBER + "(?:(?: to | × )" + NUMBER + ")*)";

    private static final Pattern LENGTH = Pattern.compile(
            "\"[^\"]*\"" // as somebody wrote it
                    + "|in \\(" + SIZE + " mm\\)" // inches first already
                    + "|(?<![\\w.×/-])" + SIZE + " mm \\(" + SIZE + " in\\)"
                    + "|(?<![\\w.×/-])" + SIZE + " mm(?![\\w²³/])");

    private static final Pattern ONE = Pattern.compile(NUMBER);

    private InchesFirst() {}

    /**
     * Rewrites a text.
     *
     * @param text lengths with the unit mm, a blank between
     * @return the same with inches to a thousandth before every length in mm
     */
    public static String of(String text) {
        return LENGTH.matcher(text).replaceAll(m -> java.util.regex.Matcher.quoteReplacement(shown(m)));
    }

    private static String shown(MatchResult match) {
        if (match.group(2) != null) {
            return match.group(3) + " in (" + match.group(2) + " mm)";
        }
        if (match.group(4) != null) {
            String inches = ONE.matcher(match.group(4))
                    .replaceAll(m -> Decimals.fixed(Double.parseDouble(m.group()) / 25.4, 3));
            return inches + " in (" + match.group(4) + " mm)";
        }
        return match.group();
    }
}
