package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArcTest {
    private static final double TINY = 1e-9;

    // Autodesk, DXF Reference, LWPOLYLINE, group 42: the bulge is the tangent of one fourth the included angle of an
    // arc
    // segment, negative if the arc goes clockwise; 0 is a straight segment, 1 a semicircle. Tangents by table.
    @ParameterizedTest
    @CsvSource({"45, .19891237", "60, .26794919", "90, .41421356", "120, .57735027", "180, 1"})
    void between_bulge_givesTheIncludedAngle(double degrees, double bulge) {
        Arc arc = Arc.between(new Point(3, 4), new Point(10, -2), bulge);
        assertThat(StrictMath.toDegrees(arc.sweep())).isCloseTo(degrees, offset(2e-6));
        assertThat(StrictMath.toDegrees(
                        Arc.between(new Point(3, 4), new Point(10, -2), -bulge).sweep()))
                .isCloseTo(-degrees, offset(2e-6));
    }

    @Test
    void between_counterClockwise_bulgesToTheRightOfItsWay() {
        Arc arc = Arc.between(new Point(0, 0), new Point(10, 0), 1);
        assertThat(arc.at(arc.start() + arc.sweep() / 2).y()).isCloseTo(-5, offset(TINY));
    }

    @Test
    void between_anyEndsAndBulge_passesThroughBothEnds() {
        Seeds.each(500, draw -> {
            Point from = new Point(draw.between(-100, 100), draw.between(-100, 100));
            Point to = new Point(draw.between(-100, 100), draw.between(-100, 100));
            double bulge = (draw.coin() ? 1 : -1) * draw.between(0.05, 5);
            Arc arc = Arc.between(from, to, bulge);
            assertThat(arc.at(arc.start()).distance(from)).isLessThan(1e-8);
            assertThat(arc.at(arc.end()).distance(to)).isLessThan(1e-8);
        });
    }

    @Test
    void bounds_anyArc_holdWhatIsWalkedAndNoMore() {
        Seeds.each(500, draw -> {
            double sweep = (draw.coin() ? 1 : -1) * draw.between(0.01, 6.2);
            Arc arc = new Arc(new Point(5, -7), draw.between(0.1, 50), draw.between(-10, 10), sweep);
            Box walked = null;
            for (int i = 0; i <= 5000; i++) {
                Point p = arc.at(arc.start() + arc.sweep() * i / 5000);
                Box at = Box.of(p, p);
                walked = walked == null ? at : walked.with(at);
            }
            assertThat(arc.bounds().grown(TINY).holds(walked)).isTrue();
            assertThat(walked.grown(1e-4).holds(arc.bounds())).isTrue();
        });
    }

    @Test
    void path_pieces_shareTheirEnds() {
        Path path = new Path(
                List.of(
                        new Vertex(new Point(0, 0), 0),
                        new Vertex(new Point(20, 0), 0.5),
                        new Vertex(new Point(20, 10), -0.2)),
                true);
        assertThat(path.pieces()).hasSize(3);
        assertThat(path.pieces().get(0)).isEqualTo(Line.of(0, 0, 20, 0));
        Arc last = (Arc) path.pieces().get(2);
        assertThat(last.at(last.end()).distance(new Point(0, 0))).isLessThan(TINY);
        assertThat(path.moved(1, 2).pieces().get(0)).isEqualTo(Line.of(1, 2, 21, 2));
    }

    @Test
    void shapes_thatAreNone_areRefused() {
        for (double bad :
                Seeds.AWKWARD.stream().filter(v -> !(v > 0) || v.isInfinite()).toList()) {
            assertThatThrownBy(() -> new Circle(new Point(0, 0), bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Arc(new Point(0, 0), bad, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        }
        for (double bad : List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)) {
            assertThatThrownBy(() -> new Point(bad, 0)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Point(0, bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Vertex(new Point(0, 0), bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Arc(new Point(0, 0), 1, bad, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Box(0, 0, bad, 1)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new Arc(new Point(0, 0), 1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Arc(new Point(0, 0), 1, 0, 7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Box(1, 0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Path.straight(List.of(new Point(0, 0)), true))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
