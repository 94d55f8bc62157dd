package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.Job;
import collarwright.machining.ProgramFile;
import collarwright.plan.Production;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code rehearse} says about edits that a shop makes: at the line of the edit, once, with what would do. */
class RehearseWordsTest {

    private static final Path JOB = ProjectFolder.top().resolve("output-samples/cloche/job.toml");
    private static final String HOLES = "LB-2-TW-23.nc";
    private static final Map<String, String> PROGRAMS = new TreeMap<>();

    @TempDir
    private Path folder = Path.of("unset");

    @BeforeAll
    static void programs() throws IOException {
        Job job = DomeJobs.read(JOB);
        for (ProgramFile file : Production.of(job, List.of()).rotary().programs()) {
            PROGRAMS.put(file.name(), file.text());
        }
    }

    private static String text(String name) {
        return String.valueOf(PROGRAMS.get(name));
    }

    private CommandRun edited(String name, UnaryOperator<String> edit) throws IOException {
        String changed = edit.apply(text(name));
        assertThat(changed).as("the text to change is there").isNotEqualTo(text(name));
        Path file = Files.writeString(folder.resolve(name), changed);
        return CommandRun.of("rehearse", file.toString(), "--job", JOB.toString());
    }

    /** The line, from 1, of the n-th line that begins so. */
    private static int line(String text, String begin, int nth) {
        List<String> lines = text.lines().toList();
        int left = nth;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(begin) && --left == 0) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(begin);
    }

    private static String changed(String text, int line, UnaryOperator<String> edit) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.set(line - 1, edit.apply(lines.get(line - 1)));
        return String.join("\n", lines) + "\n";
    }

    /** The part of a message that begins at the first finding of a place. */
    private static String at(CommandRun run, int line) {
        int from = run.err().indexOf(HOLES + ":" + line + ":");
        assertThat(from).as("line " + line + " in\n" + run.err()).isNotNegative();
        int to = run.err().indexOf("\nSTOP", from);
        return to < 0 ? run.err().substring(from) : run.err().substring(from, to);
    }

    private static String firstPlace(CommandRun run) {
        return run.err().lines().findFirst().orElse("");
    }

    @Test
    void rapidPlunge_betweenHoles_isAStopAtItsLine() throws IOException {
        int line = line(text(HOLES), "G0 X", 2);
        String clear = text(HOLES)
                .lines()
                .filter(l -> l.startsWith("G0 Z"))
                .findFirst()
                .orElseThrow();
        CommandRun run = edited(HOLES, t -> changed(t, line, l -> "G0 X31.000\nG0 Z10.000\n" + clear + "\n" + l));

        assertThat(run.code()).isEqualTo(4);
        assertThat(firstPlace(run)).contains(HOLES + ":" + (line + 1) + ":4  PROGRAM_DIFFERS");
        assertThat(at(run, line + 1)).contains("rapid to Z 10.000 mm into the pipe at X 31.000 mm, A 0.000");
        assertThat(run.err().split("STOP", -1)).hasSize(2);
    }

    @Test
    void rapidPlunge_beforeAnythingIsStated_isAStopAtItsLine() throws IOException {
        int line = line(text(HOLES), "G0 Z", 1);
        CommandRun run = edited(HOLES, t -> changed(t, line, l -> l + "\nG0 Z10.000\n" + l));

        assertThat(firstPlace(run)).contains(HOLES + ":" + (line + 1) + ":4  PROGRAM_DIFFERS");
        assertThat(at(run, line + 1)).contains("rapid to Z 10.000 mm into the pipe at X nowhere stated");
    }

    @Test
    void cutAsRapid_isNamedAtItsLineFirst_andTheMissingHoleThere() throws IOException {
        int line = line(text(HOLES), "G1 Z", 4);
        CommandRun run = edited(HOLES, t -> changed(t, line, l -> l.replace("G1", "G0")));

        assertThat(firstPlace(run)).contains(HOLES + ":" + line + ":");
        assertThat(run.err())
                .contains("rapid to Z ", "into the pipe", ": missing")
                .doesNotContain("M2");
        assertThat(run.err().lines().filter(l -> l.startsWith("STOP")))
                .allMatch(l -> l.contains(HOLES + ":" + line + ":"));
    }

    @Test
    void deletedHole_isMissingBehindTheHoleBeforeIt() throws IOException {
        int line = line(text(HOLES), "G1 Z", 3);
        CommandRun run = edited(HOLES, t -> changed(changed(t, line, l -> "(gone)"), line - 1, l -> "(gone)"));

        assertThat(run.err()).contains(": missing");
        assertThat(firstPlace(run)).contains(HOLES + ":" + (line - 2) + ":");
    }

    @Test
    void deletedRetract_isOneStop() throws IOException {
        int line = line(text(HOLES), "G1 Z", 2) + 1;
        CommandRun run = edited(HOLES, t -> changed(t, line, l -> "(gone)"));

        assertThat(run.err().lines().filter(l -> l.startsWith("STOP"))).hasSize(1);
        assertThat(firstPlace(run)).contains(HOLES + ":" + (line + 1) + ":");
        assertThat(run.err()).contains("X and Y move only at Z ");
    }

    @ParameterizedTest
    @CsvSource({
        "G4 P3.00, G4 P0.5, 4, 'a dwell after the spindle starts of 2.99 s or more', 0.5 s",
        "G4 P3.00, G4 P3000.00, 0, 'a dwell of 3 s as planned; this control counts seconds', G4 of 3000 s",
        "G21, G20, 4, 'G21, lengths in millimetres', 'G20, by which every length is another one'",
        "G90 G94, G91 G94, 4, 'G90, positions from zero', 'G91, by which every number is a distance'",
        "M5, M8, 4, only words that the profile allows, take it out: what it does cannot be proved here",
        "' F84.4', ' F984.4', 4, 'F up to 105.500 mm a minute, planned 84.400 mm', F 984.400 mm a minute",
        "S422 M3, S2422 M3, 4, ' to 527.5 rpm, planned 422', '[[cutting]] or the cutter''s max-rpm'",
    })
    void editedWord_isToldOnceWithWhatWouldDo(String from, String to, int code, String expected, String found)
            throws IOException {
        CommandRun run = edited(HOLES, t -> t.replaceFirst(from, to));

        assertThat(run.code()).as(run.err()).isEqualTo(code);
        assertThat(run.err()).contains(expected, found).doesNotContain("more places", "nowhere stated", "peck");
        assertThat(run.err().lines().filter(l -> l.matches("(STOP|WARN) .*")).count())
                .as(run.err())
                .isLessThanOrEqualTo(2);
    }

    @Test
    void tooShallow_tellsTheHeightThatIsNeeded_andAllPlaces() throws IOException {
        CommandRun run = edited(HOLES, t -> t.replaceAll("G1 Z[\\d.]+ ", "G1 Z38.500 "));

        assertThat(run.err())
                .containsPattern("the full diameter through the wall, Z [\\d.]+ mm or lower")
                .containsPattern("Z 38\\.500 mm, its edge at Z [\\d.]+ mm is still in the wall \\(and at \\d+ more");
    }

    @Test
    void anotherProgramUnderThisName_isToldWithItsName_andTheListSaysHowManyMore() throws IOException {
        String other = PROGRAMS.keySet().stream()
                .filter(n -> n.startsWith("LA-2-"))
                .findFirst()
                .orElseThrow();
        CommandRun run = edited(HOLES, t -> text(other));

        assertThat(run.err()).contains("a head like that of " + other, "--as " + other);
    }

    @Test
    void manyDifferences_areCutOffWithTheirCount() throws IOException {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            many.append("G0 Z").append(10 + i).append(".000\n");
        }
        int line = line(text(HOLES), "G0 Z", 1);
        CommandRun run = edited(HOLES, t -> changed(t, line, l -> l + "\n" + many + l));

        assertThat(run.err()).contains("no more than these").containsPattern("and \\d+ more, of which \\d+ are stops");
    }

    @ParameterizedTest
    @CsvSource({
        "'\\(TOOL TW-23[^)]*\\)', '(TOOL TW-25, twist drill 25 mm)'",
        "'\\(SPINDLE \\d+ rpm', '(SPINDLE 900 rpm'",
        "'\\(OD [\\d.]+', '(OD 125.00'",
        "'TOP faces the chuck', 'TOP faces the free end'",
        "'\\(STICK L', '(STICK X'",
    })
    void falseSetupComment_isAWarningWithBoth(String from, String to) throws IOException {
        CommandRun run = edited(HOLES, t -> t.replaceFirst(from, to));

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err().lines().filter(l -> l.startsWith("WARN"))).hasSize(1);
        assertThat(run.err())
                .contains(
                        "expected  (", "found     (", to.replaceAll("[()]", "").substring(0, 6));
        assertThat(run.out()).contains("1 warning against " + HOLES);
    }

    /** All depths count from it. */
    @Test
    void falseHeightOfTheCrown_isOneStop() throws IOException {
        CommandRun run =
                edited(HOLES, t -> t.replaceFirst("tip on the crown is Z [\\d.]+", "tip on the crown is Z 50.10"));

        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).startsWith("STOP").contains("found     tip on the crown is Z 50.10 mm");
        assertThat(run.err().lines().filter(l -> l.contains("PROGRAM_DIFFERS"))).hasSize(1);
    }

    @Test
    void directionTestTheOtherWay_isToldAtItsTurn() throws IOException {
        String name = PROGRAMS.keySet().stream()
                .filter(n -> n.contains("direction"))
                .findFirst()
                .orElseThrow();
        CommandRun run = edited(name, t -> t.replace("A30.000", "A-30.000"));

        assertThat(firstPlace(run)).contains(name + ":" + line(text(name), "G0 A30", 1) + ":");
    }
}
