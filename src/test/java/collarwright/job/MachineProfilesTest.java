package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.machining.Machine;
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
        assertThat(machine.post().words()).containsExactlyInAnyOrderElementsOf(Machine.plainWords());
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
        assertThat(profiles.names(Profiles.Kind.MACHINE)).containsExactly("press", "rotary-cycles");
    }

    @Test
    void changed_reversedAndFreeEnd_areTaken() throws IOException {
        Machine machine = changed("sign = \"rs274\"\ntop = \"chuck\"", "sign = \"reversed\"\ntop = \"free-end\"")
                .machine("rotary-plain")
                .orElseThrow();
        assertThat(machine.rotary().positive()).isFalse();
        assertThat(machine.rotary().topTowardChuck()).isFalse();
    }
}
