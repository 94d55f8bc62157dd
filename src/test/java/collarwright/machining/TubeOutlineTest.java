package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TubeOutlineTest {

    @Test
    void outline_ofASmallHoleInALargePipe_isNearlyACircle() {
        TubeOutline outline = new TubeOutline(2, 5000, 5000.001);
        for (TubeOutline.Point p : outline.path(0.25)) {
            assertThat(Math.hypot(p.x(), p.arc())).isCloseTo(0.75, within(1e-6));
        }
        assertThat(outline.tightest()).isCloseTo(1, within(1e-3));
    }

    /** By hand: p 25.4, bore 51.1, outside 57.15: asin(25.4 / 51.1) · 57.15 = 29.730 to the side, 25.4 along. */
    @Test
    void outline_atItsFourEnds_isAsLongAsDrilled_andWiderRound() {
        TubeOutline outline = new TubeOutline(50.8, 51.1, 57.15);
        assertThat(outline.inside(0, 0).x()).isCloseTo(25.4, within(1e-12));
        assertThat(outline.inside(Math.PI / 2, 0).arc()).isCloseTo(29.730, within(0.001));
        assertThat(outline.inside(Math.PI, 1).x()).isCloseTo(-24.4, within(1e-9));
        assertThat(outline.inside(-Math.PI / 2, 1).arc()).isCloseTo(-28.730, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void path_drawn_staysWithinItsChord_andCloses(long seed) {
        Seeds draw = Seeds.of(seed);
        double outer = draw.between(15, 110);
        double bore = outer * draw.between(0.8, 0.97);
        double hole = 2 * bore * draw.between(0.1, 0.9);
        TubeOutline outline = new TubeOutline(hole, bore, outer);
        double inward = outline.tightest() * draw.between(0, 0.5);
        List<TubeOutline.Point> path = outline.path(inward);
        assertThat(path.get(path.size() - 1)).isEqualTo(path.get(0));
        for (int i = 0; i < 2000; i++) {
            TubeOutline.Point on = outline.inside(2 * Math.PI * i / 2000, inward);
            double off = Double.POSITIVE_INFINITY;
            for (int k = 1; k < path.size(); k++) {
                off = Math.min(off, distance(on, path.get(k - 1), path.get(k)));
            }
            assertThat(off).as("seed " + seed).isLessThan(1.1 * TubeOutline.CHORD);
        }
    }

    private static double distance(TubeOutline.Point p, TubeOutline.Point a, TubeOutline.Point b) {
        double dx = b.x() - a.x();
        double dy = b.arc() - a.arc();
        double share = ((p.x() - a.x()) * dx + (p.arc() - a.arc()) * dy) / (dx * dx + dy * dy);
        return p.to(a.toward(b, Math.max(0, Math.min(1, share))));
    }

    @Test
    void hole_asWideAsTheBore_isRefused() {
        assertThatThrownBy(() -> new TubeOutline(100, 50, 55)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TubeOutline(10, 55, 55)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TubeOutline(Double.NaN, 50, 55)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tubeCutter_againstItself_isRefused() {
        TubeCutter.Start start = new TubeCutter.Start(1, 2, 0, 0.1);
        TubeCutter.Speed speed = new TubeCutter.Speed(1000, List.of(new TubeCutter.Speed.Own("steel", 1500)));
        TubeCutter.Limits limits = new TubeCutter.Limits(100, true, 1000);
        TubeCutter.Heights jet = new TubeCutter.Heights(3, 1);
        TubeCutter.Heights blade = new TubeCutter.Heights(3, -5);
        assertThat(speed.fastest()).isEqualTo(1500);
        assertThat(speed.of("oak")).isEqualTo(1000);
        refused(() -> new TubeCutter(CutMeans.PLASMA, 0, start, speed, jet, limits));
        refused(() -> new TubeCutter(CutMeans.PLASMA, 1, start, speed, blade, limits));
        refused(() -> new TubeCutter(CutMeans.KNIFE, 1, start, speed, blade, limits));
        refused(() -> new TubeCutter.Start(1, 0, 0, 0));
        refused(() -> new TubeCutter.Speed(0, List.of()));
        refused(() -> new TubeCutter.Speed.Own("steel", -1));
        refused(() -> new TubeCutter.Heights(1, 2));
        refused(() -> new TubeCutter.Limits(100, true, 99));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable made) {
        assertThatThrownBy(made).isInstanceOf(IllegalArgumentException.class);
    }
}
