package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.machining.Bed;
import collarwright.machining.BenchProgram;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatSamples;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotarySamples;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Pattern;
import collarwright.tooling.StripJoint;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs for flat strips: what is written passes here and in rs274, what is broken does not. */
class FlatRehearsalTest {

    private static FlatPlan plan(FlatSettings settings) {
        return FlatJob.plan(settings, List.of(FlatSamples.strip()));
    }

    private static List<Finding> rehearse(FlatPlan plan, FlatSettings settings) {
        return FlatRehearsal.rehearse(plan, settings, List.of(FlatSamples.strip()), List.of(FlatSamples.pattern()));
    }

    /** A drawn pattern of two cutters on a drawn strip. */
    private record Drawn(FlatSettings settings, FlatStrip strip, Pattern pattern) {
        static Drawn of(Seeds draw) {
            double first = draw.between(35, 70);
            Pattern pattern = new Pattern(
                    "CA",
                    1,
                    List.of(
                            RotarySamples.hole(1, 0, draw.between(-2, 2), RotarySamples.twist(16)),
                            RotarySamples.hole(2, first, 0, RotarySamples.twist(20)),
                            RotarySamples.hole(3, first + draw.between(45, 100), 1.5, RotarySamples.twist(16)),
                            RotarySamples.hole(4, 240 + draw.between(0, 40), 0, RotarySamples.twist(20))),
                    "FFFFFFFF");
            StripJoint joint = draw.coin()
                    ? new StripJoint(StripJoint.Kind.BUTT, 0)
                    : new StripJoint(draw.coin() ? StripJoint.Kind.LAP : StripJoint.Kind.GAP, draw.between(0.5, 6));
            FlatSettings settings = FlatSamples.settings(
                    FlatSamples.machine(draw.coin()), draw.coin() ? ProgramUnits.INCH : ProgramUnits.MM);
            return new Drawn(settings, FlatStrip.of(pattern, draw.whole(1, 50), FlatSamples.BODY, joint), pattern);
        }

        FlatPlan plan() {
            return FlatJob.plan(settings, List.of(strip));
        }
    }

    @Test
    void everyProgramThatIsWritten_passes() {
        Seeds.each(100, draw -> {
            Drawn drawn = Drawn.of(draw);
            FlatPlan plan = drawn.plan();
            assertThat(plan.programs()).as(plan.findings().toString()).hasSize(6);
            assertThat(FlatRehearsal.rehearse(plan, drawn.settings(), List.of(drawn.strip()), List.of(drawn.pattern())))
                    .isEmpty();
        });
    }

    @Test
    @NeedsChecker(Checker.RS274)
    void outsideInterpreter_makesTheSameHoles() {
        Rs274 control = new Rs274(List.of());
        Seeds.each(8, draw -> {
            Drawn drawn = Drawn.of(draw);
            for (BenchProgram<FlatTask> file : drawn.plan().programs().subList(0, 4)) {
                List<CanonicalMove> bottoms = new ArrayList<>();
                for (CanonicalMove move : control.read(file.text()).movesOrFail()) {
                    if (move.kind() == Kind.FEED) {
                        bottoms.removeIf(m -> m.x() == move.x() && m.y() == move.y());
                        bottoms.add(move);
                    }
                }
                List<FlatTask.FlatPoint> planned = file.task().points();
                assertThat(bottoms).as(file.text()).hasSameSizeAs(planned);
                double tolerance = bottoms.get(0).inch() ? 0.0001 * 25.4 : 0.001;
                for (int i = 0; i < planned.size(); i++) {
                    CanonicalMove hole = bottoms.get(i);
                    assertThat(hole.x() * hole.unitMm())
                            .isCloseTo(planned.get(i).x(), within(tolerance));
                    assertThat(hole.y() * hole.unitMm())
                            .isCloseTo(planned.get(i).y(), within(tolerance));
                    assertThat(hole.z() * hole.unitMm())
                            .isCloseTo(planned.get(i).bottom() + file.lift(), within(tolerance));
                }
            }
        });
    }

