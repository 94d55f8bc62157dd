package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EngagementTest {
    // The rim as points in space, each dropped on the strut's axis; the strut's end is a point of that axis.
    private static double along(double inner, double mid, double hole, double lean, double setback, double round) {
        double y = hole / 2 * StrictMath.sin(round);
        Vec3 rim = new Vec3(StrictMath.sqrt(inner * inner - y * y), y, hole / 2 * StrictMath.cos(round));
        Vec3 axis = new Vec3(StrictMath.cos(lean), 0, -StrictMath.sin(lean));
        Vec3 node = new Vec3(mid, 0, 0).minus(axis.times(mid / StrictMath.cos(lean)));
        Vec3 end = node.plus(axis.times(setback));
        return rim.minus(end).dot(axis);
    }

    private static double searched(double inner, double mid, double hole, double lean, double setback) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 36_000; i++) {
            least = StrictMath.min(least, along(inner, mid, hole, lean, setback, StrictMath.PI * i / 36_000));
        }
        return least;
    }

    // Computed by another program, which went round the rim: d 40.2, D 41.8, Ri 75, Rm 77.5, 11.64°, without setback:
    // 72.26 at about 43° round the rim; top 72.46, side 73.77.
    @Test
    void least_workedHub_isNeitherTopNorSide() {
        double lean = StrictMath.toRadians(11.64);
        assertThat(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(lean, 0)))
                .isCloseTo(72.26, within(0.5e-2));
        assertThat(along(75, 77.5, 41.8, lean, 0, StrictMath.toRadians(43))).isCloseTo(72.26, within(0.5e-2));
        assertThat(along(75, 77.5, 41.8, lean, 0, 0)).isCloseTo(72.46, within(0.5e-2));
        assertThat(along(75, 77.5, 41.8, lean, 0, StrictMath.PI / 2)).isCloseTo(73.77, within(0.5e-2));
    }

    @Test
    void least_drawnHubs_isWhatGoingRoundTheRimFinds() {
        Seeds.each(200, draw -> {
            double inner = draw.between(20, 200);
            double mid = inner + draw.between(0.1, 15);
            double hole = 2 * inner * draw.between(0.02, 0.98);
            double lean = draw.between(0, 1.3);
            double setback = draw.between(0, inner);
            assertThat(Engagement.least(inner, mid, hole, new Engagement.Strut(lean, setback)))
                    .isCloseTo(searched(inner, mid, hole, lean, setback), within(1e-5));
        });
    }

    @Test
    void least_outwardLean_isTheSame() {
        assertThat(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(-0.2, 10)))
                .isEqualTo(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(0.2, 10)));
        assertThat(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(-0.0, 10)))
                .isCloseTo(StrictMath.sqrt(75 * 75 - 20.9 * 20.9) - 10, within(1e-12));
    }

    @Test
    void least_strutThatDoesNotReach_isNegative() {
        assertThat(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(0.2, 90)))
                .isNegative();
    }

    @ParameterizedTest
    @ValueSource(doubles = {StrictMath.PI / 4, 0.8, 1.2, 1.57})
    void least_steepStrut_isAtTheTop(double lean) {
        assertThat(Engagement.least(75, 77.5, 41.8, new Engagement.Strut(lean, 0)))
                .isCloseTo(along(75, 77.5, 41.8, lean, 0, 0), within(1e-9));
    }

    @Test
    void least_awkwardSizes_giveNoFalseAnswer() {
        assertThat(Engagement.least(75, 77.5, 151, new Engagement.Strut(0, 0))).isNaN();
        assertThat(Engagement.least(75, 77.5, 40, new Engagement.Strut(Double.NaN, 0)))
                .isNaN();
        assertThat(Engagement.least(Double.NaN, 77.5, 40, new Engagement.Strut(0.2, 0)))
                .isNaN();
        assertThat(Engagement.least(75, 77.5, 40, new Engagement.Strut(0.2, Double.POSITIVE_INFINITY)))
                .isEqualTo(Double.NEGATIVE_INFINITY);
        // A hole of no width in a wall of no thickness: the strut's end is its setback short of the wall.
        assertThat(Engagement.least(75, 75, 1e-300, new Engagement.Strut(0.2, 5)))
                .isCloseTo(75 / StrictMath.cos(0.2) - 5, within(1e-12));
    }
}
