package collarwright.bench;

import collarwright.collar.LeanEnvelope;
import collarwright.collar.SwungContact;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Tilt limits and required diameters per second on one core. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class TiltLimits {

    private static final int CASES = 10_000;

    /** How many of a hundred holes bind beside the mid-plane, where there is no closed form. */
    @Param({"0", "50", "100"})
    public int offMidPlanePercent;

    private TiltCases cases = TiltCases.of(1, 0);

    /** Draws the holes. */
    @Setup
    public void draw() {
        cases = TiltCases.of(CASES, CASES / 100 * offMidPlanePercent);
    }

    /**
     * From the hole to the lean.
     *
     * @return a sum that hangs on every result
     */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double tiltLimit() {
        double sum = 0;
        for (int i = 0; i < cases.count(); i++) {
            sum += cases.tiltLimit(i);
        }
        return sum;
    }

    /**
     * From the lean to the hole.
     *
     * @return a sum that hangs on every result
     */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double requiredDiameter() {
        double sum = 0;
        for (int i = 0; i < cases.count(); i++) {
            sum += cases.required(i);
        }
        return sum;
    }

    /**
     * The whole envelope of one round hole, at 72 bearings.
     *
     * @return what it gives
     */
    @Benchmark
    public LeanEnvelope envelope() {
        return LeanEnvelope.round(40.2, 42, new SwungContact.Wall(74.9, 80));
    }
}
