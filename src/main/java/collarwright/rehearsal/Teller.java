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

    private static final String DO_NOT_RUN = "do not run it before this is put right";
    private static final String ANEW = "or, if the change is meant, change the job and make the pack anew";

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
        Finding finding =
                new Finding(level, Code.PROGRAM_DIFFERS, where, fault.expected(), fault.found(), hints(level, fault));
        kinds.computeIfAbsent(level + fault.expected() + " " + fault.found(), k -> new ArrayList<>())
                .add(finding);
    }

    private static List<String> hints(Level level, Fault fault) {
        return switch (level) {
            case STOP -> List.of(DO_NOT_RUN, ANEW);
            case WARN ->
                fault.expected().startsWith("(REVISION")
                        ? List.of("compare the job with the one the program was made from", "or make the pack anew")
                        : List.of("run it only if the change is meant; watch heat and chips on the first hole");
            case NOTE -> List.of("nothing to do");
        };
    }

    /** The word that a fault speaks of, such as the X of {@code X 12.000 mm}. */
    private static String word(String found) {
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
        return findings.size() <= MOST ? findings : findings.subList(0, MOST);
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
