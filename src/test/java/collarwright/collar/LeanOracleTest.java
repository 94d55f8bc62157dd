package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.SwungContact.Wall;
import collarwright.testing.ProjectFolder;
import collarwright.units.Decimals;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Envelopes and tolerance intervals beside a search in space that knows no formula ({@link LeanSearch}); all of them are
 * written to {@code target/oracle.csv}.
 */
class LeanOracleTest {

    private static final double ALLOWED_DEGREES = 0.002;

    private final List<String> rows = new ArrayList<>();
    private double largest;

    @Test
    void limits_ofEveryKindOfHole_areWhatTheSearchFinds() throws IOException {
        envelope("round 50.8 in 77/81.5", new RoundAperture(50.8), 48.26, new Wall(77, 81.5));
        envelope("round 50.8 in 51.1/57.15", new RoundAperture(50.8), 48.26, new Wall(51.1, 57.15));
        envelope("round 27.5 in 50/53", new RoundAperture(27.5), 26.9, new Wall(50, 53));
        envelope("round 40 in 77/78", new RoundAperture(40), 30, new Wall(77, 78));
        envelope("slot 41x46 along", new Slot(41, 46, false), 40.2, new Wall(74.9, 80));
        envelope("slot 41x46 round", new Slot(41, 46, true), 40.2, new Wall(74.9, 80));
        envelope("rolled 52 in 77/81.5", new RolledFlat(52), 48.26, new Wall(77, 81.5));
        envelope("countersunk 42/44", new Countersunk(42, 44, 42), 40.2, new Wall(74.9, 80));
        envelope("countersunk 42/43/43", new Countersunk(42, 43, 43), 40.2, new Wall(74.9, 80));
        tiltedDrillings();
        intervals();
        List<String> table = new ArrayList<>(List.of("case,bearing,solver,brute force,difference"));
        table.addAll(rows);
        Files.write(ProjectFolder.target().resolve("oracle.csv"), table);
        assertThat(largest).as("largest difference, degrees").isLessThanOrEqualTo(ALLOWED_DEGREES);
        assertThat(rows).hasSizeGreaterThan(60);
    }

    private void envelope(String name, Aperture hole, double strut, Wall wall) {
        HoleContact contact = new HoleContact(hole, wall, StrutSection.round(strut), 0);
        LeanSearch search = search(hole, strut, wall);
        for (double bearing = 0; bearing <= 180; bearing += 30) {
            double at = StrictMath.toRadians(bearing);
            double solver = contact.toward(at).orElseThrow().most();
            add(name, bearing, solver, search.limit(at, 0, 1.2));
        }
    }

    private static LeanSearch search(Aperture hole, double strut, Wall wall) {
        List<double[][]> edges;
        if (hole instanceof Slot slot) {
            edges = TriedHoles.slot(slot.width(), slot.length(), slot.around(), wall.inner(), wall.outer());
        } else if (hole instanceof RolledFlat flat) {
            edges = TriedHoles.rolled(flat.diameter(), wall.inner(), wall.outer());
        } else if (hole instanceof Countersunk sunk) {
            edges = TriedHoles.countersunk(sunk.diameter(), sunk.outside(), sunk.inside(), wall.inner(), wall.outer());
        } else if (hole instanceof TiltedDrilling tilted) {
            Direction drill = tilted.drill();
            edges = TriedHoles.tilted(tilted.diameter(), drill.tilt(), drill.swing(), wall.inner(), wall.outer());
        } else {
            edges = TriedHoles.round(hole.size(), wall.inner(), wall.outer());
        }
        return new LeanSearch(edges, strut, wall.middle(), hole.size() / 4);
    }

    private void tiltedDrillings() {
        Wall wall = new Wall(74.9, 80);
        for (double[] drill : new double[][] {{11.64, 0}, {8, 5}, {0, 6}, {-10, 0}}) {
            Direction axis = new Direction(StrictMath.toRadians(drill[0]), StrictMath.toRadians(drill[1]));
            TiltedDrilling hole = new TiltedDrilling(41, axis);
            HoleContact contact = new HoleContact(hole, wall, StrutSection.round(40.2), 0);
            double bearing = axis.bearing();
            double solver = contact.toward(bearing).orElseThrow().most();
            double found = search(hole, 40.2, wall).limit(bearing, axis.lean(), 1.2);
            add("drilled at " + drill[0] + "/" + drill[1], StrictMath.toDegrees(bearing), solver, found);
        }
    }

    // Strut 40.05 within 0.15, hole 42 within 0.1, wall 6.4 within 0.2: the worst cases either way.
    private void intervals() {
        for (double bearing : new double[] {0, 20, 90}) {
            for (int sign : new int[] {-1, 1}) {
                double strut = 40.05 - sign * 0.15;
                Aperture hole = new RoundAperture(42 + sign * 0.1);
                Wall wall = new Wall(80.05 - 6.4 + sign * 0.2, 80.05);
                double at = StrictMath.toRadians(bearing);
                double solver = new HoleContact(hole, wall, StrutSection.round(strut), 0)
                        .toward(at)
                        .orElseThrow()
                        .most();
                add(
                        sign < 0 ? "interval, least" : "interval, most",
                        bearing,
                        solver,
                        search(hole, strut, wall).limit(at, 0, 1.2));
            }
        }
    }

    private void add(String name, double bearingDegrees, double solver, double found) {
        double difference = StrictMath.toDegrees(solver - found);
        largest = StrictMath.max(largest, StrictMath.abs(difference));
        rows.add(name + "," + Decimals.fixed(bearingDegrees, 2) + "," + Decimals.fixed(StrictMath.toDegrees(solver), 5)
                + "," + Decimals.fixed(StrictMath.toDegrees(found), 5) + "," + Decimals.fixed(difference, 5));
    }
}
