package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutPlannerTest {

    private static RotarySettings settings(double minRpm, double maxRpm, double speedMPerMin) {
        Machine machine = RotarySamples.with(RotarySamples.machine(false), new Machine.Spindle(minRpm, maxRpm, 3));
        return RotarySamples.settings(
                machine, ProgramUnits.MM, RotarySamples.cutting("steel", speedMPerMin), RotarySamples.pvc160());
    }

    private static Cutter cutter(CutterKind kind, double size, double minRpm, double maxRpm) {
        return new Cutter("C", kind, size + " mm", size, Interval.of(size), false, 3, 40, minRpm, maxRpm, "r");
    }

    // "Metal drilling reference guide", worked values of rpm = 12 x sfm / (pi x D) = 3.82 x sfm / D: 80 sfm with a 1/2
    // in
    // drill 611 rpm, with a 3/8 in drill 813 to 815 rpm. 1 ft is 0.3048 m exactly.
    @ParameterizedTest
    @CsvSource({"80, 0.5, 611", "80, 0.375, 815"})
    void speed_surfaceFeet_givesTheTabledTurns(double sfm, double inches, int rpm) {
        CutPlanner planner = new CutPlanner(settings(10, 9000, sfm * 0.3048));

        Cut cut =
                planner.plan(cutter(CutterKind.TWIST, inches * 25.4, 10, 9000)).orElseThrow();

        assertThat(cut.rpm()).isEqualTo(rpm);
        assertThat(planner.findings()).isEmpty();
    }

    // "Hole Saw Use", table of recommended speeds of bi-metal hole saws (diamondsaw.com), mild steel: 44 mm 195 rpm, 51
    // mm
    // 170, 29 mm 300. The column is 85 to 92 ft/min throughout, so 88 ft/min meets it within 5 percent.
    @ParameterizedTest
    @CsvSource({"44, 195", "51, 170", "29, 300"})
    void speed_holeSawInMildSteel_isNearTheTable(double size, double rpm) {
        CutPlanner planner = new CutPlanner(settings(10, 9000, 88 * 0.3048));

        Cut cut = planner.plan(cutter(CutterKind.HOLE_SAW, size, 50, 3000)).orElseThrow();

        assertThat((double) cut.rpm()).isCloseTo(rpm, within(0.05 * rpm));
    }

    @Test
    void feed_isAdvanceTimesTurns_onTheGrid() {
        Cut cut = new CutPlanner(settings(10, 9000, 60))
                .plan(cutter(CutterKind.TWIST, 10, 10, 9000))
                .orElseThrow();

        assertThat(cut.rpm()).isEqualTo(1910);
        assertThat(cut.feedMmPerMin()).isEqualTo(191.0);
        assertThat(cut.peck()).isEqualTo(5);
        assertThat(cut.formulas())
                .containsExactly(
                        "rpm = 1000 × 60 m/min ÷ (π × 10.00 mm) = 1910, used 1910",
                        "feed = 0.100 mm × 1910 rpm = 191.0, used 191.0 mm/min");
    }

    @Test
    void formulas_inInches_useFeetAndInches() {
        RotarySettings mm = settings(10, 9000, 24.384);
        RotarySettings inch = RotarySamples.settings(mm.machine(), ProgramUnits.INCH, mm.cutting(), mm.work());

        Cut cut = new CutPlanner(inch)
                .plan(cutter(CutterKind.TWIST, 12.7, 10, 9000))
                .orElseThrow();

        assertThat(cut.formulas())
                .containsExactly(
                        "rpm = 12 × 80 ft/min ÷ (π × 0.500 in) = 611, used 611",
                        "feed = 0.0039 in × 611 rpm = 2.41, used 2.40 in/min");
    }

    @Test
    void spindleThatCannotTurnSoSlowly_isAStopWithBothRanges() {
        CutPlanner planner = new CutPlanner(settings(8000, 24000, 27));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44)).isEmpty();
        assertThat(planner.findings())
                .containsExactly(Finding.stop(
                        Code.SPINDLE_RANGE,
                        new collarwright.finding.Where.Part("cutter HS-44"),
                        "a spindle that turns 95 to 244 rpm for a 44 mm hole saw in steel (195 rpm by the cutting"
                                + " data)",
                        "mill-plain turns 8000 to 24000 rpm",
                        "use a machine or a gear that turns so slowly, such as a drill press",
                        "take the cutter out of the rack, if another size will do"));
    }

    @Test
    void spindleThatCannotTurnSoFast_isAStop() {
        CutPlanner planner = new CutPlanner(settings(10, 200, 60));

        assertThat(planner.plan(cutter(CutterKind.TWIST, 6, 300, 9000))).isEmpty();
        assertThat(planner.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo(Code.SPINDLE_RANGE);
            assertThat(f.hints()).first().asString().endsWith("turns so fast");
        });
    }

    private static RotarySettings press(double minRpm, double maxRpm) {
        return RotarySamples.on(settings(10, 9000, 27), RotarySamples.press(minRpm, maxRpm));
    }

    // 1000 x 27 / (pi x 44) = 195 by hand; the saw itself may turn up to 2100.
    @Test
    void pressThatCannotTurnSoSlowly_isAWarningWithItsNearestSpeed() {
        CutPlanner planner = new CutPlanner(press(400, 3000));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44).orElseThrow().rpm()).isEqualTo(400);
        assertThat(planner.findings())
                .containsExactly(Finding.warn(
                        Code.SPINDLE_RANGE,
                        new collarwright.finding.Where.Part("cutter HS-44"),
                        "a spindle that turns 95 to 244 rpm for a 44 mm hole saw in steel (195 rpm by the cutting"
                                + " data)",
                        "press turns 400 to 3000 rpm; the nearest is 400 rpm",
                        "use a press or a gear that turns so slowly",
                        "or drill at 400 rpm: light feed, watch heat and chips",
                        "take the cutter out of the rack, if another size will do"));
    }

    @Test
    void pressFasterThanTheCutterMayTurn_givesNoSpeed() {
        CutPlanner planner = new CutPlanner(press(2500, 3000));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44)).isEmpty();
        assertThat(planner.findings()).singleElement().satisfies(f -> {
            assertThat(f.level()).isEqualTo(Level.WARN);
            assertThat(f.found()).endsWith("the nearest is 2500 rpm");
            assertThat(f.hints()).noneMatch(h -> h.contains("drill at"));
        });
    }

    @Test
    void pressSlowerThanTheCutterMustTurn_givesNoSpeed() {
        CutPlanner planner = new CutPlanner(press(20, 90));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44)).isEmpty();
        assertThat(planner.findings()).singleElement().satisfies(f -> {
            assertThat(f.found()).endsWith("the nearest is 90 rpm");
            assertThat(f.hints()).first().asString().endsWith("turns so fast");
        });
    }

    @Test
    void pressInRange_isFedByHand_soNoFeedOfTheMachineHoldsIt() {
        CutPlanner planner = new CutPlanner(press(100, 3000));

        Cut cut = planner.plan(cutter(CutterKind.TWIST, 10, 10, 9000)).orElseThrow();

        // 1000 x 27 / (pi x 10) = 859 by hand; 0.1 mm a turn.
        assertThat(cut.rpm()).isEqualTo(859);
        assertThat(cut.feedMmPerMin()).isCloseTo(85.9, within(1e-9));
        assertThat(planner.findings()).isEmpty();
    }

    @Test
    void pressWithoutCuttingData_isAWarning() {
        CutPlanner planner = new CutPlanner(press(100, 3000));

        assertThat(planner.plan(cutter(CutterKind.TWIST, 70, 10, 9000))).isEmpty();
        assertThat(planner.findings())
                .extracting(Finding::code, Finding::level)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Code.PROFILE_WRONG, Level.WARN));
    }

    @Test
    void speedsAndFeeds_areThoseOfThePrograms() {
        RotarySettings settings = RotarySamples.metric(false);
        RotaryPlan plan =
                RotaryJob.plan(settings, List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2)));

        SetupSheet.Step step = plan.setups().get(0).steps().get(1);
        assertThat(SpeedsAndFeeds.of(settings, RotarySamples.HOLE_SAW_44)).contains(step.cut());
        assertThat(SpeedsAndFeeds.of(press(2500, 3000), RotarySamples.HOLE_SAW_44))
                .isEmpty();
    }

    @Test
    void speed_withinAQuarterOver_isUsedWithANote() {
        CutPlanner planner = new CutPlanner(settings(230, 3000, 27));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44).orElseThrow().rpm()).isEqualTo(230);
        assertThat(planner.findings())
                .extracting(Finding::level, Finding::found)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        Level.NOTE, "230 rpm, by the limits of cutter and spindle"));
    }

    @Test
    void speed_aboveTheCutter_isHeldByIt() {
        CutPlanner planner = new CutPlanner(settings(10, 9000, 600));

        assertThat(planner.plan(RotarySamples.HOLE_SAW_44).orElseThrow().rpm()).isEqualTo(2100);
    }

    @Test
    void feed_aboveTheMachine_isHeldByItWithANote() {
        RotarySettings base = settings(10, 9000, 60);
        Machine slow =
                RotarySamples.with(base.machine(), new Machine.Travel(-10, 1000, -60, 400, 3000, 33.33, 400, 10));
        CutPlanner planner = new CutPlanner(RotarySamples.on(base, slow));

        assertThat(planner.plan(cutter(CutterKind.TWIST, 10, 10, 9000))
                        .orElseThrow()
                        .feedMmPerMin())
                .isCloseTo(33.3, within(1e-9));
        assertThat(planner.findings())
                .extracting(Finding::found)
                .containsExactly("33.3 mm/min, the highest feed of the machine");
    }

    @Test
    void cutterWithoutCuttingData_isAStop() {
        CutPlanner planner = new CutPlanner(settings(10, 9000, 60));

        assertThat(planner.plan(cutter(CutterKind.TWIST, 70, 10, 9000))).isEmpty();
        assertThat(planner.findings()).extracting(Finding::code).isEqualTo(List.of(Code.PROFILE_WRONG));
    }
}
