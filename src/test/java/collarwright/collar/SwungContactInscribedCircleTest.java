package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.SwungContact.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Limits in any direction beside a general geometry library (JTS Topology Suite): the circle of the strut fits into what
 * the two rims leave open a thousandth of a degree below the limit, and no longer a thousandth above.
 */
class SwungContactInscribedCircleTest {

    private static final int POINTS = 6000;

    @ParameterizedTest
    @CsvSource({
        "48.26, 50.8, 77, 81.5, 0",
        "48.26, 50.8, 77, 81.5, 25",
        "48.26, 50.8, 77, 81.5, 60",
        "48.26, 50.8, 77, 81.5, 90",
        "48.26, 50.8, 51.1, 57.15, 10",
        "48.26, 50.8, 51.1, 57.15, 45",
        "48.26, 50.8, 51.1, 57.15, 80",
        "26.9, 27.5, 50, 53, 35",
        "26.9, 27.5, 50, 53, 90",
        "40.2, 41.8, 75, 80, 15",
        "40.2, 41.8, 75, 80, 70",
        "20, 20.2, 50, 52, 50",
        "40, 46, 50, 51, 55",
        "60, 66, 77, 84, 40"
    })
    void tiltLimit_anyBearing_isWhereTheCircleNoLongerFits(
            double strut, double hole, double inner, double outer, double bearingDegrees) {
        double bearing = StrictMath.toRadians(bearingDegrees);
        double limit = SwungContact.tiltLimit(strut, hole, new Wall(inner, outer), bearing);
        double step = StrictMath.toRadians(0.001);
        double[] sizes = {hole, inner, outer};
        assertThat(open(sizes, limit - step, bearing)).isGreaterThan(strut / 2);
        assertThat(open(sizes, limit + step, bearing)).isLessThan(strut / 2);
    }

    private static double open(double[] sizes, double lean, double bearing) {
        Geometry both = rim(sizes[0], sizes[1], lean, bearing).intersection(rim(sizes[0], sizes[2], lean, bearing));
        return new MaximumInscribedCircle(both, 4e-6).getRadiusLine().getLength();
    }

    // In the hole's frame turned about the radial line, so that the lean is in the plane of the first axis.
    private static Polygon rim(double hole, double layer, double lean, double bearing) {
        Coordinate[] ring = new Coordinate[POINTS + 1];
        for (int i = 0; i < POINTS; i++) {
            double angle = 2 * StrictMath.PI * i / POINTS;
            double y = hole / 2 * StrictMath.sin(angle);
            double z = hole / 2 * StrictMath.cos(angle);
            double x = StrictMath.sqrt(layer * layer - y * y);
            double with = y * StrictMath.sin(bearing) - z * StrictMath.cos(bearing);
            double across = y * StrictMath.cos(bearing) + z * StrictMath.sin(bearing);
            ring[i] = new Coordinate(across, with * StrictMath.cos(lean) - x * StrictMath.sin(lean));
        }
        ring[POINTS] = ring[0].copy();
        return new GeometryFactory().createPolygon(ring);
    }
}
