package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.machining.RotarySamples;
import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlatStripTest {

    private static final CollarBody BODY = new CollarBody(55, Interval.of(3), 50);
    private static final StripJoint BUTT = new StripJoint(StripJoint.Kind.BUTT, 0);

    private static Pattern pattern() {
        return RotarySamples.pattern("CA", RotarySamples.twist(22), 0, 60, 150, 240);
    }

    @Test
    void length_isTheGirthOfTheWallsMiddle_withTheJoint() {
        // 107 π = 336.150414 by hand.
        assertThat(FlatStrip.of(pattern(), 4, BODY, BUTT).length()).isCloseTo(336.150414, within(1e-6));
        StripJoint lap = new StripJoint(StripJoint.Kind.LAP, 12);
        assertThat(FlatStrip.of(pattern(), 4, BODY, lap).length()).isCloseTo(348.150414, within(1e-6));
        StripJoint gap = new StripJoint(StripJoint.Kind.GAP, 2);
        assertThat(FlatStrip.of(pattern(), 4, BODY, gap).length()).isCloseTo(334.150414, within(1e-6));
    }

    @Test
    void ends_meetInTheWidestWeb() {
        // From 240° back to 0°: 120° is the widest gap, its middle 300°.
        FlatStrip strip = FlatStrip.of(pattern(), 4, BODY, BUTT);
        assertThat(StrictMath.toDegrees(strip.seam())).isCloseTo(300, within(1e-9));
        // A sixth of the girth less the hole's radius.
        assertThat(strip.endWeb()).isCloseTo(336.150414 / 6 - 11.025, within(1e-6));
        assertThat(FlatStrip.of(pattern(), 4, BODY, new StripJoint(StripJoint.Kind.LAP, 12))
                        .endWeb())
                .isCloseTo(336.150414 / 6 - 11.025 - 6, within(1e-6));
    }

    /** Rolled back up in space, every hole stands at its azimuth, clockwise from above with TOP up. */
    @Test
    void rolledUp_everyHoleIsAtItsAzimuth() {
        Seeds.each(200, draw -> {
            double first = draw.between(20, 70);
            double second = first + draw.between(40, 100);
            Pattern drawn = RotarySamples.pattern("CA", RotarySamples.twist(10), 0, first, second, second + 60);
            StripJoint joint = draw.coin()
                    ? BUTT
                    : new StripJoint(draw.coin() ? StripJoint.Kind.LAP : StripJoint.Kind.GAP, draw.between(0.5, 8));
            FlatStrip strip = FlatStrip.of(drawn, 1, BODY, joint);
            double zero = strip.holes().get(0).x();
            for (FlatStrip.FlatHole hole : strip.holes()) {
                assertThat(hole.x()).isBetween(0.0, strip.length());
                assertThat(hole.y()).isEqualTo(25);
                // To the right on the outer face, TOP up, is counter-clockwise from above.
                double clockwise = (zero - hole.x()) / 53.5;
                double off = clockwise - hole.hole().azimuth();
                assertThat(StrictMath.sin(off / 2)).isCloseTo(0, within(1e-9));
                assertThat(strip.at(hole.hole().azimuth())).isCloseTo(hole.x(), within(1e-9));
            }
        });
    }

    @Test
    void jointsThatCannotBe_areRefused() {
        assertThatThrownBy(() -> new StripJoint(StripJoint.Kind.BUTT, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StripJoint(StripJoint.Kind.LAP, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FlatStrip("CA", 0, BODY, BUTT, 0, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
