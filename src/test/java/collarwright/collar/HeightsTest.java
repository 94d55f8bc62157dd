package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HeightsTest {
    private static final List<Double> TILTS =
            List.of(StrictMath.toRadians(10.038), StrictMath.toRadians(11.641), StrictMath.toRadians(11.900));

    @Test
    void midplane_anyTilts_isZero() {
        assertThat(Heights.MIDPLANE.of(80, TILTS)).containsExactly(0.0, 0.0, 0.0);
    }

    // A strut through its hole rises to Rm·tan θ above it at the hub's axis: all meet in one point, and the outermost
    // holes are as far above the mid-plane as below. Rm 80: 14.16 and 16.86 mm, half of the difference is 1.35 mm.
    @Test
    void converging_hub_allStrutsMeetInOnePoint() {
        List<Double> heights = Heights.CONVERGING.of(80, TILTS);
        NodeOffset offset = NodeOffset.of(80, TILTS, heights);
        assertThat(offset.spread()).isCloseTo(0, within(1e-12));
        assertThat(heights.get(0)).isCloseTo(1.35, within(5e-3));
        assertThat(heights.get(2)).isCloseTo(-1.35, within(5e-3));
        assertThat(NodeOffset.of(80, TILTS).spread()).isCloseTo(2.70, within(5e-3));
    }

    @Test
    void converging_equalTilts_staysOnTheMidPlane() {
        assertThat(Heights.CONVERGING.of(80, List.of(0.2, 0.2, 0.2))).allMatch(h -> StrictMath.abs(h) < 1e-12);
    }
}
