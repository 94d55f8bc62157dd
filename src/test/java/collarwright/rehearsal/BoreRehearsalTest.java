package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.BoreSamples;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.tooling.Cutter;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Bored holes: good programs pass, every broken one is caught for the reason it was broken. */
class BoreRehearsalTest {

    private static List<PatternRun> runs(boolean inch) {
        Cutter mill = inch ? BoreSamples.mill(9.525, 30) : BoreSamples.MILL_12;
        return List.of(new PatternRun(BoreSamples.mixed(mill, 20.5, inch ? 26.17 : 47.32), 2));
    }

    private static ProgramFile bored(RotaryPlan plan) {
        return plan.programs().stream()
                .filter(p -> p.name().equals("LA-3-EM-12.ngc") || p.name().equals("LA-2-EM-12.ngc"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"false, false", "false, true", "true, false", "true, true"})
    void boredHoles_passTheirReplay(boolean cycles, boolean inch) {
        RotarySettings settings = BoreSamples.settings(cycles, inch);
        RotaryPlan plan = RotaryJob.plan(settings, runs(inch));

        assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(plan.programs()).hasSize(7);
        assertThat(Rehearsal.rehearse(plan, settings, runs(inch))).isEmpty();
        for (ProgramFile file : plan.programs()) {
            assertThat(Comparison.of(file, file.text(), file.name(), settings).findings())
                    .as(file.name())
                    .isEmpty();
            assertThat(Replay.of(file, settings).seconds())
                    .isCloseTo(file.seconds(), within(1e-4 * file.seconds() + 1e-6));
        }
    }

    @Test
    void replay_tellsBoredSizes() {
        RotarySettings settings = BoreSamples.settings(false, false);
        Replay replay = Replay.of(bored(RotaryJob.plan(settings, runs(false))), settings);

        assertThat(replay.holes()).hasSize(8);
        assertThat(replay.holes()).extracting(h -> Math.round(h.bored() * 100)).containsOnly(2050L, 4732L);
    }

    private static Arguments swap(String name, String from, String to, String expected) {
        UnaryOperator<String> breaking =
                t -> t.replaceFirst(java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
        return Arguments.of(name, breaking, expected);
    }

    private static Arguments broken(String name, UnaryOperator<String> breaking, String expected) {
        return Arguments.of(name, breaking, expected);
    }

    static Stream<Arguments> programs() {
        return Stream.of(sizes(), ways(), others()).flatMap(s -> s);
    }

    /** In the first hole only. */
    private static UnaryOperator<String> first(UnaryOperator<String> breaking) {
        return t -> {
            int end = t.indexOf("G0 X143.000");
            return breaking.apply(t.substring(0, end)) + t.substring(end);
        };
    }

    private static Stream<Arguments> sizes() {
        return Stream.of(
                broken("too narrow", first(t -> t.replace("77.660", "77.650").replace("17.660", "17.650")), WIDE),
                broken(
                        "too wide",
                        first(t -> t.replace("77.660", "77.670").replace("17.660", "17.670")),
                        "collar 1, hole 1 bored to 47.320 mm and no wider"),
                broken(
                        "the centre off along X",
                        first(t -> t.replace("77.660", "77.665")),
                        "collar 1, hole 1 about X 60.000 mm"),
                broken(
                        "the centre off along Y",
                        first(t -> t.replace("J0.000", "J0.010")),
                        "collar 1, hole 1 about X 60.000 mm"),
                broken("not through", first(t -> t.replace("Z69.801", "Z71.500")), WIDE),
                broken("the flat turn left out", first(t -> t.replaceFirst("G3 X77.660 Y0.000 Z69.801.*\n", "")), WIDE),
                swap("not off the wall", "G1 X77.460 Y0.000 F95.0\n", "", "the cutter 0.200 mm off the wall"),
                swap("a level turn twice", LEVEL, LEVEL + LEVEL, "one level turn"),
                broken(
                        "a little too shallow",
                        first(t -> t.replace("Z69.801", "Z69.804")),
                        "collar 1, hole 1 to Z 69.801 mm"),
                broken(
                        "into the far wall",
                        first(t -> t.replace("Z69.801", "Z-71.500")),
                        "the cutter off the far wall"),
                swap("beyond the wall at the bottom", "G1 X77.460", "G1 X77.860", "collar 1, hole 1 bored to"),
                swap("a hole left out", "G0 X143.000\n", "M2\nG0 X143.000\n", "8 bored holes"),
                swap("another angle", "G0 A121.717", "G0 A121.723", "collar 2, hole 3 at azimuth 121.717"));
    }

    private static final String LEVEL = "G3 X77.660 Y0.000 Z76.226 I-17.660 J0.000 F95.0\n";

    private static final String WIDE = "collar 1, hole 1 47.320 mm wide and through the wall everywhere";

    private static Stream<Arguments> ways() {
        String first = "G1 X77.660 Y0.000 F95.0";
        return Stream.of(
                broken(
                        "one turn left out",
                        first(t -> t.replaceFirst("G3 X77.660 Y0.000 Z73.013.*\n", "")),
                        "a helix of 2 degrees or less"),
                swap("too steep", "Z79.438", "Z79.000", "a helix of 2 degrees or less"),
                swap("a turn that goes up", "Z76.226", "Z80.000", "every turn goes deeper or stays"),
                swap("clockwise", "G3", "G2", "round counter-clockwise"),
                swap("straight down", first, "G1 X77.660 Y0.000 Z79.000 F95.0", "cuts by arcs, or along X and Y"),
                swap("straight down by Z", first, first + "\nG1 Z79.000 F95.0", "down by a helix only"),
                swap("a rapid into the wall", "G0 Z82.650", "G0 Z75.000", "no rapid that ends below the crown"),
                swap("from the clear height", "G0 Z82.650\n", "", "the first cut of a hole from Z 82.650"),
                swap("out as a rapid", first, first.replace("G1", "G0").replace(" F95.0", ""), "X and Y move only"),
                broken(
                        "no return to clear",
                        t -> t.replaceFirst("G1 X77.460 Y0.000 F95.0\nG0 Z105.650\n", "G1 X77.460 Y0.000 F95.0\n"),
                        "X and Y move only"),
                swap("across the disc", "G1 X77.460", "G1 X60.000", "a straight cut of 0.200 mm or less"),
                broken(
                        "no retract at the end",
                        t -> t.replaceFirst("G0 Z105.650\nG0 Z105.650\nM5", "M5"),
                        "at the end Z up"));
    }

    private static Stream<Arguments> others() {
        String first = "G1 X77.660 Y0.000 F95.0";
        return Stream.of(
                swap(
                        "the feed of the wall",
                        "Z79.438 I-17.660 J0.000 F95.0",
                        "Z79.438 I-17.660 J0.000 F127.3",
                        "feed 9"),
                swap("too slow", "Z79.438 I-17.660 J0.000 F95.0", "Z79.438 I-17.660 J0.000 F45.0", "feed 9"),
                swap("no feed", first, "G1 X77.660 Y0.000", "F above 0"),
                swap("an arc by its radius", "I-17.660 J0.000", "R17.660", "an arc with X or Y for its end"),
                swap("a centre off the way", "X77.660 Y0.000 Z79.438", "X77.760 Y0.000 Z79.438", "a centre as far"),
                swap("ending beside the axis", "Y0.000 Z76.226", "Y0.030 Z76.226", "Y0 over the axis"),
                swap("turning in a turn", "Z79.438 I", "Z79.438 A1.000 I", "no turning in an arc"),
                swap("not started", "S1592 M3\n", "", "the spindle running"),
                swap("another X", "G0 X60.000\nS", "G0 X12.000\nS", "collar 1, hole 1 bored to"),
                broken("over the jaws", first(t -> t.replace("77.660", "37.660")), "nothing below Z 105.650"),
                swap(
                        "an air cut's height",
                        "G0 Z105.650\nG0 X143.000",
                        "G0 Z95.000\nG0 X143.000",
                        "X and Y move only"));
    }

    @ParameterizedTest
    @CsvSource({"10, Y between -10.000 mm and 10.000 mm", "0, no arc without a linear Y"})
    void yBeyondItsTravel_isCaught(double side, String expected) {
        RotarySettings settings = BoreSamples.settings(false, false);
        ProgramFile good = bored(RotaryJob.plan(settings, runs(false)));
        Machine m = settings.machine();
        Machine less = side > 0
                ? RotarySamples.with(m, BoreSamples.across(m.travel(), side))
                : RotarySamples.with(m, RotarySamples.machine(false).travel());

        assertThat(Rehearsal.rehearse(good, RotarySamples.on(settings, less)))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.expected()).startsWith(expected));
    }

