package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndJob;
import collarwright.machining.EndTask;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.ProgramUnits;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every rule that a dialect adds on beds and flat machines, broken on purpose; each is caught for that reason. */
class BrokenBenchTest {

    /** The last cut of a program; its depth is group 2. */
    private static final String LAST_CUT = "(?s)^(.*)\nG1 Z(\\S+) (F\\S+)\n";

    /** A pattern and what takes its place, ~ standing for a line end; the first place is changed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        m6-g43       | G43 H2                  | G43 H3                     | one G43 H2
        m6-g43       | G43 H2                  | G43 H1                     | one G43 H2
        m6-g43       | G0 G43 H2               | G0                         | one G43 H2
        m6-g43       | G0 G43 H2 (Z.*)         | G0 G43 H2 $1~G43 H3        | one G43 H2
        m6-g43       | G0 G43 H2 (Z.*)         | G0 G43 H3 $1~G0 G43 H2 $1  | one G43 H2
        m6-g43       | (T2 M6)~(G0 G43 H2 .*)  | $2~$1                      | one G43 H1
        m6-g43       | T2 M6                   | T3 M6                      | cutter 2
        m6-touch     | \\(Set Z.*\\)~M0~(G0 Z.*~G0 X.*~G0 Y.*~S\\d+ M3~G4 .*~\\(hole) | $1 | a stop to set Z anew
        m6-touch     | upper face is Z 0.00    | upper face is Z 1.00       | Z set to Z 0.00 mm
        pause        | upper face is Z 0.00    | upper face is Z -1.00      | Z set to Z 0.00 mm
        pause        | \\(Set Z anew.*\\)~     | (Go on)~                   | a stop to set Z anew
        pause        | CUTTER 2, TW-16         | CUTTER 2, TW-18            | CUTTER 2, TW-16
        pause        | CUTTER 2,               | CUTTER 3,                  | cutter 2
        pause        | M5~G4 P3.00~\\(CUTTER   | M5~(CUTTER                 | the spindle stopped
        pause        | M5~G4 P3.00~\\(CUTTER   | G4 P3.00~(CUTTER           | the spindle stopped
        plain        | M5~                     | M5~(Look)~M0~              | no stop but to change
        plain        | S6000                   | S5900                      | 6000 rpm as planned
        dwell-x      | G4 X3.00                | G4 P3.00                   | G4 with X
        milliseconds | G4 P3000                | G4 P3000.0                 | P with a whole number
        milliseconds | G4 P3000                | G4 P3                      | a dwell after
        by-hand      | \\(Stop the spindle\\)~M0~ | ''                      | the spindle off at the end
        by-hand      | Set the spindle to 6000 | Set the spindle to 600     | 6000 rpm as planned
        numbers      | O0007                   | O7                         | an O number of four digits
        """)
    void flat_broken_isCaught(String dialect, String from, String to, String expected) {
        FlatSettings settings = BenchContractTest.flat(dialect, ProgramUnits.MM);
        BenchProgram<FlatTask> file = FlatJob.plan(settings, List.of(BenchContractTest.STRIP))
                .programs()
                .get(0);
        assertThat(FlatRehearsal.rehearse(file, settings)).isEmpty();
        BenchProgram<FlatTask> broken = changed(file, from, to);
        assertThat(FlatRehearsal.rehearse(broken, settings)).anySatisfy(f -> said(f, expected));
    }

    /** The same for the ends of struts, whose one drill is cutter 1. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        m6-g43       | G43 H1                  | G43 H2                     | one G43 H1
        m6-g43       | G0 G43 H1 (Z.*)         | G0 G43 H1 $1~G43 H2        | one G43 H1
        m6-g43       | T1 M6~                  | ''                         | cutter 1
        m6-touch     | \\(Set Z anew.*\\)~M0~  | ''                         | a stop to set Z anew
        m6-touch     | the strut is Z 20.03    | the strut is Z 10.03       | Z set to Z 20.0
        m6-touch     | tip on its top is Z 20.03 | tip on its top is Z 19.03 | Z set to Z 20.0
        plain        | tip on its top is Z 20.03 | tip on its top is Z 19.03 | Z set to Z 20.0
        by-hand      | \\(Set the spindle.*\\)~M0~ | ''                     | the spindle running
        by-hand      | \\(Stop the spindle\\)~M0~G4 P3.00~\\(TURN | (TURN   | the spindle stopped
        by-hand      | TURN THE STRUT 23.4     | TURN THE STRUT A BIT       | words that tell
        dwell-x      | G4 X3.00                | G4 P3.00                   | G4 with X
        chip-break   | G73                     | G81                        | pecks up to
        """)
    void bed_broken_isCaught(String dialect, String from, String to, String expected) {
        BedSettings settings = BenchContractTest.bed(dialect, ProgramUnits.MM);
        BenchProgram<EndTask> file =
                EndJob.plan(settings, BenchContractTest.STRUTS).programs().get(0);
        assertThat(EndRehearsal.rehearse(file, settings)).isEmpty();
        assertThat(EndRehearsal.rehearse(changed(file, from, to), settings)).anySatisfy(f -> said(f, expected));
    }

    /** Rapids into the work: after the last cut, in place of it, and where nothing is cut. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        $1~G1 Z10.000 $3~G0 Z$2~           | a rapid ends above uncut
        $1~G0 Z$2~                         | a rapid ends above uncut
        $1~G1 Z$2 $3~G0 Z90.000~G0 Z$2~    | a rapid ends above uncut
        $1~G1 Z-21.300 $3~                 | to Z
        """)
    void rapids_intoTheWork_areCaught(String to, String expected) {
        BedSettings settings = BenchContractTest.bed("plain", ProgramUnits.MM);
        BenchProgram<EndTask> file =
                EndJob.plan(settings, BenchContractTest.STRUTS).programs().get(2);
        List<Finding> findings = EndRehearsal.rehearse(changed(file, LAST_CUT, to), settings);
        assertThat(findings).anySatisfy(f -> said(f, expected));
    }

    private static void said(Finding finding, String expected) {
        assertThat(finding.expected() + " / " + finding.found()).contains(expected);
    }

    static <T> BenchProgram<T> changed(BenchProgram<T> file, String from, String to) {
        String text =
                Pattern.compile(from.replace("~", "\n")).matcher(file.text()).replaceFirst(to.replace("~", "\n"));
        assertThat(text).as(file.text()).isNotEqualTo(file.text());
        return new BenchProgram<>(file.name(), file.tasks(), file.lift(), file.seconds(), text);
    }
}
