package collarwright.rehearsal;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndTask;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotarySettings;
import java.util.ArrayList;
import java.util.List;
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
        // A word that is not known is in no profile either, and is told by that.
        run.faults().stream().filter(f -> !f.expected().equals(WordRules.KNOWN)).forEach(letters::add);
        edited.faults().forEach(f -> teller.tellInFile(Level.STOP, f, ""));
        letters.forEach(f -> teller.stop(f, ""));
        Proof proof = new Proof(file, settings, reader.blocks(), run.events());
        List<Fault> modes = modes(proof);
        if (!modes.isEmpty()) {
            modes.forEach(f -> teller.stop(f, ""));
        } else if (planned.task().isPresent() && settings.machine().tube().isPresent()) {
            outlines(proof, planned, teller);
        } else if (planned.task().isPresent()) {
            holes(proof, teller);
        } else {
            Rehearsal.rules(proof).forEach(f -> teller.stop(f, ""));
        }
        teller.revision(settings.label());
        SetupComments.check(planned.text().lines().toList(), edited.original())
                .forEach(f -> teller.tellInFile(Level.WARN, f, ""));
        return new Comparison(teller.findings(), Replay.of(proof));
    }

    /**
     * Compares a program for the ends of struts with its plan.
     *
     * @param planned the planned program
     * @param raw the text as it stands in the file, without a byte order mark
     * @param shown the file's name as the user gave it
     * @param settings machine and strut
     * @return the differences, and what the program does
     */
    public static Comparison of(BenchProgram<EndTask> planned, String raw, String shown, BedSettings settings) {
        return BenchComparison.of(planned, raw, shown, new EndBench(settings));
    }

    /**
     * Compares a program for flat strips with its plan.
     *
     * @param planned the planned program
     * @param raw the text as it stands in the file, without a byte order mark
     * @param shown the file's name as the user gave it
     * @param settings machine and material
     * @return the differences, and what the program does
     */
    public static Comparison of(BenchProgram<FlatTask> planned, String raw, String shown, FlatSettings settings) {
        return BenchComparison.of(planned, raw, shown, new FlatBench(settings));
    }

    /** Words that give every number another meaning; what follows from them is not told. */
    private static List<Fault> modes(Proof proof) {
        boolean inch = proof.settings().units() == ProgramUnits.INCH;
        String unit = inch ? "G20" : "G21";
        String other = inch ? "G21" : "G20";
        List<Fault> faults = new ArrayList<>();
        for (Block block : proof.blocks()) {
            if (block.has(other)) {
                faults.add(new Fault(
                        block.line(),
                        unit + ", lengths in " + (inch ? "inches" : "millimetres"),
                        other + ", by which every length is another one; nothing else is judged"));
            }
            if (block.has("G91")) {
                faults.add(new Fault(
                        block.line(),
                        "G90, positions from zero",
                        "G91, by which every number is a distance; nothing else is judged"));
            }
        }
        return faults;
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

    /** What a tube cutter cuts; then the rules, as if that had been planned as it is. */
    private static void outlines(Proof proof, ProgramFile planned, Teller teller) {
        ProgramTask task = planned.task().orElseThrow();
        Reading reading = Reading.of(planned, proof.settings());
        Proof plan = new Proof(
                planned,
                proof.settings(),
                reading.blocks().blocks(),
                reading.run().events());
        TubeDifferences differences = new TubeDifferences(proof, task, plan);
        differences.told().forEach(teller::stop);
        Proof rest = new Proof(
                with(proof.file(), Optional.of(differences.asMade())),
                proof.settings(),
                proof.blocks(),
                proof.events());
        Rehearsal.rules(rest).forEach(f -> teller.stop(f, ""));
    }

    /** Cutter by cutter; then the rules, as if holes and bearable speeds had been planned as they are. */
    private static void holes(Proof whole, Teller teller) {
        List<ProgramFile> asMade = new ArrayList<>();
        List<Event> asPlanned = new ArrayList<>();
        boolean byY = whole.machine().rotary().form().byY();
        boolean nothingMade = false;
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
            drives.tooMuch().forEach(f -> teller.stop(f, f.found().substring(0, 1)));
            drives.longDwells().forEach(f -> teller.tell(Level.WARN, f, "G4"));
            nothingMade = nothingMade || holes.nothingMade();
            asMade.add(with(section.file(), Optional.of(holes.asMade())));
            asPlanned.addAll(drives.asPlanned());
        }
        ProgramFile made = with(whole.file(), asMade, whole.file().text());
        Proof rest = new Proof(made, whole.settings(), whole.blocks(), asPlanned);
        boolean counted = nothingMade; // every hole was told to be missing
        Rehearsal.rules(rest).stream()
                .filter(f -> !(counted && f.found().equals("0 made")))
                .forEach(f -> teller.stop(f, ""));
    }

    private static ProgramFile with(ProgramFile file, Optional<ProgramTask> task) {
        return new ProgramFile(file.name(), file.purpose(), task, file.lift(), file.effort(), file.text());
    }
}
