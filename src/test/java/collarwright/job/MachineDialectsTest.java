package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import collarwright.finding.Finding;
import collarwright.machining.ControlHabits;
import collarwright.machining.ControlHabits.ToolChange;
import collarwright.machining.Machine;
import collarwright.machining.RotaryForm;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The keys by which machines differ, and what of them does not go together. */
class MachineDialectsTest {

    private static final String END = "end-word = \"M2\"";
    private static final String SIGN = "sign = \"rs274\"";

    private static Profiles changed(String old, String other) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("profiles/machines.toml"));
        int at = text.indexOf(old, text.indexOf("name = \"rotary-plain\""));
        String changed = text.substring(0, at) + other + text.substring(at + old.length());
        return Profiles.load(List.of(OwnProfiles.of("machines.toml", changed)));
    }

    @Test
    void industrial_habits_areRead() {
        Machine machine = Jobs.PROFILES.machine("rotary-industrial").orElseThrow();
        assertThat(machine.post().layout().habits())
                .isEqualTo(new ControlHabits(ToolChange.M6, true, true, 1001, false, true));
        assertThat(machine.post().words()).contains("T", "M6", "G43", "H").doesNotContain("G28", "G53");
    }

    @Test
    void forms_areRead() throws IOException {
        RotaryForm form = changed(SIGN, SIGN + "\nform = \"Y-mm\"\nlength-per-turn = \"360 mm\"\nsweep = \"feed\"")
                .machine("rotary-plain")
                .orElseThrow()
                .rotary()
                .form();
        assertThat(form).isEqualTo(new RotaryForm(RotaryForm.Word.Y_MM, Optional.of(360.0), RotaryForm.Sweep.FEED));
        assertThat(Jobs.PROFILES.machine("index-by-hand").orElseThrow().post().words())
                .doesNotContain("A");
        assertThat(Jobs.PROFILES
                        .machine("rotary-no-spindle")
                        .orElseThrow()
                        .post()
                        .words())
                .doesNotContain("M3", "M5", "S");
    }

    @Test
    void travelY_isRead() throws IOException {
        Machine machine = changed("clear-gap", "y = [\"-40 mm\", \"50 mm\"]\nclear-gap")
                .machine("rotary-plain")
                .orElseThrow();
        assertThat(machine.travel().across()).contains(new Machine.Reach(-40, 50));
    }

    static Stream<Arguments> contrary() {
        String plain =
                "\"G0\", \"G1\", \"G4\", \"G17\", \"G21\", \"G90\", \"G94\", \"M0\", \"M2\", \"X\", \"Z\", \"F\"";
        return Stream.of(
                arguments(END, END + "\ntool-length = \"g43\"", "tool-length"),
                arguments(END, END + "\nprogram-number = 7", "program-number"),
                arguments(END, END + "\nprogram-number = 10000\npercent = true", "program-number"),
                arguments(END, END + "\nchip-break = true", "chip-break"),
                arguments(END, END + "\ntool-change = \"m6\"\nwords = [" + plain + "]", "words"),
                arguments(END, END + "\nwords = [" + plain + ", \"X\"]", "words"),
                arguments(END, END + "\nwords = [" + plain + ", \"G28\"]", "words"),
                arguments("cycles = false", "cycles = true\nwords = [" + plain + "]", "words"),
                arguments("extension = \"nc\"", "extension = \"tape\"\nfile-names = \"8.3\"", "extension"),
                arguments(SIGN, SIGN + "\nlength-per-turn = \"360 mm\"", "length-per-turn"),
                arguments(SIGN, SIGN + "\nform = \"B\"", "form"));
    }

    @ParameterizedTest
    @MethodSource("contrary")
    void contrary_isFoundAtItsKey(String old, String other, String key) throws IOException {
        Profiles profiles = changed(old, other);
        assertThat(profiles.findings())
                .extracting(Finding::expected)
                .singleElement()
                .satisfies(e -> assertThat(e).contains("." + key));
        assertThat(profiles.machine("rotary-plain")).isEmpty();
    }
}
