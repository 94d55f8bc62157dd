package collarwright.paper;

import java.nio.charset.StandardCharsets;

/** Text of any script as it stands in a page. */
final class HtmlText {

    private HtmlText() {}

    /** Escapes what a page would take for its own marks, and leaves out what no page may hold. */
    static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    if (allowed(c)) {
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }

    // Extensible Markup Language (XML) 1.0, fifth edition, production 2, Char; C1 controls are left out too.
    private static boolean allowed(int c) {
        boolean control = c < 0x20 ? c != '\t' && c != '\n' : c >= 0x7F && c < 0xA0;
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return !control && !surrogate && c != 0xFFFE && c != 0xFFFF;
    }

    /** A path of the pack as a link. */
    static String link(String path) {
        StringBuilder link = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            if (c < 0x80 && (Character.isLetterOrDigit(c) || "-_.~/".indexOf(c) >= 0)) {
                link.append(c);
            } else {
                link.append('%')
                        .append(Character.toUpperCase(Character.forDigit(c >> 4, 16)))
                        .append(Character.toUpperCase(Character.forDigit(c & 15, 16)));
            }
        }
        return link.toString();
    }
}
