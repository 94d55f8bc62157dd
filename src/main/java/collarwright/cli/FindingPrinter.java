package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    /** Up to this many findings of one kind are printed in full; of more, the first stands for all. */
    private static final int FEW = 3;

    private static final int MOST_ALSO = 8;

    private FindingPrinter() {}

    /**
     * Prints findings and, if there is more than one, how many there are. Many of one kind on parts of the model are
     * told by the first of them, with the places of the others.
     *
     * @param findings in the order in which they are printed
     * @return lines that end with {@code \n}; empty text for no findings
     */
    public static String print(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (List<Finding> alike : grouped(findings)) {
            print(alike.get(0), text);
            alike.stream().skip(1).limit(MOST_ALSO).forEach(f -> also(f, alike.get(0), text));
            if (alike.size() > MOST_ALSO + 1) {
                line(text, "also", (alike.size() - MOST_ALSO - 1) + " more; check --json lists all");
            }
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

    // Findings of one kind on many parts of the model, such as all patterns, come one after another, the worst first.
    private static List<List<Finding>> grouped(List<Finding> findings) {
        Map<String, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String kind = finding.where() instanceof Where.Part
                    ? finding.level() + " " + finding.code()
                    : "a place of its own " + kinds.size();
            kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(finding);
        }
        List<List<Finding>> groups = new ArrayList<>();
        for (List<Finding> kind : kinds.values()) {
            if (kind.size() > FEW) {
                groups.add(kind);
            } else {
                kind.forEach(f -> groups.add(List.of(f)));
            }
        }
        return groups;
    }

    private static void also(Finding finding, Finding first, StringBuilder text) {
        String expected = finding.expected().equals(first.expected()) ? "" : " (expected " + finding.expected() + ")";
        line(text, "also", finding.where().text() + ": " + finding.found() + expected);
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
