package collarwright.paper;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.Job;
import collarwright.plan.UnitWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Findings as they are read in the shop. */
final class FindingTexts {

    private FindingTexts() {}

    static String word(Level level) {
        return switch (level) {
            case STOP -> "STOP";
            case WARN -> "WARNING";
            case NOTE -> "note";
        };
    }

    /** How many of each, such as {@code 2 warnings, 1 note}. */
    static String count(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "nothing found";
        }
        List<String> parts = new ArrayList<>();
        for (Level level : Level.values()) {
            long count = findings.stream().filter(f -> f.level() == level).count();
            if (count > 0) {
                String word = level == Level.STOP ? "stop" : level == Level.WARN ? "warning" : "note";
                parts.add(count + " " + word + (count == 1 ? "" : "s"));
            }
        }
        return String.join(", ", parts);
    }

    static Grid grid(Job job, List<Finding> all) {
        List<Finding> findings = UnitWords.of(job, all);
        Map<Object, List<Finding>> alike = findings.stream()
                .collect(Collectors.groupingBy(
                        f -> List.of(f.level(), f.code(), f.expected(), f.found(), f.hints()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return new Grid(
                "Findings, the gravest first",
                List.of(
                        Column.words("finding"),
                        Column.words("where"),
                        Column.words("expected, found"),
                        Column.words("what to do")),
                alike.values().stream().map(FindingTexts::row).toList());
    }

    // Findings that differ in their place only stand in one row.
    private static List<Cell> row(List<Finding> alike) {
        Finding first = alike.get(0);
        String places = alike.stream().map(f -> f.where().text()).collect(Collectors.joining("\n"));
        String name = word(first.level()) + "\n" + first.code();
        return List.of(
                first.level() == Level.NOTE ? Cell.of(name) : Cell.strong(name),
                Cell.of(places),
                Cell.of("expected " + first.expected() + "\nfound " + first.found()),
                Cell.of(String.join("\n", first.hints())));
    }
}
