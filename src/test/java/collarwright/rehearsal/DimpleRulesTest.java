package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pair of dimples tells TOP and the clockwise sense; each broken text below would tell a lie.
 *
 * <p>By hand for the pipe of the samples, OD 160.1 and collars 80 wide, 44.5 holes at most: the web above hole 1 is 40 −
 * 22.25 = 17.75, so the dimples are 5 from the TOP edge. Collar 1 lies at X 20 to 100. TOP toward the chuck: X 25, and the
 * TOP dimple at 6 / 80.05 rad = 4.294499°. TOP toward the free end: X 95, and 360 − 4.294499 = 355.705501°. A axis of the other
 * sign: the angles change places.
 */
class DimpleRulesTest {

    private static final List<PatternRun> TWO =
            List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2));

    private static RotarySettings settings(boolean positive, boolean topTowardChuck) {
        RotarySettings s = RotarySamples.metric(false);
        return RotarySamples.on(s, RotarySamples.turned(s.machine(), positive, topTowardChuck));
    }

    private static String marks(RotaryPlan plan) {
        return plan.programs().get(0).text();
    }

    private static RotaryPlan with(RotaryPlan plan, String text) {
        List<ProgramFile> files = plan.programs().stream()
                .map(f -> f.name().equals("LA-1-mark.ngc")
                        ? new ProgramFile(f.name(), f.purpose(), f.task(), f.lift(), f.effort(), text)
                        : f)
                .toList();
        return new RotaryPlan(files, plan.setups(), plan.findings());
    }

    private static List<Finding> check(RotarySettings settings, UnaryOperator<String> breaking) {
        RotaryPlan plan = RotaryJob.plan(settings, TWO);
        assertThat(PlanRules.check(plan, settings, TWO)).isEmpty();
        String broken = breaking.apply(marks(plan));
        assertThat(broken).as("the text to break is there").isNotEqualTo(marks(plan));
        return PlanRules.check(with(plan, broken), settings, TWO);
    }

    @ParameterizedTest
    @CsvSource({
        "true, true, X25.000, 4.294",
        "true, false, X95.000, 355.706",
        "false, true, X25.000, 355.706",
        "false, false, X95.000, 4.294"
    })
    void dimples_lieWhereTheHandWorkedFiguresSay(boolean positive, boolean topTowardChuck, String x, String angle) {
        RotarySettings settings = settings(positive, topTowardChuck);
        RotaryPlan plan = RotaryJob.plan(settings, TWO);

        assertThat(marks(plan)).contains("G0 " + x + "\n", "G0 A0.000\n", "G0 A" + angle + "\n");
        assertThat(PlanRules.check(plan, settings, TWO)).isEmpty();
    }

    static Stream<Arguments> broken() {
        return Stream.of(true, false).flatMap(chuck -> {
            String x = chuck ? "X25.000" : "X95.000";
            String otherEdge = chuck ? "X95.000" : "X25.000";
            String a = chuck ? "A4.294" : "A355.706";
            String mirrored = chuck ? "A355.706" : "A4.294";
            UnaryOperator<String> along = t -> t.replace(x, chuck ? "X25.010" : "X94.990");
            UnaryOperator<String> round = t -> t.replace("G0 " + a, chuck ? "G0 A4.300" : "G0 A355.700");
            UnaryOperator<String> missing = t -> t.replaceFirst("(?s)G0 " + a + "\n.*M5", "M5");
            UnaryOperator<String> side = t -> t.replace("G0 " + a, "G0 " + mirrored);
            UnaryOperator<String> edge = t -> t.replace(x, otherEdge);
            return Stream.of(
                    Arguments.of("moved along the pipe", chuck, along, "collar 1, 0 line dimple made once"),
                    Arguments.of("moved along the pipe", chuck, along, "collar 1, TOP dimple made once"),
                    Arguments.of("moved round the pipe", chuck, round, "collar 2, TOP dimple made once"),
                    Arguments.of("missing", chuck, missing, "collar 1, TOP dimple made once"),
                    Arguments.of("missing", chuck, missing, "4 dimples on stick LA"),
                    Arguments.of("anticlockwise", chuck, side, "collar 1, TOP dimple made once"),
                    Arguments.of("at the other edge", chuck, edge, "collar 1, 0 line dimple made once"));
        });
    }

    @ParameterizedTest(name = "{0}, TOP toward the chuck {1}: {3}")
    @MethodSource("broken")
    void brokenDimples_areRefused(
            String name, boolean topTowardChuck, UnaryOperator<String> breaking, String expected) {
        assertThat(check(settings(true, topTowardChuck), breaking))
                .as(name)
                .allSatisfy(f -> assertThat(f.code()).isEqualTo(Code.REHEARSAL_FAILED))
                .anySatisfy(f -> assertThat(f.expected()).isEqualTo(expected));
    }

    /** A plan whose tasks are as wrong as its texts: the marks for a pipe that lies the other way round. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void marksForTheOtherTop_areRefused(boolean topTowardChuck) {
        RotarySettings settings = settings(true, topTowardChuck);
        RotaryPlan plan = RotaryJob.plan(settings, TWO);
        RotaryPlan other = RotaryJob.plan(settings(true, !topTowardChuck), TWO);
        List<ProgramFile> files = plan.programs().stream()
                .map(f -> f.name().equals("LA-1-mark.ngc") ? other.programs().get(0) : f)
                .toList();

        assertThat(PlanRules.check(new RotaryPlan(files, plan.setups(), List.of()), settings, TWO))
                .extracting(Finding::expected)
                .containsExactly(
                        "collar 1, 0 line dimple made once",
                        "collar 1, TOP dimple made once",
                        "collar 2, 0 line dimple made once",
                        "collar 2, TOP dimple made once");
    }

    /** The whole mark program left out. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void planWithoutItsMarkProgram_isRefused(boolean topTowardChuck) {
        RotarySettings settings = settings(true, topTowardChuck);
        RotaryPlan plan = RotaryJob.plan(settings, TWO);
        List<ProgramFile> files = plan.programs().stream()
                .filter(f -> f.task().filter(t -> t.marks()).isEmpty())
                .toList();

        assertThat(Rehearsal.rehearse(new RotaryPlan(files, plan.setups(), List.of()), settings, TWO))
                .anySatisfy(f -> {
                    assertThat(f.expected()).isEqualTo("4 dimples on stick LA");
                    assertThat(f.found()).isEqualTo("0 made");
                });
    }
}
