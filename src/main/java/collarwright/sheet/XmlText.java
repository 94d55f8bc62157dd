package collarwright.sheet;

/** Text as XML writes it. */
final class XmlText {
    private XmlText() {}

    /** Escapes what XML would read as its own, and shows a visible {@code ?} for what it may not hold. */
    static String escaped(String text) {
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
            case '\t', '\n', '\r' -> " ";
            default -> isAllowed(c) ? Character.toString(c) : "?";
        };
    }

    // Source: W3C, Extensible Markup Language (XML) 1.0, Fifth Edition, section 2.2, production [2] Char.
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
