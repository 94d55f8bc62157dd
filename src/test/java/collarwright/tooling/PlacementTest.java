package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlacementTest {

    private static final double TURN = 2 * StrictMath.PI;

    @Test
    void onPattern_turnedOverTwice_isItself() {
        Seeds.each(500, draw -> {
            Placement flipped = new Placement(0, draw.between(0, TURN), true, List.of(0));
            double azimuth = draw.between(0, TURN);
            double twice = flipped.onPattern(flipped.onPattern(azimuth));
            assertThat(StrictMath.IEEEremainder(twice - azimuth, TURN)).isCloseTo(0, within(1e-12));
            assertThat(flipped.outward(flipped.outward(azimuth))).isEqualTo(azimuth);
            assertThat(flipped.clockwise(flipped.clockwise(azimuth))).isEqualTo(azimuth);
            assertThat(StrictMath.IEEEremainder(flipped.fromOutside(flipped.fromOutside(azimuth)) - azimuth, TURN))
                    .isCloseTo(0, within(1e-12));
        });
    }

    @Test
    void onPattern_anyAzimuth_liesWithinOneTurn() {
        Seeds.each(500, draw -> {
            Placement placement = new Placement(0, draw.between(0, TURN), draw.whole(0, 1) == 1, List.of(0));
            for (double azimuth :
                    new double[] {draw.between(0, TURN), 0, placement.turn(), StrictMath.nextDown(TURN)}) {
                assertThat(placement.onPattern(azimuth))
                        .isGreaterThanOrEqualTo(0)
                        .isLessThan(TURN);
            }
        });
    }

    @Test
    void outward_midPlaneUpsideDown_isPlainZero() {
        Placement flipped = new Placement(0, 0, true, List.of(0));
        assertThat(Double.doubleToRawLongBits(flipped.outward(0.0))).isZero();
        assertThat(Double.doubleToRawLongBits(flipped.fromOutside(0.0))).isZero();
        assertThat(Double.doubleToRawLongBits(flipped.onPattern(0.0))).isZero();
    }
}
