package collarwright.sheet;

/** Text of any script as XML, SVG and HTML write it. */
public final class XmlText {
    private XmlText() {}

    /**
     * Escapes what a file would read as its own marks, and shows a visible {@code ?} for what it may not hold.
     *
     * @param text any text
     * @return the text for an element or for an attribute in either kind of quotation marks; line breaks become blanks
     */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.append(escaped(c)));
        return out.toString();
    }

    private static String escaped(int c) {
        return switch (c) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\'' -> "&#39;";
            case '\t', '\n', '\r' -> " ";
            default -> isAllowed(c) ? Character.toString(c) : "?";
        };
    }

    // Source: W3C, Extensible Markup Language (XML) 1.0, Fifth Edition, section 2.2, production [2] Char; its note
    // advises against the controls from 0x7F to 0x9F, which HTML does not allow.
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
