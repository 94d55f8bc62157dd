package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TiltReportTest {

    // Richardson's formula over steps of a fiftieth (any text on numerical differentiation) against the one step of
    // ours.
    @Test
    void slopes_areThoseOfTheLimit() {
        Seeds.each(200, seeds -> {
            double outer = seeds.between(40, 120);
            double wall = seeds.between(2, 10);
            double strut = seeds.between(10, outer - wall - 5);
            double hole = strut + seeds.between(0.5, 4);
            TiltReport report = report(strut, hole, outer, wall);
            double h = 0.002;
            assertThat(report.slopes().perHole() / 0.1)
                    .isCloseTo(
                            (8 * (at(strut, hole + h, outer, wall) - at(strut, hole - h, outer, wall))
                                            - (at(strut, hole + 2 * h, outer, wall)
                                                    - at(strut, hole - 2 * h, outer, wall)))
                                    / (12 * h),
                            within(5e-3));
            assertThat(report.slopes().perHole()).isPositive();
            assertThat(report.slopes().perStrut()).isNegative();
            assertThat(report.slopes().perWall()).isNegative();
        });
    }

    private static TiltReport report(double strut, double hole, double outer, double wall) {
        Bench bench = new Bench(
                new RoundAperture(hole), StrutSection.round(strut), new SwungContact.Wall(outer - wall, outer), 0);
        return TiltReport.of(bench, new Bench.Toward(0)).orElseThrow();
    }

    private static double at(double strut, double hole, double outer, double wall) {
        return RoundHole.tiltLimit(strut, hole, outer - wall, outer);
    }

    // At the edges of what is possible every figure is still a number: a strut that fills its hole, a thin wall, a hole
    // almost as wide as the bore.
    @ParameterizedTest
    @CsvSource({
        "40, 40, 80, 8",
        "40, 40.01, 80, 8",
        "40, 44, 80, 0.02",
        "0.05, 1, 80, 8",
        "100, 143.99, 80, 8",
        "1, 1.01, 0.7, 0.19"
    })
    void report_atTheEdges_isFinite(double strut, double hole, double outer, double wall) {
        TiltReport report = report(strut, hole, outer, wall);
        assertThat(report.tiltLimit()).isFinite().isNotNegative();
        assertThat(report.slopes().perHole()).isFinite().isNotNegative();
        assertThat(report.slopes().perStrut()).isFinite().isNotPositive();
        assertThat(report.slopes().perWall()).isFinite();
    }
}
