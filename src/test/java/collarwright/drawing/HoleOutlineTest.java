package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleOutlineTest {

    // The construction is that of the books on sheet metal (A. Dickason, The Geometry of Sheet Metal Work, Pitman,
    // chapters
    // on pipes that meet at a right angle: the girth steps are the arcs on the main pipe); the digits were worked out
    // with
    // its closed form, along = r cos φ, girth = R arcsin(r sin φ / R).
    @ParameterizedTest
    @CsvSource({
        "57.15, 24.13, 0, 24.1300, 0",
        "57.15, 24.13, 15, 23.3078, 6.2578",
        "57.15, 24.13, 30, 20.8972, 12.1565",
        "57.15, 24.13, 45, 17.0625, 17.3267",
        "57.15, 24.13, 60, 12.0650, 21.3933",
        "57.15, 24.13, 75, 6.2453, 24.0077",
        "57.15, 24.13, 90, 0, 24.9114",
        "30.1625, 10.668, 45, 7.5434, 7.6243",
        "30.1625, 10.668, 90, 0, 10.9040"
    })
    void at_withoutPaper_givesTheUnrolledHole(double pipe, double hole, double degrees, double along, double girth) {
        Point p = new HoleOutline(pipe, 0, hole).at(StrictMath.toRadians(degrees));
        assertThat(p.y()).isCloseTo(along, offset(0.5e-4));
        assertThat(p.x()).isCloseTo(girth, offset(0.5e-4));
    }

    @Test
    void at_hugePipe_givesACircle() {
        HoleOutline outline = new HoleOutline(1e7, 0, 20);
        for (int degrees = 0; degrees < 360; degrees += 7) {
            Point p = outline.at(StrictMath.toRadians(degrees));
            assertThat(StrictMath.hypot(p.x(), p.y())).isCloseTo(20, offset(1e-6));
        }
    }

    @Test
    void halfWidth_holeNearlyAsWideAsThePipe_isAQuarterOfTheGirth() {
        // R arcsin 1 = π R / 2: 57.15 gives 89.7710.
        assertThat(new HoleOutline(57.15, 0, 57.15 * (1 - 1e-14)).halfWidth()).isCloseTo(89.7710, offset(1e-3));
    }

    @Test
    void corners_rolledBackOntoThePipe_lieOnTheDrilledHole() {
        Seeds.each(200, draw -> {
            double pipe = draw.between(20, 150);
            double paper = draw.between(0, 2);
            double hole = pipe * draw.between(0.05, 0.95);
            for (Point p : new HoleOutline(pipe, paper, hole).corners(0.02)) {
                // Round the pipe's axis z; the hole is drilled along x.
                double turn = p.x() / (pipe + paper / 2);
                double y = pipe * StrictMath.sin(turn);
                assertThat(StrictMath.hypot(y, p.y())).isCloseTo(hole, offset(1e-9 * pipe));
            }
        });
    }

    @Test
    void corners_anyHole_strayFromTheCurveByLessThanAsked() {
        Seeds.each(60, draw -> {
            double pipe = draw.between(20, 150);
            HoleOutline outline = new HoleOutline(pipe, 0.1, pipe * draw.between(0.05, 0.98));
            List<Point> corners = outline.corners(0.01);
            double most = 0;
            for (int i = 0; i < 3000; i++) {
                Point p = outline.at(i * 2 * StrictMath.PI / 3000);
                double nearest = Double.POSITIVE_INFINITY;
                for (int k = 0; k < corners.size(); k++) {
                    nearest =
                            StrictMath.min(nearest, toPiece(p, corners.get(k), corners.get((k + 1) % corners.size())));
                }
                most = StrictMath.max(most, nearest);
            }
            assertThat(most).isLessThanOrEqualTo(0.0101);
        });
    }

    private static double toPiece(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double share = ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / (dx * dx + dy * dy);
        double kept = StrictMath.max(0, StrictMath.min(1, share));
        return p.distance(new Point(a.x() + kept * dx, a.y() + kept * dy));
    }

    @Test
    void corners_runCounterClockwiseOnce_andTouchTheExtremes() {
        HoleOutline outline = new HoleOutline(57.15, 0.1, 25.4);
        List<Point> corners = outline.corners(0.01);
        double area = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            area += (a.x() * b.y() - b.x() * a.y()) / 2;
        }
        assertThat(area).isPositive();
        assertThat(corners).doesNotHaveDuplicates();
        assertThat(corners)
                .contains(
                        new Point(-outline.halfWidth(), 0),
                        new Point(outline.halfWidth(), 0),
                        new Point(0, 25.4),
                        new Point(0, -25.4));
        assertThat(corners.get(0)).isEqualTo(new Point(-outline.halfWidth(), 0));
    }

    @Test
    void halfWidth_thickCard_isWiderInProportion() {
        // 60 mm in a 114.3 mm pipe: 63.2 mm wide on the pipe, 63.7 mm on card of 1 mm.
        assertThat(2 * new HoleOutline(57.15, 0, 30).halfWidth()).isCloseTo(63.2, offset(0.05));
        assertThat(2 * new HoleOutline(57.15, 1, 30).halfWidth()).isCloseTo(63.7, offset(0.05));
    }

    @Test
    void halfWidthAt_anyHeight_isWhereTheOutlineIs() {
        Seeds.each(300, draw -> {
            double pipe = draw.between(20, 150);
            HoleOutline outline = new HoleOutline(pipe, 0.1, pipe * draw.between(0.1, 0.9));
            Point p = outline.at(draw.between(0, StrictMath.PI));
            assertThat(outline.halfWidthAt(p.y(), 0)).isCloseTo(p.x(), offset(1e-5));
        });
        assertThat(new HoleOutline(50, 0, 20).halfWidthAt(25, 4)).isZero();
        assertThat(new HoleOutline(50, 0, 20).halfWidthAt(0, 40)).isCloseTo(78.54, offset(0.01));
    }

    @Test
    void holds_boxes_asTheirCornersAreInside() {
        HoleOutline outline = new HoleOutline(50, 0, 20);
        assertThat(outline.holds(new Box(-10, -10, 10, 10), 1)).isTrue();
        assertThat(outline.holds(new Box(-10, -10, 10, 19), 1)).isFalse();
        assertThat(outline.holds(new Box(-1, -1, 1, 1), 20)).isFalse();
    }

    @Test
    void sizesThatCannotBe_areRefused() {
        assertThatThrownBy(() -> new HoleOutline(50, 0.1, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HoleOutline(50, 0.1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HoleOutline(50, -100, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HoleOutline(Double.NaN, 0, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HoleOutline(50, 0, 20).corners(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HoleOutline(50, 0, 20).corners(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
