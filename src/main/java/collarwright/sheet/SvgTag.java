package collarwright.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The start or end of an element, or a comment. Read by a loop, not by a pattern: there may be any number of attributes.
 *
 * <p>Source: W3C, XML 1.0, Fifth Edition, sections 2.5 (comments) and 3.1 (tags), with names of plain letters only.
 *
 * @param name of the element; empty for a comment
 * @param start whether an element starts here
 * @param end whether an element ends here; both for one without content
 * @param values its attributes
 * @param twice the name of an attribute that stands twice, or empty
 * @param after where the text goes on
 */
record SvgTag(String name, boolean start, boolean end, Map<String, String> values, String twice, int after) {
    private static final String COMMENT = "<!--";

    SvgTag {
        values = Map.copyOf(values);
    }

    /** Reads what starts with the {@code <} at a place; empty if it is no tag and no comment. */
    static Optional<SvgTag> at(String text, int from) {
        if (text.startsWith(COMMENT, from)) {
            int close = text.indexOf("-->", from + COMMENT.length());
            return close < 0
                    ? Optional.empty()
                    : Optional.of(new SvgTag("", false, false, Map.of(), "", close + "-->".length()));
        }
        boolean closing = text.startsWith("</", from);
        int begin = from + (closing ? 2 : 1);
        int at = word(text, begin);
        if (at == begin || !isLetter(text.charAt(begin))) {
            return Optional.empty();
        }
        String name = text.substring(begin, at);
        Map<String, String> values = new LinkedHashMap<>();
        String twice = "";
        int next = blanks(text, at);
        while (next > at && word(text, next) > next) {
            int nameEnd = word(text, next);
            int quote = blanks(text, StrictMath.min(text.length(), blanks(text, nameEnd) + 1));
            int close = quote < text.length() ? text.indexOf(text.charAt(quote), quote + 1) : -1;
            boolean good = text.startsWith("=", blanks(text, nameEnd))
                    && close > quote
                    && (text.charAt(quote) == '"' || text.charAt(quote) == '\'');
            String value = good ? text.substring(quote + 1, close) : "<";
            if (value.contains("<") || closing) {
                return Optional.empty();
            }
            String attribute = text.substring(next, nameEnd);
            twice = values.put(attribute, value) == null ? twice : attribute;
            at = close + 1;
            next = blanks(text, at);
        }
        boolean empty = !closing && text.startsWith("/>", next);
        return empty || text.startsWith(">", next)
                ? Optional.of(new SvgTag(name, !closing, closing || empty, values, twice, next + (empty ? 2 : 1)))
                : Optional.empty();
    }

    private static int word(String text, int from) {
        int at = from;
        while (at < text.length() && isWord(text.charAt(at))) {
            at++;
        }
        return at;
    }

    static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    private static boolean isWord(char c) {
        return isLetter(c) || (c >= '0' && c <= '9') || c == '_' || c == ':' || c == '-';
    }

    private static int blanks(String text, int from) {
        int at = from;
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }
}
