package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.Operation;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.machining.TubeCutter;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Programs for tube cutters through rs274, the stand-alone interpreter of linuxcnc-uspace (Debian), which knows nothing of
 * us. Its moves end where the text says, within 0.001 mm and 0.001° (0.0001 in: it prints four decimals). What its tracks cut
 * is laid out by the JTS Topology Suite (Locationtech, 1.20, {@code buffer}, {@code covers}): track and half a kerf on either
 * side. The crossings of a round cylinder with cylinders about the pipe's axis are from x² + y² = p² and y² + z² = r².
 */
@Tag("oracle")
@NeedsChecker(Checker.RS274)
class TubeOutsideTest {

    private static final Rs274 CONTROL = new Rs274(List.of());
    private static final GeometryFactory FACTORY = new GeometryFactory();

    @ParameterizedTest
    @CsvSource({"plasma, false", "plasma, true", "laser, false", "knife, true"})
    void holes_byTheOutsideInterpreter_letTheirCylinderPass(String means, boolean inch) {
        TubeCutter tube = means.equals("laser")
                ? TubeSamples.laser()
                : means.equals("knife")
                        ? TubeSamples.knife()
                        : TubeSamples.plain().tube().orElseThrow();
        RotarySettings settings = TubeSamples.settings(TubeSamples.with(TubeSamples.plain(), tube), inch);
        ProgramFile file = TubeSamples.cut(TubeSamples.plan(settings));
        List<CanonicalMove> moves = CONTROL.read(file.text()).movesOrFail();
        ends(moves, file.text(), inch);
        List<List<CanonicalMove>> tracks = tracks(moves);
        List<Operation.Contour> holes = file.task().orElseThrow().operations().stream()
                .filter(Operation.Contour.class::isInstance)
                .map(Operation.Contour.class::cast)
                .toList();
        assertThat(tracks).hasSize(holes.size()).hasSize(11);
        for (int i = 0; i < holes.size(); i++) {
            hole(tracks.get(i), holes.get(i), settings);
        }
    }

    /** Every word of X and A beside the end of the move that it makes. */
    private static void ends(List<CanonicalMove> moves, String text, boolean inch) {
        List<MatchResult> words = Pattern.compile("(?m)^G1 X(-?[0-9.]+) A(-?[0-9.]+) F")
                .matcher(text)
                .results()
                .toList();
        List<CanonicalMove> sweeps = sweeps(moves);
        assertThat(sweeps).hasSameSizeAs(words).hasSizeGreaterThan(300);
        for (int i = 0; i < words.size(); i++) {
            double x = Double.parseDouble(words.get(i).group(1));
            double a = Double.parseDouble(words.get(i).group(2));
            assertThat(sweeps.get(i).x()).isCloseTo(x, within(inch ? 0.0001 : 0.001));
            assertThat(sweeps.get(i).a()).isCloseTo(a, within(0.001));
            assertThat(sweeps.get(i).state().spindle()).isEqualTo(CanonicalMove.Spindle.CLOCKWISE);
        }
    }

    private static List<CanonicalMove> sweeps(List<CanonicalMove> moves) {
        List<CanonicalMove> sweeps = new ArrayList<>();
        for (int i = 1; i < moves.size(); i++) {
            CanonicalMove m = moves.get(i);
            boolean lowered = m.z() != moves.get(i - 1).z();
            if (m.kind() == Kind.FEED && !lowered) {
                sweeps.add(m);
            }
        }
        return sweeps;
    }

    /** The moves of each outline, lead-in left out; a cut all round moves along no X. */
    private static List<List<CanonicalMove>> tracks(List<CanonicalMove> moves) {
        List<CanonicalMove> sweeps = sweeps(moves);
        List<List<CanonicalMove>> tracks = new ArrayList<>();
        int at = -2;
        for (CanonicalMove sweep : sweeps) {
            int index = moves.indexOf(sweep);
            if (index != at + 1) {
                tracks.add(new ArrayList<>());
            }
            tracks.get(tracks.size() - 1).add(sweep);
            at = index;
        }
        return tracks.stream().filter(t -> t.size() > 3).toList();
    }

    private static void hole(List<CanonicalMove> track, Operation.Contour hole, RotarySettings settings) {
        double outer = settings.work().body().outerRadius();
        double bore = outer - settings.work().body().wall().max();
        double kerf = settings.machine().tube().orElseThrow().kerf();
        double unit = settings.units().millimetres();
        List<Coordinate> ring = new ArrayList<>();
        for (CanonicalMove m : track) {
            double arc = Math.toRadians(m.a() - hole.place().angleDegrees()) * outer;
            Coordinate corner = new Coordinate(m.x() * unit - hole.place().x(), arc);
            ring.add(corner);
            if (ring.size() > 4 && corner.distance(ring.get(0)) < 0.006) {
                break;
            }
        }
        ring.set(ring.size() - 1, ring.get(0).copy());
        Geometry cut =
                FACTORY.createPolygon(ring.toArray(Coordinate[]::new)).buffer(kerf / 2, 64, BufferParameters.CAP_ROUND);
        for (int layer = 0; layer <= 4; layer++) {
            Geometry crossing = crossing(hole.diameter(), bore + (outer - bore) * layer / 4, outer);
            assertThat(cut.buffer(0.001).covers(crossing)).as("radius " + layer).isTrue();
        }
        assertThat(crossing(hole.diameter(), bore, outer).buffer(0.05).covers(cut))
                .as("no more than 0.05 mm wider inside")
                .isTrue();
    }

    /** Where a cylinder of diameter d crosses the radius r, seen from the axis on the unrolled outside. */
    private static Geometry crossing(double d, double r, double outer) {
        Coordinate[] ring = new Coordinate[361];
        for (int i = 0; i < 360; i++) {
            double x = d / 2 * Math.cos(Math.toRadians(i));
            double y = Math.copySign(Math.sqrt(d * d / 4 - x * x), 180.5 - i);
            double z = Math.sqrt(r * r - y * y);
            ring[i] = new Coordinate(x, Math.acos(z / r) * Math.signum(y) * outer);
        }
        ring[360] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }
}
