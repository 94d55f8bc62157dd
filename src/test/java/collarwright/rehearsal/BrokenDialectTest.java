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
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
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
        ProgramFile broken = new ProgramFile(
                file.name(), file.purpose(), file.task(), file.lift(), file.effort(), text, file.after());
        List<Finding> findings = Rehearsal.rehearse(broken, settings);
        assertThat(findings)
                .anySatisfy(f -> assertThat(f.expected() + " / " + f.found()).contains(expected));
    }

    /** What profiles may list is what the interpreter knows. */
    @Test
    void knownWords_areTheInterpreters() {
        assertThat(ProgramWords.KNOWN).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(Interpreter.words());
    }
}
