package collarwright.units;

/** Shows a person what stood in a text, safely: short, on one line, without control characters. */
public final class Quoted {

    private static final int MOST_CHARACTERS = 60;

    private Quoted() {}

    /**
     * Shows a text in quotation marks.
     *
     * @param text any text
     * @return such as {@code "50 mm/s"}; a long text is cut, signs that do not print are written as numbers
     */
    public static String text(String text) {
        return '"' + bare(text) + '"';
    }

    /**
     * Shows a text without quotation marks.
     *
     * @param text any text
     * @return the text on one line, cut if long
     */
    public static String bare(String text) {
        StringBuilder shown = new StringBuilder();
        int signs = text.codePointCount(0, text.length());
        text.codePoints()
                .limit(MOST_CHARACTERS)
                .forEach(sign -> {
                    if (printable(sign)) {
                        shown.appendCodePoint(sign);
                    } else {
                        shown.append("<").append(hex(sign)).append('>');
                    }
                });
        return signs > MOST_CHARACTERS ? shown + "… (" + signs + " characters)" : shown.toString();
    }

    /**
     * Shows a number as a person may have written it.
     *
     * @param number any double
     * @return its shortest digits; {@code nan}, {@code inf} or {@code -inf}
     */
    public static String number(double number) {
        if (Double.isNaN(number)) {
            return "nan";
        }
        if (Double.isInfinite(number)) {
            return number > 0 ? "inf" : "-inf";
        }
        String digits = Double.toString(number);
        return digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
    }

    /**
     * Tells whether a sign may be shown as it is.
     *
     * @param sign a code point
     * @return false for control characters, line separators, halves of pairs and signs that turn the writing round
     */
    public static boolean printable(int sign) {
        boolean turns = (sign >= 0x202A && sign <= 0x202E) || (sign >= 0x2066 && sign <= 0x2069);
        return switch (Character.getType(sign)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> false;
            default -> !turns && sign != 0xFEFF;
        };
    }

    private static String hex(int sign) {
        String digits = Integer.toHexString(sign).toUpperCase(java.util.Locale.ROOT);
        return "U+" + "0".repeat(StrictMath.max(0, 4 - digits.length())) + digits;
    }
}
