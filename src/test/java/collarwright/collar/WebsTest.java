package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WebsTest {
    // Computed by another program: pipe 51.1/57.15, holes of 50.8 mm at 58.28°: −1.2 inside, 5.5 outside.
    @ParameterizedTest
    @CsvSource({"51.1, -1.2", "57.15, 5.5"})
    void between_workedHub_canBeNegativeInsideOnly(double radius, double web) {
        assertThat(Webs.between(radius, StrictMath.toRadians(58.28), 50.8, 50.8))
                .isCloseTo(web, within(0.05));
    }

    // Each hole's edges as points on the circle of the wall; the web is the arc between the two that face each other.
    @Test
    void between_drawnHoles_isTheArcBetweenTheirEdges() {
        Seeds.each(1000, draw -> {
            double radius = draw.between(20, 200);
            double first = 2 * radius * draw.between(0.01, 0.99);
            double second = 2 * radius * draw.between(0.01, 0.99);
            double gap = draw.between(0.01, 3.1);
            // A hole's edge stands half its width beside its axis, on the circle.
            double right = StrictMath.atan2(first / 2, StrictMath.sqrt(radius * radius - first * first / 4));
            double left = StrictMath.atan2(second / 2, StrictMath.sqrt(radius * radius - second * second / 4));
            assertThat(Webs.between(radius, gap, first, second))
                    .isCloseTo(radius * (gap - left - right), within(1e-10));
            assertThat(Webs.between(radius, gap, first, second))
                    .isCloseTo(Webs.between(radius, gap, second, first), within(1e-10));
        });
    }

    @Test
    void between_hugeRadius_isTheFlatDistance() {
        assertThat(Webs.between(1e9, 100e-9, 40, 30)).isCloseTo(100 - 20 - 15, within(1e-6));
    }

    @Test
    void between_holeAsWideAsTheBore_leavesNothing() {
        assertThat(Webs.between(25, 1, 50, 10)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Webs.between(25, 1, 10, 50.1)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Webs.between(25, 1, Double.POSITIVE_INFINITY, 10)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Webs.between(0, 1, 0, 0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Webs.between(25, Double.NaN, 10, 10)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({
        "80, 0, 42, 19",
        "80, 5, 42, 14",
        "80, -5, 42, 14",
        "80, -0.0, 42, 19",
        "40, 0, 42, -1",
        "1e300, 0, 42, 5e299",
        "0, 0, 0, 0"
    })
    void toEdge_hole_isMeasuredToTheNearerEdge(double width, double height, double hole, double web) {
        assertThat(Webs.toEdge(width, height, hole)).isEqualTo(web);
    }

    // By looking: both outlines as points on the developed wall, the least distance of any two.
    @org.junit.jupiter.params.ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({
        "73.9, 1.047, 3.2, 43, 43",
        "73.9, 1.3, -12, 43, 44",
        "51.1, 1.05, 6, 27, 40",
        "73.9, 1.1, 0, 43, 44"
    })
    void between_holesAtTwoHeights_isTheShortestWay(
            double radius, double gap, double rise, double first, double second) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 720; i++) {
            for (int j = 0; j < 720; j++) {
                double[] a = outline(radius, first, 0, 0, i);
                double[] b = outline(radius, second, radius * gap, rise, j);
                least = StrictMath.min(least, StrictMath.hypot(a[0] - b[0], a[1] - b[1]));
            }
        }
        double web = Webs.between(radius, new Webs.Apart(gap, rise), first, second);
        assertThat(web).isCloseTo(least, within(2e-3)).isLessThanOrEqualTo(least + 1e-9);
    }

    private static double[] outline(double radius, double hole, double along, double rise, int step) {
        double round = StrictMath.PI * step / 360;
        double y = hole / 2 * StrictMath.sin(round);
        return new double[] {along + radius * StrictMath.asin(y / radius), rise + hole / 2 * StrictMath.cos(round)};
    }

    @Test
    void between_holesIntoEachOther_isNegative() {
        assertThat(Webs.between(50, new Webs.Apart(0.5, 4), 40, 40)).isNegative();
        assertThat(Webs.between(20, new Webs.Apart(1, 4), 40, 10)).isEqualTo(Double.NEGATIVE_INFINITY);
    }
}
