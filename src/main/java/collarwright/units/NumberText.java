package collarwright.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the numbers that people write in front of a unit: decimals, fractions, whole numbers with a fraction. */
final class NumberText {

    /** The longest text that is read as a number with its unit. */
    static final int MOST_CHARACTERS = 80;

    /** A number as a regular expression, in one group. */
    static final String NUMBER = "(\\d+(?: ?- ?| )\\d+ ?/ ?\\d+|\\d+ ?/ ?\\d+|\\d+\\.?\\d*|\\.\\d+)";

    private static final Pattern MIXED = Pattern.compile("(?:(\\d+)(?: ?- ?| ))?(\\d+) ?/ ?(\\d+)");
    private static final Pattern COMMA = Pattern.compile("\\d,|,\\d|\\d , ?\\d");
    private static final Pattern EXPONENT = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)[eE][+-]?\\d+.*");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(?:nan|inf|infinity|∞)\\b.*|[+-]?∞.*");
    private static final Map<Character, String> FRACTIONS = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅖', "2/5"),
            Map.entry('⅗', "3/5"),
            Map.entry('⅘', "4/5"),
            Map.entry('⅙', "1/6"),
            Map.entry('⅚', "5/6"));

    private NumberText() {}

    /**
     * Brings a text to plain signs: one kind of blank, dash, slash, foot and inch mark, and no ready-made fractions.
     *
     * @param text as written
     * @return the same in plain signs, no blank at either end
     */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length() + 8);
        text.chars().forEach(sign -> append(plain, (char) sign));
        return plain.toString().replace("''", "\"").replaceAll(" +", " ").strip();
    }

    private static void append(StringBuilder plain, char sign) {
        String fraction = FRACTIONS.get(sign);
        if (fraction != null) {
            plain.append(' ').append(fraction);
            return;
        }
        switch (sign) {
            case '″', '“', '”' -> plain.append('"');
            case '′', '‘', '’' -> plain.append('\'');
            case '−', '‐', '‑', '–' -> plain.append('-');
            case '⁄', '∕' -> plain.append('/');
            case 'º' -> plain.append('°');
            case '\t', '\u00a0', '\u2009', '\u202f' -> plain.append(' ');
            default -> plain.append(sign);
        }
    }

    /**
     * Refuses what is no number to count with, whatever its unit: nothing at all, too much text, a decimal comma, an
     * exponent, NaN and infinity.
     *
     * @param written the text as written
     * @param plain the same in plain signs
     * @param expected what should stand there
     * @param <T> the kind of value
     * @return the refusal, or empty if the text may be read on
     */
    static <T> Optional<Reading<T>> refuse(String written, String plain, String expected) {
        if (plain.isEmpty() || plain.length() > MOST_CHARACTERS) {
            return Optional.of(Reading.refused(
                    Refusal.Fault.UNREADABLE, expected, Quoted.text(written), "write the number and its unit"));
        }
        if (NOT_FINITE.matcher(plain.toLowerCase(Locale.ROOT)).matches()) {
            return Optional.of(Reading.refused(
                    Refusal.Fault.NOT_A_NUMBER, expected, Quoted.text(written), "write the number in digits"));
        }
        if (COMMA.matcher(plain).find()) {
            return Optional.of(Reading.refused(
                    Refusal.Fault.UNREADABLE, expected, Quoted.text(written) + ", with a comma", commaHint(plain)));
        }
        if (EXPONENT.matcher(plain).matches()) {
            return Optional.of(Reading.refused(
                    Refusal.Fault.NOT_A_NUMBER,
                    expected,
                    Quoted.text(written) + ", with a power of ten",
                    "write the number out, such as 1000 for 1e3"));
        }
        return Optional.empty();
    }

    private static String commaHint(String plain) {
        String pointed = plain.replaceFirst(" ?, ?", ".");
        if (plain.indexOf('.') >= 0 || plain.indexOf(',') != plain.lastIndexOf(',')) {
            return "write the number without signs between thousands, and a point before the decimals: "
                    + plain.replace(",", "");
        }
        boolean thousands = plain.matches("[+-]?[1-9]\\d{0,2},\\d{3}(?!\\d).*");
        return "write a point: " + pointed + (thousands ? " (or " + plain.replace(",", "") + ")" : "");
    }

    /**
     * Reads one number.
     *
     * @param text matches {@link #NUMBER}
     * @return its exact value, or the part of it that cannot be
     */
    static Reading<Ratio> number(String text) {
        Matcher mixed = MIXED.matcher(text);
        if (!mixed.matches()) {
            return Reading.of(Ratio.from(new BigDecimal(text.endsWith(".") ? text + "0" : text)));
        }
        BigInteger above = new BigInteger(mixed.group(2));
        BigInteger below = new BigInteger(mixed.group(3));
        if (below.signum() == 0) {
            return Reading.refused(
                    Refusal.Fault.NOT_A_NUMBER,
                    "a fraction such as 15/16",
                    text,
                    "write a number above 0 below the line");
        }
        String whole = mixed.group(1);
        if (whole == null) {
            return Reading.of(new Ratio(above, below));
        }
        if (above.compareTo(below) >= 0) {
            return Reading.refused(
                    Refusal.Fault.UNREADABLE,
                    "a whole number and a fraction below 1, such as 1-15/16",
                    text,
                    "write the whole number that you mean, and the rest as a fraction");
        }
        return Reading.of(Ratio.from(new BigDecimal(whole)).plus(new Ratio(above, below)));
    }

    /**
     * Tells whether a number is written with a fraction line.
     *
     * @param number a number in plain signs
     * @return true for {@code 1-1/2}
     */
    static boolean fraction(String number) {
        return number.indexOf('/') >= 0;
    }
}
