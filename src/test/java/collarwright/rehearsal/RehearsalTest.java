package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.Workpiece;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RehearsalTest {

    private static final List<PatternRun> SIX =
            List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 25));
    private static final List<PatternRun> INCH =
            List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.TWIST_1_1_8), 9));

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void metricAndInchJobs_pass(boolean cycles) {
        RotarySettings metric = RotarySamples.metric(cycles);
        RotaryPlan plan = RotaryJob.plan(metric, SIX);
        assertThat(plan.programs()).hasSize(9);
        assertThat(Rehearsal.rehearse(plan, metric, SIX)).isEmpty();

        RotarySettings inch = RotarySamples.inch(cycles);
        plan = RotaryJob.plan(inch, INCH);
        assertThat(plan.programs()).hasSize(5);
        assertThat(Rehearsal.rehearse(plan, inch, INCH)).isEmpty();
    }

    @Test
    void plainAndCycles_areTheSameStrokes() {
        for (ProgramUnits units : ProgramUnits.values()) {
            List<PatternRun> runs = units == ProgramUnits.MM ? SIX : INCH;
            List<ProgramFile> plain =
                    RotaryJob.plan(settings(units, false), runs).programs();
            List<ProgramFile> cycles =
                    RotaryJob.plan(settings(units, true), runs).programs();
            assertThat(plain).hasSameSizeAs(cycles);
            for (int i = 0; i < plain.size(); i++) {
                assertThat(strokes(plain.get(i))).isEqualTo(strokes(cycles.get(i)));
            }
        }
    }

    private static RotarySettings settings(ProgramUnits units, boolean cycles) {
        return units == ProgramUnits.MM ? RotarySamples.metric(cycles) : RotarySamples.inch(cycles);
    }

    /** What the text does, from one end of each stroke to the other, standing still left out. */
    private static List<String> strokes(ProgramFile file) {
        List<String> lines = new ArrayList<>();
        for (Event event : Interpreter.run(BlockReader.read(file.text()).blocks(), Pose.UNKNOWN)
                .events()) {
            if (event instanceof Event.Stroke s && !s.from().equals(s.to())) {
                lines.add((s.feed() ? "feed" : "rapid") + rounded(s.to().x()) + rounded(s.to().y())
                        + rounded(s.to().z()) + rounded(s.to().a()) + " F"
                        + (s.feed() ? rounded(s.drive().feedMmPerMin()) : "") + " S"
                        + s.drive().rpm());
            }
        }
        return lines;
    }

    private static String rounded(double value) {
        return Double.isNaN(value) ? " -" : " " + Math.round(value * 1e5);
    }

    @Test
    void planThatLeavesAHoleOut_isCaught() {
        RotarySettings settings = RotarySamples.metric(false);
        RotaryPlan plan = RotaryJob.plan(settings, SIX);
        List<ProgramFile> fewer = plan.programs().stream()
                .filter(p -> !p.name().equals("LA-2-HS-44.ngc"))
                .toList();

        assertThat(Rehearsal.rehearse(new RotaryPlan(fewer, plan.setups(), List.of()), settings, SIX))
                .anySatisfy(f -> assertThat(f.expected()).isEqualTo("collar 1, hole 1 made once"))
                .anySatisfy(f -> assertThat(f.expected()).isEqualTo("72 holes on stick LA"));
    }

    @Test
    void planForAnotherPattern_isCaught() {
        RotarySettings settings = RotarySamples.metric(false);
        RotaryPlan plan = RotaryJob.plan(settings, SIX);
        Pattern mirrored =
                RotarySamples.pattern("CA", RotarySamples.HOLE_SAW_44, 0, 58.2825, 121.7175, 180, 238.2825, 300);

        assertThat(Rehearsal.rehearse(plan, settings, List.of(new PatternRun(mirrored, 25))))
                .hasSize(13)
                .allSatisfy(f -> assertThat(f.expected()).endsWith("hole 6 made once"));
        assertThat(Rehearsal.rehearse(
                        plan, settings, List.of(new PatternRun(SIX.get(0).pattern(), 28))))
                .singleElement()
                .satisfies(f -> assertThat(f.expected()).isEqualTo("28 collars"));
    }

    @Test
    void planOnAnotherMachine_isCaught() {
        RotarySettings settings = RotarySamples.metric(false);
        RotaryPlan plan = RotaryJob.plan(settings, SIX);
        RotarySettings wider = RotarySamples.on(
                settings,
                RotarySamples.with(
                        settings.machine(), new Machine.Rotary(true, true, 3600, 720, 2, 100, 20, 15, 4, 10, 1200)));

        assertThat(Rehearsal.rehearse(plan, wider, SIX))
                .anySatisfy(f -> assertThat(f.expected()).contains("room for every cut"));
    }

    /** Drawn machines, pipes and patterns: whatever is planned without a stop passes its rehearsal. */
    @Test
    void drawnJobs_pass() {
        int[] programs = new int[1];
        Seeds.each(150, draw -> {
            RotarySettings settings = settings(draw);
            List<PatternRun> runs = runs(draw, settings.work().body());
            RotaryPlan plan = RotaryJob.plan(settings, runs);
            programs[0] += plan.programs().size();
            assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();
        });
        if (Long.getLong("seed") == null) {
            assertThat(programs[0]).as("most drawn jobs can be made").isGreaterThan(500);
        }
    }

    static RotarySettings settings(Seeds draw) {
        boolean cycles = draw.coin();
        Set<String> words = new TreeSet<>(ProgramWords.PLAIN);
        words.addAll(ProgramWords.CYCLES);
        words.add("M30");
        Machine.Post post = new Machine.Post(
                cycles,
                words,
                draw.whole(3, 5),
                draw.whole(3, 5),
                draw.whole(70, 90),
                draw.coin() ? "M2" : "M30",
                "ngc",
                new Machine.Layout(draw.whole(0, 1) * 10, draw.coin(), draw.coin(), draw.coin()));
        Machine machine = new Machine(
                "drawn",
                "Drawn machine",
                Machine.Kind.ROTARY,
                post,
                new Machine.Travel(
                        -20,
                        draw.between(400, 1500),
                        -150,
                        500,
                        draw.between(500, 9000),
                        draw.between(50, 4000),
                        draw.between(50, 900),
                        draw.between(1, 30)),
                new Machine.Spindle(draw.between(20, 100), draw.between(2000, 9000), draw.between(0, 6)),
                new Machine.Rotary(
                        draw.coin(),
                        draw.coin(),
                        draw.between(300, 9000),
                        draw.between(50, 2000),
                        draw.whole(0, 1) * draw.between(0.1, 10),
                        draw.between(0, 150),
                        draw.between(0, 40),
                        draw.between(0, 40),
                        draw.between(0, 5),
                        draw.between(0, 30),
                        draw.between(400, 2000)),
                "drawn");
        double outer = draw.between(30, 130);
        double wall = draw.between(0.03, 0.12) * outer;
        Workpiece work = new Workpiece(
                "Drawn pipe",
                new CollarBody(outer, new Interval(wall, wall * 1.05, wall * 1.1), draw.between(60, 110)),
                draw.coin() ? 0 : draw.between(0, 0.01 * outer),
                draw.coin(),
                draw.coin() ? List.of() : draw.numbers(draw.whole(1, 2), 500, 6000));
        return RotarySamples.settings(
                machine,
                draw.coin() ? ProgramUnits.MM : ProgramUnits.INCH,
                RotarySamples.cutting("drawn", draw.between(20, 90)),
                work);
    }

    static List<PatternRun> runs(Seeds draw, CollarBody body) {
        List<PatternRun> runs = new ArrayList<>();
        double most = 0.6 * body.leastInnerRadius();
        for (int p = 0; p < draw.whole(1, 2); p++) {
            List<Cutter> cutters = draw.numbers(3, 6, Math.min(45, most)).stream()
                    .map(RotarySamples::twist)
                    .toList();
            List<Hole> holes = new ArrayList<>();
            int count = draw.whole(1, 7);
            double azimuth = 0;
            for (int i = 0; i < count; i++) {
                holes.add(RotarySamples.hole(i + 1, azimuth, draw.between(-4, 4), draw.oneOf(cutters)));
                azimuth += draw.between(0.2, 360.0 / count);
            }
            runs.add(new PatternRun(new Pattern("C" + (char) ('A' + p), 1, holes, "FFFFFFFF"), draw.whole(1, 25)));
        }
        return runs;
    }
}