    @Test
    void mirroredStrip_isCaught() {
        FlatSettings settings = FlatSamples.settings(FlatSamples.machine(false), ProgramUnits.MM);
        FlatPlan plan = plan(settings);
        double length = FlatSamples.strip().length();
        FlatPlan mirrored = new FlatPlan(
                plan.programs().stream()
                        .map(p -> with(
                                p,
                                java.util.regex.Pattern.compile("G0 X(\\S+)")
                                        .matcher(p.text())
                                        .replaceAll(m -> String.format(
                                                java.util.Locale.ROOT,
                                                "G0 X%.3f",
                                                length - Double.parseDouble(m.group(1))))))
                        .toList(),
                List.of());
        assertThat(rehearse(plan, settings)).isEmpty();
        assertThat(rehearse(mirrored, settings)).extracting(Finding::expected).contains("hole 2 made once");
    }

    private static BenchProgram<FlatTask> with(BenchProgram<FlatTask> p, String text) {
        return new BenchProgram<>(p.name(), p.tasks(), p.lift(), p.seconds(), text);
    }

    static Stream<Arguments> broken() {
        return Stream.of(
                Arguments.of("Y before X", 2, "G0 X", "G0 Y20.000\nG0 X", "first motions ZXY"),
                Arguments.of("no first lift", 2, "G0 Z27", "G0 Z7", "first of all Z up"),
                Arguments.of("two axes", 2, "G0 Y25.000", "G0 X30.000 Y25.000", "one axis"),
                Arguments.of("off the table", 2, "G0 Y25.000", "G0 Y525.000", "Y within the travel"),
                Arguments.of("too deep", 2, "G1 Z-10", "G1 Z-40", "the cutter off the bed"),
                Arguments.of("not through", 2, "G1 Z-10", "G1 Z-7", "the full diameter through"),
                Arguments.of("a dimple through the strip", 0, "G1 Z-1.000", "G1 Z-3.000", "the cutter off the bed"),
                Arguments.of("a dimple in the air", 0, "G1 Z-1.000", "G1 Z1.000", "a dimple in the work"),
                Arguments.of("an air cut in the strip", 1, "G1 Z", "G1 Z-", "an air cut at Z"),
                Arguments.of("spindle off", 2, " M3", " M5", "the spindle running"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("broken")
    void broken_isRefused(String what, int file, String from, String to, String expected) {
        FlatSettings settings = FlatSamples.settings(FlatSamples.machine(false), ProgramUnits.MM);
        BenchProgram<FlatTask> program = plan(settings).programs().get(file);
        assertThat(FlatRehearsal.rehearse(program, settings)).isEmpty();
        String text = program.text().replaceFirst(java.util.regex.Pattern.quote(from), Matcher.quoteReplacement(to));
        assertThat(text).as(what + "\n" + program.text()).isNotEqualTo(program.text());
        assertThat(FlatRehearsal.rehearse(with(program, text), settings))
                .extracting(Finding::expected)
                .as(what)
                .anyMatch(e -> e.contains(expected));
    }

    @Test
    void aHoleLeftOut_isCaught() {
        FlatSettings settings = FlatSamples.settings(FlatSamples.machine(false), ProgramUnits.MM);
        FlatPlan plan = plan(settings);
        FlatPlan half = new FlatPlan(plan.programs().subList(0, 2), List.of());
        assertThat(rehearse(half, settings)).extracting(Finding::expected).contains("4 holes");
    }

    @Test
    void smallMachine_isToldOfEverything() {
        FlatSettings settings =
                FlatSamples.settings(FlatSamples.machine(false, 100, new Bed(140, 0, 2)), ProgramUnits.MM);
        FlatPlan plan = plan(settings);
        assertThat(plan.programs()).isEmpty();
        assertThat(plan.findings()).extracting(Finding::code).contains(Code.MACHINE_UNABLE, Code.MACHINE_TRAVEL);
    }
}
