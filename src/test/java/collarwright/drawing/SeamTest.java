package collarwright.drawing;

import static collarwright.drawing.ExampleCollars.hole;
import static collarwright.drawing.ExampleCollars.pattern;
import static collarwright.drawing.ExampleCollars.saw;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.testing.Seeds;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeamTest {

    private static double degrees(Seam seam) {
        return StrictMath.toDegrees(seam.azimuth());
    }

    @Test
    void of_footHub_liesInTheOpenHalf() {
        Seam seam = Seam.of(pattern("CA", saw(40), 0, 60, 120, 180), 80);
        assertThat(degrees(seam)).isCloseTo(270, offset(1e-9));
    }

    @Test
    void of_evenHoles_liesBehindTheZeroLine() {
        assertThat(degrees(Seam.of(pattern("CA", saw(40), 0, 72, 144, 216, 288), 80)))
                .isCloseTo(180, offset(1e-9));
        // Two webs are as near to the back; the first one is taken.
        assertThat(degrees(Seam.of(pattern("CA", saw(40), 0, 90, 180, 270), 80)))
                .isCloseTo(135, offset(1e-9));
    }

    @Test
    void of_unequalHoles_isTheMiddleOfTheWebNotOfTheAxes() {
        Pattern pattern = new Pattern(
                "CA", 1, List.of(hole(1, 0, 0, saw(60)), hole(2, 150, 0, saw(20)), hole(3, 200, 0, saw(20))), "X");
        // asin(30/80) = 22.024°, asin(10/80) = 7.181°: the web from 207.181° to 337.976°.
        Seam seam = Seam.of(pattern, 80);
        assertThat(degrees(seam)).isCloseTo((207.181 + 337.976) / 2, offset(2e-3));
        assertThat(seam.web()).isCloseTo(80 * StrictMath.toRadians(337.976 - 207.181), offset(2e-3));
    }

    @Test
    void of_oneHole_liesBehindIt() {
        assertThat(degrees(Seam.of(pattern("CA", saw(40), 0), 80))).isCloseTo(180, offset(1e-9));
    }

    @Test
    void of_holesThatTouchAllRound_isRefused() {
        assertThatThrownBy(() -> Seam.of(pattern("CA", saw(50), 0, 60, 120, 180, 240, 300), 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("CA");
    }

    @Test
    void of_anyPattern_cutsNoHoleAndNotTheZeroLine() {
        Seeds.each(500, draw -> {
            double radius = draw.between(30, 120);
            int count = draw.whole(1, 6);
            List<Hole> holes = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double at = i == 0 ? 0 : (i + draw.between(-0.2, 0.2)) * 360 / count;
                holes.add(hole(i + 1, at, draw.between(-5, 5), saw(draw.between(0.1, 0.6) * 2 * radius / (count + 1))));
            }
            Seam seam = Seam.of(new Pattern("CA", 1, holes, "X"), radius);
            assertThat(seam.azimuth()).isGreaterThan(0).isLessThan(2 * StrictMath.PI);
            for (Hole hole : holes) {
                // The straight distance between two points of the girth: |2 R sin(half the turn)|.
                double chord = 2 * radius * StrictMath.abs(StrictMath.sin((seam.azimuth() - hole.azimuth()) / 2));
                assertThat(chord).isGreaterThan(hole.diameter() / 2);
            }
        });
    }
}
