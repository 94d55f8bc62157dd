package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.testing.ChangedMachines;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every rule that the shipped dialects add, broken on purpose; each must be caught for the reason it was broken. */
class BrokenDialectTest {

    private static final PatternRun TWO_COLLARS = new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2);

    private static RotarySettings settings(String machine) {
        if (machine.equals("industrial, touch")) {
            List<String> touch = List.of("tool-length = \"touch\"");
            return RotarySamples.on(RotarySamples.metric(false), ChangedMachines.of("rotary-industrial", touch));
        }
        Machine shipped =
                Profiles.load(List.of(new BundledProfiles())).machine(machine).orElseThrow();
        return RotarySamples.on(RotarySamples.metric(false), shipped);
    }

    private static ProgramFile drilling(RotarySettings settings) {
        List<ProgramFile> cuts = RotaryJob.plan(settings, List.of(TWO_COLLARS)).programs().stream()
                .filter(p -> p.purpose() == ProgramFile.Purpose.CUT)
                .toList();
        return cuts.get(cuts.size() - 1);
    }

    /** A slash stands for a line end; the first place is changed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        index-by-hand     | (TURN TO 58.283 DEG)           | (TURN TO 59.283 DEG)          | azimuth 58.283
        index-by-hand     | (TURN TO 58.283 DEG)           | (Turn to 58.283 deg)          | azimuth 58.283
        index-by-hand     | (TURN TO 121.717 DEG)          | (TURN TO 21.717 DEG)          | A rising
        index-by-hand     | (THAT IS 58 DEG 16.98 MIN)     | (THAT IS 58 DEG 17.98 MIN)    | also in degrees and minutes
        index-by-hand     | (THAT IS 58 DEG 16.98 MIN)     | (ABOUT 58 DEG)                | also in degrees and minutes
        index-by-hand     | (ARC 81.43 MM FROM THE 0 LINE) | (ARC 80.43 MM FROM THE 0 LINE) | also as an arc
        index-by-hand     | M5~G4 P3.00~(TURN              | G4 P3.00~(TURN                | the spindle stopped
        index-by-hand     | M5~G4 P3.00~(TURN              | M5~(TURN                      | the spindle stopped
        index-by-hand     | M0~S434 M3~G4 P3.00            | M0~S434 M3                    | a dwell after the spindle
        index-by-hand     | M0~S434 M3~G4 P3.00            | M0                            | the spindle running
        index-by-hand     | G0 Y0.000                      | G0 A5.000~G0 Y0.000           | only words
        rotary-no-spindle | (Set the spindle to 434 rpm, start it, then go on) | (Start it)  | the spindle running
        rotary-no-spindle | (Set the spindle to 434 rpm, start it, then go on) | (Set the spindle to 500 rpm, start it, then go on) | 434 rpm as planned
        rotary-no-spindle | (Stop the spindle)~M0~M2       | M2                            | the spindle off at the end
        rotary-no-spindle | (Stop the spindle)~M0~M2       | M5~M2                         | only words
        rotary-no-spindle | (CUTTER 2,                     | (CUTTER 1,                    | cutter 2
        rotary-no-spindle | (CUTTER 2,                     | (Change to 2,                 | made
        rotary-no-spindle | (Stop the spindle)~M0~G4 P3.00~(CUTTER | (Stop the spindle)~M0~(CUTTER | the spindle stopped
        rotary-no-spindle | (Set Z anew: tip on the crown is Z 80.05 mm) | (Set Z anew: tip on the crown is Z 70.05 mm) | Z set to Z 80.05
        rotary-no-spindle | (Set Z anew: tip on the crown is Z 80.05 mm) | (Set Z)    | a stop to set Z anew
        rotary-no-spindle | cutter, tip on the crown is Z 80.05 | cutter, tip on the crown is Z 79.05 | Z set to Z 80.05
        rotary-no-spindle | (CUTTER 2, HS-44,              | (CUTTER 2, HS-41,             | CUTTER 2, HS-44
        industrial, touch | (Set Z anew: tip on the crown is Z 80.05 mm) | (Set Z anew: tip on the crown is Z 80.5 mm) | Z set to Z 80.05
        industrial, touch | (Set Z anew: tip on the crown is Z 80.05 mm) | (Set Z anew) | a stop to set Z anew
        industrial, touch | (CUTTER 1,                     | (CUTTER 2,                    | CUTTER 1, MARK-3
        rotary-y-degrees  | G0 Y58.283                     | G0 Y59.283                    | azimuth 58.283
        rotary-y-degrees  | G0 Y58.283                     | G0 A58.283                    | only words
        rotary-y-degrees  | G0 Y58.283                     | G0 Y58.283 Z130.000           | one axis
        rotary-y-degrees  | G0 Y-2.000                     | G0 Y-1.000                    | an approach from
        rotary-y-mm       | G0 Y81.429                     | G0 Y81.441                    | azimuth 58.283
        rotary-y-mm       | G0 Y81.429                     | G0 Y58.283                    | azimuth 58.283
        rotary-industrial | T2 M6                          | T3 M6                         | cutter 2
        rotary-industrial | T2 M6                          | M6                            | cutter 2
        rotary-industrial | G43 H2                         | G43 H1                        | one G43 H2
        rotary-industrial | G43 H2                         | G43                           | G43 with H
        rotary-industrial | G43 H2                         | G49                           | only words
        rotary-industrial | G4 X2.00                       | G4 P2.00                      | G4 with X
        rotary-industrial | O1001~                         | ''                            | an O number
        rotary-industrial | O1001                          | O101                          | an O number of four digits
        rotary-industrial | M6~                            | M6~N11 M3~                    | S with a speed
        """)
    void program_broken_isCaught(String machine, String from, String to, String expected) {
        RotarySettings settings = settings(machine);
        ProgramFile file = drilling(settings);
        boolean crlf = settings.machine().post().layout().crlf();
        assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
        String end = crlf ? "\r\n" : "\n";
        String wanted = from.replace("~", crlf ? "\r\n" : "\n");
        assertThat(file.text()).contains(wanted);
        String text =
                file.text().replaceFirst(Pattern.quote(wanted), Matcher.quoteReplacement((to + "").replace("~", end)));
        ProgramFile broken = with(file, text);
        List<Finding> findings = Rehearsal.rehearse(broken, settings);
        assertThat(findings)
                .anySatisfy(f -> assertThat(f.expected() + " / " + f.found()).contains(expected));
    }

    /** A length of another cutter, or the same once more, over every first hole and before the first move. */
    @Test
    void secondLength_isCaught() {
        RotarySettings settings = settings("rotary-industrial");
        ProgramFile file = drilling(settings);
        List<String> lines = file.text().lines().toList();
        int tried = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).endsWith(" M3") || lines.get(i).endsWith(" M6")) {
                int number =
                        Integer.parseInt(lines.get(i).substring(1, lines.get(i).indexOf(' ')));
                for (int cutter = 1; cutter <= 3; cutter++) {
                    List<String> more = new ArrayList<>(lines);
                    more.add(i + 1, "N" + (number + 1) + " G43 H" + cutter);
                    ProgramFile broken = with(file, String.join("\r\n", more) + "\r\n");
                    assertThat(Rehearsal.rehearse(broken, settings))
                            .anySatisfy(f -> assertThat(f.expected()).contains("one G43 H"));
                    tried++;
                }
            }
        }
        // After each change and each start of the spindle, those behind a stop for plugs among them.
        assertThat(tried).isEqualTo(3 * 6);
    }

    /** The test that is run first moves no cutter before it has its length. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        rotary-industrial | G0 G43 H\\d          | G0           | one G43 H
        rotary-industrial | G43 H\\d             | G43 H9       | one G43 H
        rotary-industrial | N\\d+ T\\d M6\\r\\n  | ''           | cutter
        rotary-industrial | (N\\d+ )T\\d M6(\\s+.* H)\\d | $1T9 M6$29 | a cutter of the job
        rotary-industrial | Z\\d+\\.\\d+           | Z111.400     | clear for the longest cutter
        industrial, touch | \\(Set Z anew.*\\)     | (Go on)      | a stop to set Z anew
        industrial, touch | crown is Z 80.05 mm\\)(\\s+N\\d+ M0) | crown is Z 8.05 mm)$1 | Z set to Z 80.05
        """)
    void directionTest_broken_isCaught(String machine, String from, String to, String expected) {
        RotarySettings settings = settings(machine);
        List<PatternRun> runs = List.of(TWO_COLLARS);
        RotaryPlan plan = RotaryJob.plan(settings, runs);
        assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();
        List<ProgramFile> files = new ArrayList<>(plan.programs());
        ProgramFile test = files.remove(files.size() - 1);
        String text = test.text().replaceFirst(from, to);
        assertThat(text).as(test.text()).isNotEqualTo(test.text());
        files.add(with(test, text));
        RotaryPlan broken = new RotaryPlan(files, plan.setups(), List.of());
        assertThat(Rehearsal.rehearse(broken, settings, runs))
                .anySatisfy(f -> assertThat(f.expected() + " / " + f.found()).contains(expected));
    }

    /** In programs in inches the arc is told in inches too, and both have to be right. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        ARC [1-9](\\.\\d+) IN         | ARC 0$1 IN
        (ARC [1-9]\\.\\d+ IN,) [1-9]  | $1 0
        ARC [1-9]\\.\\d+ IN,          | ARC
        """)
    void arcInInches_broken_isCaught(String from, String to) {
        Machine machine = settings("index-by-hand").machine();
        RotarySettings settings = RotarySamples.on(RotarySamples.inch(false), machine);
        ProgramFile file = drilling(settings);
        assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
        String text = file.text().replaceFirst(from, to);
        assertThat(text).as(file.text()).isNotEqualTo(file.text());
        assertThat(Rehearsal.rehearse(with(file, text), settings))
                .anySatisfy(f -> assertThat(f.expected()).contains("also as an arc"));
    }

    private static ProgramFile with(ProgramFile file, String text) {
        return new ProgramFile(
                file.name(), file.purpose(), file.task(), file.lift(), file.effort(), text, file.after());
    }

    /** What profiles may list is what the interpreter knows. */
    @Test
    void knownWords_areTheInterpreters() {
        assertThat(ProgramWords.KNOWN).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(Interpreter.words());
    }
}
