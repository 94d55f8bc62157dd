package collarwright.bench;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import java.util.List;
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

/** The plan of a whole sphere of frequency 64, stage by stage and as a whole: 40,962 hubs and 122,880 struts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class LargestSphere {

    private final Job job = SphereJob.job();
    private final Job tooSmall = SphereJob.withTooSmallACollar();
    private final Dome dome = Dome.of(job.dome());
    private final Hubs hubs = Hubs.of(dome);

    /**
     * Nodes and members.
     *
     * @return the dome
     */
    @Benchmark
    public Dome dome() {
        return Dome.of(job.dome());
    }

    /**
     * Strut types, hub types, turns and holes of all members.
     *
     * @return the hubs
     */
    @Benchmark
    public Hubs hubs() {
        return Hubs.of(dome);
    }

    /**
     * Lengths and setbacks.
     *
     * @return the struts
     */
    @Benchmark
    public StrutLayout struts() {
        return StrutLayout.of(
                hubs,
                job.size(),
                job.strut(),
                new StrutLayout.Clearance(
                        job.hub().ring().outerRadius(), job.hub().endGap()));
    }

    /**
     * Hole sizes, cutters and patterns.
     *
     * @return the patterns
     */
    @Benchmark
    public PatternBook patterns() {
        return SphereJob.patterns(hubs, job);
    }

    /**
     * Dome, hubs and patterns.
     *
     * @return the patterns
     */
    @Benchmark
    public PatternBook domeToPatterns() {
        return SphereJob.patterns(Hubs.of(Dome.of(job.dome())), job);
    }

    /**
     * All of it with struts, every check and every finding.
     *
     * @return the plan
     */
    @Benchmark
    public Plan wholePlan() {
        return Planner.plan(job, List.of());
    }

    /**
     * The same where every hub's holes run into each other and a wider pipe is looked for.
     *
     * @return the plan
     */
    @Benchmark
    public Plan wholePlanOfATooSmallCollar() {
        return Planner.plan(tooSmall, List.of(tooSmall.hub().collar(), job.hub().collar()));
    }
}
