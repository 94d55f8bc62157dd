package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.Machine;
import collarwright.machining.ProgramFile;
import collarwright.testing.Checker;
import collarwright.testing.GcodeEnds;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Plain programs through a general parser from outside, npm's gcode-toolpath: every move ends where ours does. Programs with
 * drilling cycles are not for it.
 */
@NeedsChecker(Checker.GCODE_JS)
class SecondReaderTest {

    @Test
    void everyPlainProgram_endsItsMovesWhereOursDoes() {
        List<Machine> machines = ProfileJobs.machines().stream()
                .filter(m -> !m.post().cycles() && !m.rotary().form().byHand())
                .toList();
        assertThat(machines).isNotEmpty();
        int[] moves = new int[1];
        Seeds.each(6, draw -> {
            ProfileJobs job = ProfileJobs.draw(draw, draw.oneOf(machines));
            job.programs().stream().limit(4).forEach(f -> moves[0] += agreed(f));
        });
        if (Long.getLong("seed") == null) {
            assertThat(moves[0]).isGreaterThan(1000);
        }
    }

    private static int agreed(ProgramFile file) {
        List<GcodeEnds.End> theirs = GcodeEnds.read(file.text());
        List<Event.Stroke> ours = strokes(file.text());
        assertThat(theirs).as(file.name()).hasSameSizeAs(ours);
        for (int i = 0; i < ours.size(); i++) {
            Event.Stroke stroke = ours.get(i);
            GcodeEnds.End end = theirs.get(i);
            String place = file.name() + ":" + stroke.line();
            assertThat(end.motion()).as(place).isEqualTo(stroke.feed() ? "G1" : "G0");
            assertThat(end.x()).as(place).isCloseTo(stated(stroke.to().x()), within(1e-6));
            assertThat(end.y()).as(place).isCloseTo(stated(stroke.to().y()), within(1e-6));
            assertThat(end.z()).as(place).isCloseTo(stated(stroke.to().z()), within(1e-6));
            assertThat(end.a()).as(place).isCloseTo(stated(stroke.to().a()), within(1e-6));
        }
        return ours.size();
    }

    private static List<Event.Stroke> strokes(String text) {
        List<Event.Stroke> strokes = new ArrayList<>();
        for (Event event :
                Interpreter.run(BlockReader.read(text).blocks(), Pose.UNKNOWN).events()) {
            if (event instanceof Event.Stroke s) {
                strokes.add(s);
            }
        }
        return strokes;
    }

    /** They start at 0 in every axis, ours nowhere. */
    private static double stated(double position) {
        return Double.isNaN(position) ? 0 : position;
    }
}
