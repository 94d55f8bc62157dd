package collarwright.strut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetbacksTest {
    /** A strut from its node outward, at an azimuth on a hub whose axis is +z. */
    private static Vec3 direction(double axialAngle, double azimuth) {
        double level = StrictMath.cos(axialAngle);
        return new Vec3(level * StrictMath.cos(azimuth), level * StrictMath.sin(azimuth), -StrictMath.sin(axialAngle));
    }

    // By hand: (45 + 2 + 20.1·sin 11.64°)/cos 11.64° = (47 + 4.0555)/0.97943.
    @Test
    void clearOfRing_workedHub_isTheHandFigure() {
        assertThat(Setbacks.clearOfRing(45, 2, 40.2, StrictMath.toRadians(11.64)))
                .isCloseTo(52.13, within(0.5e-2));
        assertThat(Setbacks.clearOfRing(45, 2, 40.2, StrictMath.toRadians(-11.64)))
                .isCloseTo(52.13, within(0.5e-2));
        assertThat(Setbacks.clearOfRing(45, 2, 40.2, 0)).isEqualTo(47);
        assertThat(Setbacks.clearOfRing(0, 0, 40.2, -0.0)).isZero();
    }

    // The end face as points in space: the one nearest to the hub's axis stands off by ring and gap.
    @Test
    void clearOfRing_drawnStruts_keepTheGap() {
        Seeds.each(200, draw -> {
            double ring = draw.between(5, 100);
            double gap = draw.between(0, 10);
            double strut = draw.between(5, 60);
            double lean = draw.between(-1, 1);
            Vec3 axis = direction(lean, 0);
            Vec3 centre = axis.times(Setbacks.clearOfRing(ring, gap, strut, lean));
            Vec3 up = new Vec3(StrictMath.sin(lean), 0, StrictMath.cos(lean));
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 360; i++) {
                double round = StrictMath.toRadians(i);
                Vec3 rim = centre.plus(up.times(strut / 2 * StrictMath.cos(round)))
                        .plus(new Vec3(0, strut / 2 * StrictMath.sin(round), 0));
                // The ring's edge is level and square to this strut where they are nearest.
                nearest = StrictMath.min(nearest, rim.x());
            }
            assertThat(nearest).isCloseTo(ring + gap, within(1e-9));
        });
    }

    /**
     * How deep two ends reach into each other, by finite cylinders: the least distance of the line between the two end
     * faces' nearest edges. Points of one strut's end rim are measured against the other strut as a solid.
     */
    private static double overlap(double strut, Vec3[] first, Vec3[] second, double setback) {
        double least = Double.POSITIVE_INFINITY;
        for (int side = 0; side < 2; side++) {
            Vec3[] rimOf = side == 0 ? first : second;
            Vec3[] solid = side == 0 ? second : first;
            Vec3 any = new Vec3(0.3, 0.5, 0.8);
            Vec3 u = rimOf[1].cross(any).unit();
            Vec3 v = rimOf[1].cross(u);
            for (int i = 0; i < 7200; i++) {
                double round = 2 * StrictMath.PI * i / 7200;
                Vec3 rim = rimOf[0].plus(rimOf[1].times(setback))
                        .plus(u.times(strut / 2 * StrictMath.cos(round)))
                        .plus(v.times(strut / 2 * StrictMath.sin(round)));
                least = StrictMath.min(least, outside(rim, solid, strut, setback));
            }
        }
        return least;
    }

    // How far a point stands outside a strut that begins at its setback; negative inside.
    private static double outside(Vec3 point, Vec3[] strut, double diameter, double setback) {
        Vec3 from = point.minus(strut[0]);
        double along = from.dot(strut[1]);
        double radial = from.minus(strut[1].times(along)).norm() - diameter / 2;
        return StrictMath.max(radial, setback - along);
    }

    private static double touching(double strut, Vec3[] first, Vec3[] second) {
        double inside = 0;
        double apart = 20 * strut;
        while (apart - inside > 1e-7) {
            double setback = (inside + apart) / 2;
            if (overlap(strut, first, second, setback) < 0) {
                inside = setback;
            } else {
                apart = setback;
            }
        }
        return apart;
    }

    @Test
    void clearOfNeighbour_equalAngles_isWhereFiniteCylindersTouch() {
        Seeds.each(25, draw -> {
            double strut = draw.between(10, 60);
            double lean = draw.between(0, 0.6);
            double gap = draw.between(0.5, 2);
            Vec3 node = new Vec3(0, 0, 0);
            double touching =
                    touching(strut, new Vec3[] {node, direction(lean, 0)}, new Vec3[] {node, direction(lean, gap)});
            assertThat(Setbacks.clearOfNeighbour(strut, lean, lean, gap)).isCloseTo(touching, within(1e-3));
        });
    }

    // The struts of one collar have their holes on one height, so that unequal ones do not meet in one node: the figure
    // is
    // then up to 0.6 mm more than is needed, never less.
    @ParameterizedTest
    @CsvSource({
        "40.2, 77.5, 10.0384, 11.6407, 55.6906",
        "40.2, 77.5, 11.6407, 11.9001, 62.1547",
        "40.2, 77.5, 15.8587, 18.0000, 58.2825",
        "48.3, 79.3, 15.8587, 18.0000, 58.2825",
        "40.2, 77.5, 7.2727, 8.4891, 54.8830",
        "40.2, 77.5, 8.4685, 9.3497, 60.8928",
        "25.0, 60.0, 8.5860, 9.0000, 63.4349"
    })
    void clearOfNeighbour_unequalAngles_isOnTheSafeSide(
            double strut, double mid, double first, double second, double gap) {
        double a = StrictMath.toRadians(first);
        double b = StrictMath.toRadians(second);
        double azimuth = StrictMath.toRadians(gap);
        Vec3[] one = {new Vec3(0, 0, mid * StrictMath.tan(a)), direction(a, 0)};
        Vec3[] other = {new Vec3(0, 0, mid * StrictMath.tan(b)), direction(b, azimuth)};
        assertThat(Setbacks.clearOfNeighbour(strut, a, b, azimuth) - touching(strut, one, other))
                .isBetween(-1e-3, 0.6);
    }

    @Test
    void clearOfNeighbour_limits_areMet() {
        // Level struts a quarter turn apart touch at half a diameter; opposite ones at none; parallel ones never part.
        assertThat(Setbacks.clearOfNeighbour(40, 0, 0, StrictMath.PI / 2)).isCloseTo(20, within(1e-12));
        assertThat(Setbacks.clearOfNeighbour(40, 0, 0, StrictMath.PI)).isCloseTo(0, within(1e-12));
        assertThat(Setbacks.clearOfNeighbour(40, 0.2, 0.2, 0)).isGreaterThan(1e8);
        assertThat(Setbacks.clearOfNeighbour(40, Double.NaN, 0.2, 1)).isNaN();
        assertThat(Setbacks.clearOfNeighbour(0, 0.1, 0.2, 1)).isZero();
    }
}