    @Test
    void arcBeyondX_isCaught() {
        RotarySettings settings = BoreSamples.settings(false, false);
        ProgramFile good = bored(RotaryJob.plan(settings, runs(false)));
        Machine m = settings.machine();
        Machine.Travel t = m.travel();
        Machine.Travel shorter = new Machine.Travel(
                45,
                t.maxX(),
                t.minZ(),
                t.maxZ(),
                t.rapidMmPerMin(),
                t.maxFeedMmPerMin(),
                t.accelerationMmPerS2(),
                t.clearGap(),
                t.across());

        assertThat(Rehearsal.rehearse(good, RotarySamples.on(settings, RotarySamples.with(m, shorter))))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.expected()).startsWith("X between 45.000"));
    }

    @Test
    void airCut_thatIsAsDeepAsTheProgram_isCaught() {
        RotarySettings settings = BoreSamples.settings(false, false);
        RotaryPlan plan = RotaryJob.plan(settings, runs(false));
        ProgramFile air = plan.programs().stream()
                .filter(p -> p.name().equals("LA-2-EM-12-air.ngc"))
                .findFirst()
                .orElseThrow();
        ProgramFile deep = new ProgramFile(
                air.name(),
                air.purpose(),
                air.task(),
                air.lift(),
                air.effort(),
                bored(plan).text());

        assertThat(Rehearsal.rehearse(air, settings)).isEmpty();
        assertThat(Rehearsal.rehearse(deep, settings))
                .anySatisfy(f -> assertThat(f.expected()).startsWith("an air cut at Z"));
    }

    /** A slower feed is a warning, told at the wall of the hole. */
    @Test
    void editedFeed_isToldAtTheWall() {
        RotarySettings settings = BoreSamples.settings(false, false);
        ProgramFile good = bored(RotaryJob.plan(settings, runs(false)));
        String slower = good.text().replace("F95.0", "F80.0");

        assertThat(Comparison.of(good, slower, "edited.ngc", settings).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.level()).isEqualTo(Level.WARN);
                    assertThat(f.expected()).contains("127.300 mm a minute at the wall as planned");
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("programs")
    void brokenProgram_isCaughtForItsReason(String name, UnaryOperator<String> breaking, String expected) {
        RotarySettings settings = BoreSamples.settings(false, false);
        ProgramFile good = bored(RotaryJob.plan(settings, runs(false)));
        String text = breaking.apply(good.text());
        assertThat(text).as("the text to break is there").isNotEqualTo(good.text());

        List<Finding> findings = Rehearsal.rehearse(
                new ProgramFile(good.name(), good.purpose(), good.task(), good.lift(), good.effort(), text), settings);

        assertThat(findings).as(name).anySatisfy(f -> assertThat(f.expected()).startsWith(expected));
        assertThat(findings).allSatisfy(f -> assertThat(f.level()).isEqualTo(Level.STOP));
    }
}
