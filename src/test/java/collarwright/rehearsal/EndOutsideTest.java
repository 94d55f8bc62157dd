package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndHole;
import collarwright.machining.EndJob;
import collarwright.machining.EndSamples;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.ProgramUnits;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.CanonicalMove.Spindle;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Programs for the ends of struts through rs274, the stand-alone interpreter of linuxcnc-uspace (Debian). */
@NeedsChecker(Checker.RS274)
class EndOutsideTest {

    private static final Rs274 CONTROL = new Rs274(List.of());

    @Test
    void drawnPrograms_makeThePlannedHoles() {
        Seeds.each(12, draw -> {
            List<EndStops> struts = new ArrayList<>();
            BedSettings[] used = new BedSettings[1];
            EndRehearsalTest.drawn(draw, struts, used).programs().stream()
                    .limit(4)
                    .forEach(p -> prove(p, used[0]));
        });
    }

    private static void prove(BenchProgram<EndTask> file, BedSettings settings) {
        boolean inch = settings.cuts().units() == ProgramUnits.INCH;
        double tolerance = inch ? 0.0001 * 25.4 : 0.001;
        List<CanonicalMove> bottoms = new ArrayList<>();
        for (CanonicalMove move : CONTROL.read(file.text()).movesOrFail()) {
            if (move.kind() == Kind.FEED) {
                bottoms.removeIf(m -> m.x() == move.x());
                bottoms.add(move);
            }
        }
        List<EndHole> planned = file.task().holes();
        assertThat(bottoms).as(file.text()).hasSameSizeAs(planned);
        for (int i = 0; i < planned.size(); i++) {
            CanonicalMove hole = bottoms.get(i);
            assertThat(hole.inch()).isEqualTo(inch);
            assertThat(hole.x() * hole.unitMm()).isCloseTo(planned.get(i).x(), within(tolerance));
            assertThat(hole.y()).isZero();
            assertThat(hole.z() * hole.unitMm()).isCloseTo(planned.get(i).bottom() + file.lift(), within(tolerance));
            assertThat(hole.state().spindle()).isEqualTo(Spindle.CLOCKWISE);
            assertThat(hole.state().spindleRpm()).isEqualTo(file.task().cut().rpm());
        }
    }

    @Test
    void plainAndCycles_areTheSameMoves() {
        List<List<String>> both = new ArrayList<>();
        for (boolean cycles : new boolean[] {false, true}) {
            BedSettings settings = EndSamples.settings(EndSamples.bed(cycles, false), ProgramUnits.MM);
            List<String> places = new ArrayList<>();
            BenchProgram<EndTask> file = EndJob.plan(settings, List.of(EndSamples.twisted()))
                    .programs()
                    .get(0);
            for (CanonicalMove m : CONTROL.read(file.text()).movesOrFail()) {
                String place = m.x() + " " + m.z();
                if (places.isEmpty() || !places.get(places.size() - 1).endsWith(" to " + place)) {
                    places.add(m.kind() + " to " + place);
                }
            }
            both.add(places);
        }
        assertThat(both.get(1)).isEqualTo(both.get(0)).hasSizeGreaterThan(40);
    }
}
