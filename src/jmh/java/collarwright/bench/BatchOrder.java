package collarwright.bench;

import collarwright.collar.CollarBody;
import collarwright.finding.Finding;
import collarwright.geometry.Interval;
import collarwright.machining.CuttingData;
import collarwright.machining.JobLabel;
import collarwright.machining.Machine;
import collarwright.machining.MarkTool;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramUnits;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.Workpiece;
import collarwright.rehearsal.Rehearsal;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An order of 2,000 collars with 12,000 holes, invented: on sticks of 500 collars, so that nearly every hole is printed
 * (twice, with the air cut) and rehearsed, and on sticks of 12, where the layouts have to be found.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class BatchOrder {

    private final List<PatternRun> order = order(697, 503, 307, 211, 179, 103);
    private final RotarySettings longSticks = settings(60_000);
    private final RotarySettings shortSticks = settings(1_200);

    /**
     * Four sticks of 500.
     *
     * @return findings of the rehearsal, none
     */
    @Benchmark
    public List<Finding> longSticks() {
        return planned(longSticks);
    }

    /**
     * 167 sticks of 12.
     *
     * @return findings of the rehearsal, none
     */
    @Benchmark
    public List<Finding> shortSticks() {
        return planned(shortSticks);
    }

    private List<Finding> planned(RotarySettings settings) {
        RotaryPlan plan = RotaryJob.plan(settings, order);
        if (plan.programs().isEmpty()) {
            throw new IllegalStateException(plan.findings().toString());
        }
        List<Finding> faults = Rehearsal.rehearse(plan, settings, order);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(faults.toString());
        }
        return faults;
    }

    private static List<PatternRun> order(int... counts) {
        Cutter saw = new Cutter(
                "HS-44", CutterKind.HOLE_SAW, "44 mm", 44, new Interval(44, 44.2, 44.5), false, 12, 38, 95, 2100, "s");
        List<PatternRun> runs = new ArrayList<>();
        for (int p = 0; p < counts.length; p++) {
            List<Hole> holes = new ArrayList<>();
            for (int h = 0; h < 6; h++) {
                double azimuth = StrictMath.toRadians(h * 60 + (h == 0 ? 0 : p * 0.7));
                holes.add(new Hole(h + 1, azimuth, 0, 0.2, 44.2, saw, 0.21, 0.2, 0.22));
            }
            runs.add(new PatternRun(new Pattern("C" + (char) ('A' + p), 1, holes, "FFFFFFFF"), counts[p]));
        }
        return runs;
    }

    private static RotarySettings settings(double stick) {
        Machine machine = new Machine(
                "mill",
                "mill with a rotary axis",
                Machine.Kind.ROTARY,
                new Machine.Post(false, Set.copyOf(ProgramWords.PLAIN), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(-10, stick, -60, 400, 3000, 1500, 400, 10),
                new Machine.Spindle(60, 3000, 3),
                new Machine.Rotary(true, true, 3600, 720, 2, 100, 20, 15, 3, 10, stick),
                "our choice, no source");
        CuttingData cutting = new CuttingData(
                "pvc",
                "PVC-U",
                List.of(
                        new CuttingData.Row(CutterKind.TWIST, 1, 60, 60, 0.1, 0.5, "our choice, no source"),
                        new CuttingData.Row(CutterKind.HOLE_SAW, 14, 160, 60, 0.1, 0.2, "our choice, no source")),
                "long chips");
        Workpiece pipe = new Workpiece(
                "PVC-U pipe 160 × 4.7", new CollarBody(80.05, Interval.between(4.7, 5.4), 80), 0.6, true, List.of());
        return new RotarySettings(
                machine, ProgramUnits.MM, cutting, pipe, new JobLabel("Batch", "ABCDFGHJ"), 1, MarkTool.standard());
    }
}
