package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import java.util.List;

/**
 * Prints findings for a person at a terminal, one below the other.
 *
 * <pre>
 * STOP  job.toml:12:10  JOB_BAD_LENGTH
 *   expected  strut.od: a length above 0, such as 38 mm or 1-1/2 in
 *   found     "50 mm/s"; mm/s is the unit of a speed
 *   do        if a length is meant, write 50 mm
 * </pre>
 */
public final class FindingPrinter {

    private FindingPrinter() {}

    /**
     * Prints findings and, if there is more than one, how many there are.
     *
     * @param findings in the order in which they are printed
     * @return lines that end with {@code \n}; empty text for no findings
     */
    public static String print(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            print(finding, text);
        }
        if (findings.size() > 1) {
            text.append(summary(findings)).append('\n');
        }
        return text.toString();
    }

    /**
     * Counts findings by level.
     *
     * @param findings any findings
     * @return such as {@code 2 stops, 1 warning}; a level without findings is left out
     */
    public static String summary(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        count(findings, Level.STOP, "stop", text);
        count(findings, Level.WARN, "warning", text);
        count(findings, Level.NOTE, "note", text);
        return text.length() == 0 ? "no findings" : text.toString();
    }

    private static void count(List<Finding> findings, Level level, String name, StringBuilder text) {
        long count = findings.stream().filter(f -> f.level() == level).count();
        if (count > 0) {
            text.append(text.length() == 0 ? "" : ", ")
                    .append(count)
                    .append(' ')
                    .append(name)
                    .append(count == 1 ? "" : "s");
        }
    }

    private static void print(Finding finding, StringBuilder text) {
        text.append(finding.level().name())
                .append("  ")
                .append(oneLine(finding.where().text()))
                .append("  ")
                .append(finding.code().name())
                .append('\n');
        line(text, "expected", finding.expected());
        line(text, "found", finding.found());
        finding.hints().forEach(hint -> line(text, "do", hint));
    }

    private static void line(StringBuilder text, String label, String content) {
        text.append("  ")
                .append(label)
                .append(" ".repeat(10 - label.length()))
                .append(oneLine(content))
                .append('\n');
    }

    // A terminal obeys control characters; a text from a file must not reach it with them.
    private static String oneLine(String content) {
        StringBuilder line = new StringBuilder();
        content.codePoints().forEach(sign -> {
            if (collarwright.units.Quoted.printable(sign)) {
                line.appendCodePoint(sign);
            } else {
                line.append(sign == '\n' || sign == '\t' ? " " : "<?>");
            }
        });
        return line.toString();
    }
}
