package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotarySettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A program that somebody may have edited, held against the planned one.
 *
 * <p>Steps: 1. what every control reads alike is evened out (line ends, small letters, blanks, N numbers, blank lines); 2.
 * the text is replayed; 3. each hole it makes is paired with the nearest planned one, and what differs is told in words
 * of the shop; 4. feeds and speeds that machine and cutter bear are told as warnings; 5. everything else is judged by the
 * rules of the rehearsal, as if the plan had those holes and speeds.
 *
 * @param findings PROGRAM_DIFFERS: stops where the program must not be run, warnings where feed, speed or revision
 *     differ, a note where only the order of holes does; by line
 * @param replay what the program does
 */
public record Comparison(List<Finding> findings, Replay replay) {

    /** More differences than this help nobody: our choice, no source. */
    private static final int MOST = 25;

    private static final String DO_NOT_RUN = "do not run it before this is put right";
    private static final String ANEW = "or, if the change is meant, change the job and make the pack anew";

    /** Keeps the findings. */
    public Comparison {
        findings = List.copyOf(findings);
    }

    /**
     * Compares a program with its plan.
     *
     * @param planned the planned program
     * @param raw the text as it stands in the file, without a byte order mark
     * @param shown the file's name as the user gave it
     * @param settings machine and pipe
     * @return the differences, and what the program does
     */
    public static Comparison of(ProgramFile planned, String raw, String shown, RotarySettings settings) {
        EditedText edited = EditedText.of(raw, settings.machine().post());
        Teller teller = new Teller(edited, shown);
        ProgramFile file = with(planned, planned.byTask(), edited.text());
        List<Fault> letters = new ArrayList<>(
                TextRules.check(edited.text(), settings.machine().post()));
        BlockReader reader = BlockReader.read(edited.text());
        letters.addAll(reader.faults());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN, Interpreter.Dialect.of(settings));
        letters.addAll(run.faults());
        edited.faults().forEach(f -> teller.tellInFile(Level.STOP, f, ""));
        letters.forEach(f -> teller.stop(f, ""));
        Proof proof = new Proof(file, settings, reader.blocks(), run.events());
        if (planned.task().isPresent() && settings.machine().tube().isEmpty()) {
            holes(proof, teller);
        } else {
            Rehearsal.rules(proof).forEach(f -> teller.stop(f, ""));
        }
        revision(edited, settings, teller);
        return new Comparison(teller.findings(), Replay.of(proof));
    }

    private static ProgramFile with(ProgramFile planned, List<ProgramFile> byTask, String text) {
        List<ProgramTask> tasks =
                byTask.stream().flatMap(f -> f.task().stream()).toList();
        return new ProgramFile(
                planned.name(),
                planned.purpose(),
                tasks.stream().findFirst(),
                planned.lift(),
                planned.effort(),
                text,
                tasks.isEmpty() ? List.of() : tasks.subList(1, tasks.size()));
    }

    /** Cutter by cutter; then the rules, as if holes and bearable speeds had been planned as they are. */
    private static void holes(Proof whole, Teller teller) {
        List<ProgramFile> asMade = new ArrayList<>();
        List<Event> asPlanned = new ArrayList<>();
        boolean byY = whole.machine().rotary().form().byY();
        for (Section section : Section.of(whole.file(), whole.events(), byY)) {
            Proof proof = new Proof(section.file(), whole.settings(), whole.blocks(), section.events());
            ProgramTask task = section.file().task().orElseThrow();
            HoleDifferences holes = new HoleDifferences(proof, task);
            holes.told().forEach(teller::stop);
            if (holes.reordered()) {
                Fault order = new Fault(1, "the holes in their planned order", "the same in another order");
                teller.tell(Level.NOTE, order, "");
            }
            Drives drives = new Drives(proof, task);
            drives.changes().forEach(f -> teller.tell(Level.WARN, f, f.found().substring(0, 1)));
            asMade.add(with(section.file(), Optional.of(holes.asMade())));
            asPlanned.addAll(drives.asPlanned());
        }
        ProgramFile made = with(whole.file(), asMade, whole.file().text());
        Proof rest = new Proof(made, whole.settings(), whole.blocks(), asPlanned);
        Rehearsal.rules(rest).forEach(f -> teller.stop(f, ""));
    }

    private static ProgramFile with(ProgramFile file, Optional<ProgramTask> task) {
        return new ProgramFile(file.name(), file.purpose(), task, file.lift(), file.effort(), file.text());
    }

    /** A program of another state of the job says so in its head. */
    private static void revision(EditedText edited, RotarySettings settings, Teller teller) {
        String wanted = "(REVISION " + settings.label().revision() + ")";
        List<String> lines = edited.original();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.startsWith("(REVISION ") && !line.equals(wanted)) {
                Fault fault = new Fault(i + 1, wanted + ", as the job is now", line);
                teller.tellInFile(Level.WARN, fault, "");
            }
        }
    }

    /** Turns faults into findings, alike ones into one. */
    private static final class Teller {
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
                    level, Code.PROGRAM_DIFFERS, where, fault.expected(), fault.found(), hints(level, fault));
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
    }
}
