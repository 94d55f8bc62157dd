package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.tooling.Cutter;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BorePathTest {

    private static final Grid GRID = BoreSamples.settings(false, false).grid();
    private static final Operation.Place PLACE = new Operation.Place(1, 60, 0, 0);

    private static BorePath path(double diameter) {
        return new BorePath(new Operation.Bore(PLACE, 1, BoreSamples.MILL_12, diameter, 70), GRID);
    }

    // By hand: (47.32 − 12)/2 = 17.66; 100 · 35.32/47.32 = 74.64, rounded down to a tenth.
    @Test
    void centre_goesRoundSlowerThanTheWall() {
        assertThat(path(47.32).radius()).isCloseTo(17.66, within(1e-9));
        assertThat(path(47.32).feedMmPerMin(100)).isCloseTo(74.6, within(1e-9));
        assertThat(path(47.32).disc()).isCloseTo(23.32, within(1e-9));
        assertThat(path(24).disc()).isZero();
    }

    // By hand: one turn of 2π · 17.66 = 110.96 at 2° sinks 3.875, at 3.874 a step less: 13 mm are 4 turns; pecks of 1.5
    // are
    // 9 turns of 1.499.
    @Test
    void turns_keepRampAndPeck() {
        assertThat(path(47.32).turns(13, 100)).isEqualTo(4);
        assertThat(path(47.32).turns(13, 1.5)).isEqualTo(9);
        assertThat(path(47.32).turns(0.1, 1.5)).isEqualTo(1);
    }

    @Test
    void bore_noWiderThanTheEndMill_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Operation.Bore(PLACE, 1, BoreSamples.MILL_12, 12, 70));
    }

    @Test
    void words_tellFeedAndDisc() {
        Cut cut = new Cut(1592, 100, 3.6, List.of(), "invented");

        assertThat(path(47.32).words(cut))
                .contains("100.0 × (47.32 − 12.00) ÷ 47.32 = 74.6 mm/min", "a disc of 23.32 mm comes loose");
        assertThat(path(24).words(cut)).doesNotContain("disc");
    }

    static Stream<Arguments> unable() {
        Machine bores = BoreSamples.machine(false);
        Machine still = RotarySamples.machine(false);
        Machine.Rotary byY = bores.rotary()
                .with(new RotaryForm(RotaryForm.Word.Y_MM, java.util.Optional.empty(), RotaryForm.Sweep.FEED));
        return Stream.of(
                Arguments.of(RotarySamples.press(60, 3000), Code.MACHINE_UNABLE, "a press cannot bore"),
                Arguments.of(
                        RotarySamples.with(bores, still.travel()), Code.MACHINE_UNABLE, "mill-plain has no travel.y"),
                Arguments.of(RotarySamples.with(bores, byY), Code.MACHINE_UNABLE, "mill-plain turns the pipe by"),
                Arguments.of(
                        RotarySamples.with(bores, still.post()),
                        Code.MACHINE_UNABLE,
                        "the programs of mill-plain have no G2, no G3, no I, no J"),
                Arguments.of(
                        RotarySamples.with(bores, BoreSamples.across(bores.travel(), 17)),
                        Code.MACHINE_TRAVEL,
                        "Y -17.66 mm"));
    }

    @ParameterizedTest
    @MethodSource("unable")
    void machineThatCannot_isStopped(Machine machine, Code code, String found) {
        RotarySettings settings = RotarySamples.on(BoreSamples.settings(false, false), machine);
        PatternRun run = new PatternRun(RotarySamples.sixWay(Cutter.bored(BoreSamples.MILL_12, 47.32)), 2);

        RotaryPlan plan = RotaryJob.plan(settings, List.of(run));

        assertThat(plan.programs()).isEmpty();
        List<Finding> stops =
                plan.findings().stream().filter(f -> f.level() == Level.STOP).toList();
        assertThat(stops).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo(code);
            assertThat(f.found()).startsWith(found);
        });
    }

    @Test
    void flutesTooShort_isStopped() {
        Cutter blunt = Cutter.bored(BoreSamples.mill(12, 9), 47.32);
        PatternRun run = new PatternRun(RotarySamples.sixWay(blunt), 2);

        assertThat(RotaryJob.plan(BoreSamples.settings(false, false), List.of(run))
                        .findings())
                .anySatisfy(f -> {
                    assertThat(f.code()).isEqualTo(Code.CUTTER_REACH);
                    assertThat(f.level()).isEqualTo(Level.STOP);
                    assertThat(f.hints()).contains("use a deeper end mill");
                });
    }

    /** All sizes of one end mill are one program. */
    @Test
    void sizesOfOneEndMill_areOneProgram() {
        Pattern pattern = BoreSamples.mixed(BoreSamples.MILL_12, 20.5, 47.32);
        RotaryPlan plan = RotaryJob.plan(BoreSamples.settings(false, false), List.of(new PatternRun(pattern, 2)));

        assertThat(plan.setups()).singleElement().satisfies(setup -> {
            assertThat(setup.steps()).extracting(s -> s.cutter().id()).containsExactly("MARK-3", "EM-12", "TW-12.0");
            assertThat(setup.steps().get(1).operations()).isEqualTo(8);
            assertThat(setup.steps().get(1).cut().formulas())
                    .anyMatch(f -> f.startsWith("hole 20.50 mm: feed of the cutter's centre"))
                    .anyMatch(f -> f.startsWith("hole 47.32 mm: feed of the cutter's centre"));
        });
    }
}
