package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.rehearsal.Rehearsal;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class MachineProfilesTest {

    private static String machines() throws IOException {
        return Files.readString(ProjectFolder.top().resolve("profiles/machines.toml"));
    }

    private static Profiles changed(String old, String other) throws IOException {
        String text = machines();
        int plain = text.indexOf("name = \"rotary-plain\"");
        int at = text.indexOf(old, plain);
        assertThat(at).isPositive().isLessThan(text.indexOf("name = \"rotary-cycles\""));
        String changed = text.substring(0, at) + other + text.substring(at + old.length());
        return Profiles.load(List.of(OwnProfiles.of("machines.toml", changed)));
    }

    @Test
    void bundled_rotaryPlain_isReadWhole() {
        Machine machine = Jobs.PROFILES.machine("rotary-plain").orElseThrow();
        assertThat(machine.kind()).isEqualTo(Machine.Kind.ROTARY);
        assertThat(machine.programmed()).isTrue();
        assertThat(machine.post().cycles()).isFalse();
        assertThat(machine.post().words()).containsExactlyInAnyOrderElementsOf(ProgramWords.PLAIN);
        assertThat(machine.post().endWord()).isEqualTo("M2");
        assertThat(machine.spindle()).isEqualTo(new Machine.Spindle(100, 4000, 3));
        assertThat(machine.travel()).isEqualTo(new Machine.Travel(0, 600, -20, 220, 2000, 1000, 200, 5));
        assertThat(machine.rotary()).isEqualTo(new Machine.Rotary(true, true, 3600, 720, 2, 50, 20, 25, 4, 10, 600));
        assertThat(machine.source()).contains("our choice, no source");
    }

    @Test
    void bundled_rotaryCycles_knowsTheCycles_andNoToolChange() {
        Machine machine = Jobs.PROFILES.machine("rotary-cycles").orElseThrow();
        assertThat(machine.post().cycles()).isTrue();
        assertThat(machine.post().words()).contains("G81", "G82", "G83", "G73", "G80", "G98", "M30", "R", "Q");
        assertThat(machine.post().words()).doesNotContain("T", "M6", "G43", "G28", "G53");
    }

    @Test
    void bundled_press_makesNoPrograms() {
        assertThat(Jobs.PROFILES.machine("press").orElseThrow().programmed()).isFalse();
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                arguments("sign = \"rs274\"", "sign = \"left\"", Code.JOB_UNKNOWN_WORD),
                arguments("z = [\"-20 mm\", \"220 mm\"]", "z = [\"220 mm\", \"-20 mm\"]", Code.JOB_CONFLICT),
                arguments("z = [\"-20 mm\", \"220 mm\"]", "z = \"220 mm\"", Code.JOB_WRONG_TYPE),
                arguments("min-rpm = 100", "min-rpm = 5000", Code.JOB_CONFLICT),
                arguments("longest-stick = \"600 mm\"", "longest-stick = \"20 mm\"", Code.JOB_CONFLICT),
                arguments("clear-gap = \"5 mm\"", "clear-gap = 0", Code.JOB_OUT_OF_RANGE),
                arguments("rapid-mm-per-min = 2000", "rapid-mm-per-min = nan", Code.JOB_BAD_NUMBER),
                arguments("line-length = 70", "line-length = 30", Code.JOB_OUT_OF_RANGE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\nwords = [\"g0\"]", Code.PROFILE_WRONG),
                arguments("end-word = \"M2\"", "end-word = \"M1\"", Code.JOB_UNKNOWN_WORD),
                arguments("extension = \"nc\"", "extension = \"n/c\"", Code.PROFILE_WRONG),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\nline-numbers = 101", Code.JOB_OUT_OF_RANGE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\nline-numbers = -1", Code.JOB_OUT_OF_RANGE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\nline-numbers = true", Code.JOB_WRONG_TYPE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\npercent = \"yes\"", Code.JOB_WRONG_TYPE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\ncrlf = 1", Code.JOB_WRONG_TYPE),
                arguments("end-word = \"M2\"", "end-word = \"M2\"\ndwell-unit = \"min\"", Code.JOB_UNKNOWN_WORD),
                arguments("jaw-clear = \"20 mm\"\n", "", Code.JOB_KEY_MISSING),
                arguments("jaw-clear", "jaw-claer", Code.JOB_UNKNOWN_KEY),
                arguments("take-up-deg = 2", "take-up-deg = 90", Code.JOB_OUT_OF_RANGE),
                arguments("cycles = false", "cycles = \"no\"", Code.JOB_WRONG_TYPE));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void changed_wrong_isFoundAndOnlyThatMachineIsLost(String old, String other, Code code) throws IOException {
        Profiles profiles = changed(old, other);
        assertThat(profiles.findings()).extracting(Finding::code).containsOnly(code);
        assertThat(profiles.findings())
                .extracting(Finding::where)
                .allMatch(w -> w.text().startsWith("mine/machines.toml:"));
        assertThat(profiles.names(Profiles.Kind.MACHINE))
                .contains("bed-plain", "flat-plain", "press", "rotary-cycles")
                .doesNotContain("rotary-plain");
    }

    @Test
    void changed_reversedAndFreeEnd_areTaken() throws IOException {
        Machine machine = changed("sign = \"rs274\"\ntop = \"chuck\"", "sign = \"reversed\"\ntop = \"free-end\"")
                .machine("rotary-plain")
                .orElseThrow();
        assertThat(machine.rotary().positive()).isFalse();
        assertThat(machine.rotary().topTowardChuck()).isFalse();
    }

    @Test
    void bundled_layout_isThePlainest() {
        for (String name : List.of("rotary-plain", "rotary-cycles")) {
            assertThat(Jobs.PROFILES.machine(name).orElseThrow().post().layout())
                    .isEqualTo(Machine.Layout.plain());
        }
    }

    static Stream<Arguments> layouts() {
        return Stream.of(
                arguments("line-numbers = 10", new Machine.Layout(10, false, false, false)),
                arguments("percent = true", new Machine.Layout(0, true, false, false)),
                arguments("crlf = true", new Machine.Layout(0, false, true, false)),
                arguments("dwell-unit = \"ms\"", new Machine.Layout(0, false, false, true)),
                arguments(
                        "line-numbers = 0\npercent = false\ncrlf = false\ndwell-unit = \"s\"", Machine.Layout.plain()),
                arguments(
                        "line-numbers = 100\npercent = true\ncrlf = true\ndwell-unit = \"ms\"",
                        new Machine.Layout(100, true, true, true)));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void layout_isTaken_andItsProgramsPassTheirReplay(String keys, Machine.Layout layout) throws IOException {
        Machine machine = changed("end-word = \"M2\"", "end-word = \"M2\"\n" + keys)
                .machine("rotary-plain")
                .orElseThrow();
        assertThat(machine.post().layout()).isEqualTo(layout);

        RotarySettings settings = RotarySamples.on(RotarySamples.metric(false), machine);
        List<PatternRun> runs = List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2));
        RotaryPlan plan = RotaryJob.plan(settings, runs);
        assertThat(plan.programs()).hasSize(5);
        assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();
        String text = plan.programs().get(0).text();
        assertThat(text.startsWith("%")).isEqualTo(layout.percent());
        assertThat(text.contains("\r\n")).isEqualTo(layout.crlf());
        assertThat(text.matches("(?s).*G4 P3000\\s.*")).isEqualTo(layout.dwellMilliseconds());
        assertThat(text.lines().filter(l -> l.startsWith("N")).count() > 0).isEqualTo(layout.numberStep() > 0);
    }
}
