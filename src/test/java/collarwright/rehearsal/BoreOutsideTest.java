package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.BoreSamples;
import collarwright.machining.Operation;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySettings;
import collarwright.testing.CanonicalCall;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bored holes through rs274, the stand-alone interpreter of linuxcnc-uspace (Debian): centre, radius, turns and depth of
 * every arc that it makes of a program. It prints four decimals.
 */
@NeedsChecker(Checker.RS274)
class BoreOutsideTest {

    private static final Rs274 CONTROL = new Rs274(List.of());

    @ParameterizedTest
    @CsvSource({"false, false", "false, true", "true, false", "true, true"})
    void boredHoles_areThePlannedOnes(boolean cycles, boolean inch) {
        RotarySettings settings = BoreSamples.settings(cycles, inch);
        Cutter mill = inch ? BoreSamples.mill(9.525, 30) : BoreSamples.MILL_12;
        PatternRun run = new PatternRun(BoreSamples.mixed(mill, 20.5, inch ? 26.17 : 47.32), 2);
        int bored = 0;
        for (ProgramFile file : RotaryJob.plan(settings, List.of(run)).programs()) {
            Rs274.Reading reading = CONTROL.read(file.text());
            assertThat(reading.accepted()).as(reading.complaint()).isTrue();
            List<Operation.Bore> planned = file.task().stream()
                    .flatMap(t -> t.operations().stream())
                    .filter(Operation.Bore.class::isInstance)
                    .map(Operation.Bore.class::cast)
                    .toList();
            if (!planned.isEmpty()) {
                List<List<CanonicalCall>> holes = holes(reading.calls());
                assertThat(holes).as(file.name()).hasSameSizeAs(planned);
                for (int i = 0; i < planned.size(); i++) {
                    prove(holes.get(i), planned.get(i), file, settings);
                    bored++;
                }
            }
        }
        assertThat(bored).as("bored holes, cut and in the air").isEqualTo(16);
    }

    /** The feeds between two rapids. */
    private static List<List<CanonicalCall>> holes(List<CanonicalCall> calls) {
        List<List<CanonicalCall>> holes = new ArrayList<>();
        List<CanonicalCall> hole = new ArrayList<>();
        for (CanonicalCall call : calls) {
            if (call.name().endsWith("_FEED")) {
                hole.add(call);
            } else if (call.name().equals("STRAIGHT_TRAVERSE") && !hole.isEmpty()) {
                holes.add(List.copyOf(hole));
                hole.clear();
            }
        }
        return holes;
    }

    private static void prove(
            List<CanonicalCall> feeds, Operation.Bore bore, ProgramFile file, RotarySettings settings) {
        boolean inch = settings.units() == ProgramUnits.INCH;
        double unit = inch ? 25.4 : 1;
        double tolerance = inch ? 0.0001 * 25.4 : 0.001;
        ProgramTask task = file.task().orElseThrow();
        double x = bore.place().x();
        double radius = (bore.diameter() - bore.cutter().size()) / 2;
        double retract = task.heights().retract() + file.lift();
        double bottom = bore.bottom() + file.lift();

        CanonicalCall out = feeds.get(0);
        assertThat(out.name()).isEqualTo("STRAIGHT_FEED");
        assertThat(word(out, 0) * unit).isCloseTo(x + radius, within(tolerance));
        assertThat(word(out, 1)).isZero();
        assertThat(word(out, 2) * unit).isCloseTo(retract, within(tolerance));
        List<CanonicalCall> arcs = feeds.subList(1, feeds.size() - 1);
        double z = retract;
        for (CanonicalCall arc : arcs) {
            // End x, end y, centre x, centre y, turns (counter-clockwise if positive), end z.
            assertThat(arc.name()).isEqualTo("ARC_FEED");
            double endX = word(arc, 0) * unit;
            double endY = word(arc, 1) * unit;
            double centreX = word(arc, 2) * unit;
            double centreY = word(arc, 3) * unit;
            assertThat(centreX).isCloseTo(x, within(tolerance));
            assertThat(centreY).isCloseTo(0, within(tolerance));
            assertThat(Math.hypot(endX - centreX, endY - centreY)).isCloseTo(radius, within(tolerance));
            assertThat(word(arc, 4)).isEqualTo(1);
            double next = word(arc, 5) * unit;
            double steepest = 2 * Math.PI * radius * Math.tan(Math.toRadians(2));
            assertThat(z - next)
                    .isBetween(-tolerance, Math.min(steepest, task.cut().peck()) + 2 * tolerance);
            z = next;
        }
        assertThat(z).isCloseTo(bottom, within(tolerance));
        double beforeLast = word(arcs.get(arcs.size() - 2), 5) * unit;
        assertThat(beforeLast).as("a flat turn at the end").isCloseTo(bottom, within(tolerance));
        CanonicalCall back = feeds.get(feeds.size() - 1);
        assertThat(word(back, 0) * unit).isBetween(x - tolerance, x + radius);
        assertThat(word(back, 2) * unit).isCloseTo(bottom, within(tolerance));
    }

    private static double word(CanonicalCall call, int index) {
        return Double.parseDouble(call.words().get(index));
    }
}
