package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every machine's sheet speaks of the words that its programs have. */
class SetupWordsTest {

    @Test
    void rotaryByA_setsA0AndY0() {
        SetupSheet.Zero zero = sheet("rotary-plain").zero();
        assertThat(zero.a()).startsWith("A0 with the 0° line").contains("A+ turns the pipe clockwise");
        assertThat(zero.y()).startsWith("Y0 over the rotary axis");
    }

    @Test
    void rotaryByY_hasNoLinearY() {
        SetupSheet.Zero degrees = sheet("rotary-y-degrees").zero();
        assertThat(degrees.a()).startsWith("Y0 with the 0° line").contains("Y counts degrees");
        assertThat(degrees.y()).startsWith("the tool over the rotary axis");
        // One turn is the circumference of the sample's pipe, π × 160.1 mm.
        assertThat(sheet("rotary-y-mm").zero().a()).contains("Y counts an arc, 502.97 mm for one turn");
    }

    @Test
    void byHand_saysWhoTurns() {
        assertThat(sheet("index-by-hand").zero().a()).startsWith("turn the pipe by hand, clockwise");
    }

    @Test
    void lengthTable_needsNoTouchingAnew() {
        assertThat(sheet("rotary-industrial").zero().z())
                .contains("control's table")
                .doesNotContain("again after");
        assertThat(sheet("rotary-plain").zero().z()).endsWith("again after every tool change");
    }

    @Test
    void spindleByHand_isSaid() {
        assertThat(sheet("rotary-no-spindle").notes())
                .anyMatch(n -> n.contains("do not switch the spindle"))
                .anyMatch(n -> n.contains("all cutters of the stick"));
        assertThat(sheet("rotary-plain").notes()).noneMatch(n -> n.contains("spindle"));
    }

    private static SetupSheet sheet(String machine) {
        Machine found =
                Profiles.load(List.of(new BundledProfiles())).machine(machine).orElseThrow();
        RotarySettings settings = RotarySamples.on(RotarySamples.metric(false), found);
        RotaryPlan plan =
                RotaryJob.plan(settings, List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2)));
        return plan.setups().get(0);
    }
}
