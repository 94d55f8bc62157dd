package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class NodeOffsetTest {
    private static List<Double> radians(double... degrees) {
        return java.util.Arrays.stream(degrees)
                .map(StrictMath::toRadians)
                .boxed()
                .toList();
    }

    // Computed by another program: Rm 80 and 11.64°: 16.5 mm; the three struts of 3v spread 2.7 mm.
    @Test
    void of_workedHub_sitsBelowItsNode() {
        assertThat(NodeOffset.of(80, radians(11.64)).mean()).isCloseTo(16.5, within(0.05));
        assertThat(NodeOffset.of(80, radians(11.64)).spread()).isZero();
        NodeOffset threeFrequency = NodeOffset.of(80, radians(10.038, 11.641, 11.900));
        assertThat(threeFrequency.spread()).isCloseTo(2.7, within(0.05));
        assertThat(threeFrequency.mean()).isBetween(14.16, 16.86);
    }

    // Where the line through the middle of the hole, leaning, is nearest to the hub's axis.
    @Test
    void of_oneStrut_isWhereItsAxisMeetsTheHubs() {
        Seeds.each(500, draw -> {
            double mid = draw.between(10, 200);
            double lean = draw.between(-1.4, 1.4);
            Vec3 along = new Vec3(StrictMath.cos(lean), 0, -StrictMath.sin(lean));
            Vec3 hole = new Vec3(mid, 0, 0);
            Vec3 meeting = hole.minus(along.times(hole.x() / along.x()));
            assertThat(meeting.x()).isCloseTo(0, within(1e-12));
            assertThat(NodeOffset.of(mid, List.of(lean)).mean()).isCloseTo(meeting.z(), within(1e-9));
        });
    }

    @Test
    void of_mixedStruts_takesTheMeanAndTheSpread() {
        NodeOffset offset = NodeOffset.of(10, List.of(StrictMath.atan(0.1), StrictMath.atan(-0.3), -0.0));
        assertThat(offset.mean()).isCloseTo((1 - 3 + 0) / 3.0, within(1e-12));
        assertThat(offset.spread()).isCloseTo(4, within(1e-12));
        assertThat(NodeOffset.of(10, List.of(Double.NaN)).mean()).isNaN();
    }
}
