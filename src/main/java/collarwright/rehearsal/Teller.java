package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.machining.JobLabel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns faults into findings, alike ones into one. */
final class Teller {

    /** More differences than this help nobody: our choice, no source. */
    private static final int MOST = 25;

    private final EditedText edited;
    private final String shown;
    private final Map<String, List<Finding>> kinds = new LinkedHashMap<>();

    Teller(EditedText edited, String shown) {
        this.edited = edited;
        this.shown = shown;
    }

    void stop(Fault fault, String letters) {
        tell(Level.STOP, fault, letters);
    }

    void tell(Level level, Fault fault, String letters) {
        int line = edited.lineInFile(fault.line());
        tellInFile(level, new Fault(line, fault.expected(), fault.found()), letters);
    }

    void tellInFile(Level level, Fault fault, String letters) {
        String word = letters.isEmpty() ? word(fault.found()) : letters;
        Where where = new Where.Text(shown, fault.line(), edited.column(fault.line(), word));
        Finding finding = new Finding(
                level, Code.PROGRAM_DIFFERS, where, fault.expected(), fault.found(), DifferenceHints.of(level, fault));
        kinds.computeIfAbsent(level + fault.expected() + " " + fault.found(), k -> new ArrayList<>())
                .add(finding);
    }

    /** The word that a fault speaks of, such as the X of {@code X 12.000 mm}. */
    private static String word(String found) {
        if (found.startsWith("rapid to Z ") || found.startsWith("cut to Z ")) {
            return "Z";
        }
        String first = found.split("[ ,]", 2)[0];
        if (first.matches("[GMTHNS]\\d+(\\.\\d+)?|[A-Z][+-]?\\d*\\.\\d+")) {
            return first;
        }
        return first.matches("[A-Z]") ? first : "";
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        kinds.values().forEach(alike -> findings.add(together(alike)));
        findings.sort(Comparator.comparing(Finding::level)
                .thenComparingInt(f -> f.where() instanceof Where.Text t ? t.line() : 0));
        return findings.size() <= MOST ? findings : first(findings);
    }

    /** The first of them, and how many more there are. */
    private static List<Finding> first(List<Finding> all) {
        List<Finding> told = new ArrayList<>(all.subList(0, MOST));
        List<Finding> rest = all.subList(MOST, all.size());
        long stops = rest.stream().filter(f -> f.level() == Level.STOP).count();
        Finding next = rest.get(0);
        told.add(new Finding(
                next.level(),
                Code.PROGRAM_DIFFERS,
                next.where(),
                "no more than these",
                "and " + rest.size() + " more, of which " + stops + (stops == 1 ? " is a stop" : " are stops"),
                List.of("put these right, then rehearse it again", "or copy the program from the pack again")));
        return told;
    }

    private static Finding together(List<Finding> alike) {
        Finding first = alike.get(0);
        long places = alike.stream().map(Finding::where).distinct().count();
        String more = places > 1 ? " (and at " + (places - 1) + " more places)" : "";
        return new Finding(
                first.level(), first.code(), first.where(), first.expected(), first.found() + more, first.hints());
    }

    /** A program of another state of the job says so in its head. */
    void revision(JobLabel label) {
        String wanted = "(REVISION " + label.revision() + ")";
        List<String> lines = edited.original();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.startsWith("(REVISION ") && !line.equals(wanted)) {
                Fault fault = new Fault(i + 1, wanted + ", as the job is now", line);
                tellInFile(Level.WARN, fault, "");
            }
        }
    }
}
