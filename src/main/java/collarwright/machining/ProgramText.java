package collarwright.machining;

import collarwright.units.PlainText;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts any text in the plain letters that a machine's control can show: {@link PlainText}, and signs that a control may
 * take for commands give way to harmless ones.
 */
public final class ProgramText {

    private ProgramText() {}

    /**
     * Writes a text so that it can stand in a program's comment: no brackets, and none of the signs that controls act
     * on even there ({@code % ; ! ? ~ $} and the like).
     *
     * @param text any text
     * @return plain letters, digits and harmless signs
     */
    public static String comment(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : PlainText.ascii(text).toCharArray()) {
            out.append(harmless(c));
        }
        return out.toString();
    }

    /**
     * Breaks a comment into lines at blanks; a word longer than a line is cut.
     *
     * @param text any text
     * @param width most characters on a line, 10 or more
     * @return one line or more; lines after the first start with {@code ..}, so that no control takes their first word
     *     for a command
     */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : comment(text).split(" ", -1)) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append("..");
            }
            line.append(line.isEmpty() ? "" : " ");
            while (line.length() + rest.length() > width) {
                int cut = width - line.length();
                lines.add(line + rest.substring(0, cut));
                rest = rest.substring(cut);
                line.setLength(0);
                line.append(".. ");
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static char harmless(char c) {
        return switch (c) {
            case '(', ')', '[', ']', '{', '}' -> '/';
            case '%' -> '/';
            case ';' -> ',';
            case '!', '?' -> '.';
            case '~', '$', '#', '@', '^', '`', '\\', '|', '<', '>', '"', '&', '*', '_' -> '-';
            default -> c;
        };
    }
}
