package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.machining.Machine;
import collarwright.machining.ProgramFile;
import collarwright.testing.CanonicalCall;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Drawn jobs on every machine of the profiles: each program passes our rehearsal and rs274 (linuxcnc-uspace, Debian), and
 * each of many ways to spoil it is caught. What is not caught has to be no change at all, and that is for rs274 to say: it
 * must make the same moves of both texts, and no word for a hand may be another. {@code target/mutations.csv} has every line.
 */
@NeedsChecker(Checker.RS274)
class MutationsTest {

    private static final int SEEDS = 4;

    @Test
    void everyProgram_passes_andEverySpoiltOneIsCaught() throws IOException {
        List<String> rows = new ArrayList<>(List.of("machine,seed,program,rule,mutation,line,before,after,caught by"));
        Set<String> caught = new TreeSet<>();
        List<String> missed = new ArrayList<>();
        for (Machine machine : ProfileJobs.machines()) {
            int programs = 0;
            for (int seed = 1; seed <= SEEDS; seed++) {
                ProfileJobs job = ProfileJobs.draw(Seeds.of(seed), machine);
                for (ProgramFile file : job.programs().stream().limit(6).toList()) {
                    assertThat(Rehearsal.rehearse(file, job.settings())).isEmpty();
                    Rs274.Reading good = read(file.text(), job);
                    assertThat(good.accepted())
                            .as(file.name() + ": " + good.complaint())
                            .isTrue();
                    programs++;
                    if (file.purpose() == ProgramFile.Purpose.CUT) {
                        spoil(new Case(machine, seed, file, job), canonical(good), rows, caught, missed);
                    }
                }
            }
            assertThat(programs).as("programs drawn for " + machine.name()).isGreaterThan(8);
        }
        Files.write(ProjectFolder.target().resolve("mutations.csv"), rows);
        assertThat(missed).isEmpty();
        assertThat(rows).hasSizeGreaterThan(1500);
        assertThat(caught)
                .containsAll(Mutation.all().stream().map(Mutation::name).toList());
    }

    private static Rs274.Reading read(String text, ProfileJobs job) {
        return MachineContractTest.CONTROL.read(MachineContractTest.asItReads(text, job.settings()));
    }

    private record Case(Machine machine, int seed, ProgramFile file, ProfileJobs job) {}

    private static void spoil(Case c, List<String> good, List<String> rows, Set<String> caught, List<String> missed) {
        int number = 0;
        for (Mutation mutation : Mutation.all()) {
            Seeds draw = Seeds.of(1000L * c.seed() + number++);
            mutation.apply(draw, c.file().text()).ifPresent(spoilt -> {
                String by = caughtBy(c, spoilt);
                if (mutation.rule().equals(RapidMutation.RULE)
                        && !by.isEmpty()
                        && firstLine(c, spoilt) != spoilt.line()) {
                    by = ""; // a rapid into the pipe is told at its own line first
                }
                if (by.isEmpty()) {
                    Rs274.Reading reading = read(spoilt.text(), c.job());
                    boolean told = !mutation.rule().equals("cutters");
                    boolean same =
                            told && reading.accepted() && canonical(reading).equals(good);
                    by = same ? "no change: the same moves by rs274" : "NOT CAUGHT";
                } else {
                    caught.add(mutation.name());
                }
                String row = String.join(
                        ",",
                        c.machine().name(),
                        Integer.toString(c.seed()),
                        c.file().name(),
                        mutation.rule(),
                        mutation.name(),
                        Integer.toString(spoilt.line()),
                        quoted(spoilt.before()),
                        quoted(spoilt.after()),
                        quoted(by));
                rows.add(row);
                if (by.equals("NOT CAUGHT")) {
                    missed.add(row);
                }
            });
        }
    }

    private static String caughtBy(Case c, Mutation.Spoilt spoilt) {
        List<Finding> findings = rehearsed(c, spoilt);
        return findings.isEmpty() ? "" : findings.get(0).expected();
    }

    private static int firstLine(Case c, Mutation.Spoilt spoilt) {
        return rehearsed(c, spoilt).get(0).where() instanceof Where.Text text ? text.line() : 0;
    }

    private static List<Finding> rehearsed(Case c, Mutation.Spoilt spoilt) {
        ProgramFile f = c.file();
        ProgramFile file =
                new ProgramFile(f.name(), f.purpose(), f.task(), f.lift(), f.effort(), spoilt.text(), f.after());
        return Rehearsal.rehearse(file, c.job().settings());
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"").replace("\r", "<CR>").replace("\t", "<TAB>") + "\"";
    }

    /** What happens, without comments, block numbers, modes that change nothing, and moves to where the tool stands. */
    static List<String> canonical(Rs274.Reading reading) {
        List<String> events = new ArrayList<>();
        String at = "";
        String feed = "";
        String unit = "";
        String speed = "";
        String spindle = "off";
        for (CanonicalCall call : reading.calls()) {
            String words = String.join(" ", call.words());
            switch (call.name()) {
                case "USE_LENGTH_UNITS" -> unit = words;
                case "SET_FEED_RATE" -> feed = words;
                case "SET_SPINDLE_SPEED" -> speed = words;
                case "START_SPINDLE_CLOCKWISE" -> {
                    String on = "on " + speed;
                    addIf(!on.equals(spindle), events, on);
                    spindle = on;
                }
                case "STOP_SPINDLE_TURNING" -> {
                    addIf(!spindle.equals("off"), events, "off");
                    spindle = "off";
                }
                case "STRAIGHT_TRAVERSE", "STRAIGHT_FEED" -> {
                    String drive = call.name().equals("STRAIGHT_FEED") ? feed + " " + spindle : "";
                    addIf(!words.equals(at), events, call.name() + " " + unit + " " + words + " " + drive);
                    at = words;
                }
                case "DWELL", "PROGRAM_STOP", "PROGRAM_END", "ARC_FEED", "CHANGE_TOOL" ->
                    events.add(call.name() + " " + words);
                default -> {
                    // Comments and modes.
                }
            }
        }
        return events;
    }

    private static void addIf(boolean changes, List<String> events, String event) {
        if (changes) {
            events.add(event);
        }
    }
}
