package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The tilt limit beside a general geometry library (JTS Topology Suite): seen along the strut, the strut is a circle, and
 * it fits where that circle fits into what the two rims leave open.
 */
class RoundHoleInscribedCircleTest {
    private static final int STEPS = 1440;

    @ParameterizedTest
    @CsvSource({
        "48.26, 50.8, 77, 81.5",
        "48.26, 50.8, 51.1, 57.15",
        "48.26, 49.7, 77, 81.5",
        "26.9, 27.5, 50, 53",
        "40.2, 41.8, 75, 80",
        "90, 98, 50, 55"
    })
    void tiltLimit_collar_isWhereTheCircleNoLongerFits(double strut, double hole, double inner, double outer) {
        double limit = RoundHole.tiltLimit(strut, hole, inner, outer);
        double step = StrictMath.toRadians(0.02);
        assertThat(open(hole, inner, outer, limit - step)).isGreaterThan(strut / 2);
        assertThat(open(hole, inner, outer, limit + step)).isLessThan(strut / 2);
        assertThat(open(hole, inner, outer, limit)).isCloseTo(strut / 2, within(1e-3));
    }

    private static double open(double hole, double inner, double outer, double lean) {
        Geometry both = rim(hole, inner, lean).intersection(rim(hole, outer, lean));
        return new MaximumInscribedCircle(both, 1e-5).getRadiusLine().getLength();
    }

    // A rim seen along the strut: across is y, up is z·cos + x·sin of the lean.
    private static Polygon rim(double hole, double layer, double lean) {
        Coordinate[] ring = new Coordinate[STEPS + 1];
        for (int i = 0; i < STEPS; i++) {
            double angle = 2 * StrictMath.PI * i / STEPS;
            double y = hole / 2 * StrictMath.sin(angle);
            double z = hole / 2 * StrictMath.cos(angle);
            double x = StrictMath.sqrt(layer * layer - y * y);
            ring[i] = new Coordinate(y, z * StrictMath.cos(lean) + x * StrictMath.sin(lean));
        }
        ring[STEPS] = ring[0].copy();
        return new GeometryFactory().createPolygon(ring);
    }
}
