package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.geometry.Interval;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleDepthTest {

    private static Workpiece pipe(double od, double wall) {
        return new Workpiece("pipe", new CollarBody(od / 2, Interval.of(wall), 60), 0, true, List.of());
    }

    private static Cutter cutter(double size, double lead, double depth) {
        return new Cutter(
                "C-" + size,
                CutterKind.HOLE_SAW,
                size + " mm",
                size,
                Interval.of(size),
                false,
                lead,
                depth,
                1,
                9999,
                "r");
    }

    // Depth below the crown where the full diameter is through: plane geometry of two crossing cylinders, worked by
    // hand:
    // R 57.15 - sqrt(51.13^2 - 30^2) = 57.15 - 41.40 = 15.75; R 30.15 - sqrt(26.24^2 - 14.5^2) = 30.15 - 21.87 = 8.28.
    @ParameterizedTest
    @CsvSource({"114.3, 6.02, 60, 15.75", "60.3, 3.91, 29, 8.28"})
    void breakThrough_isBelowTheCrown(double od, double wall, double hole, double below) {
        double overtravel = 1;
        HoleDepth depth = HoleDepth.of(pipe(od, wall), cutter(hole, 0, 99), overtravel);

        assertThat(od / 2 - depth.edge() - overtravel).isCloseTo(below, within(0.005));
        assertThat(depth.cut()).isCloseTo(below + overtravel, within(0.005));
    }

    /** Another method: the lowest point of the wall under the cutter's edge, found by walking round the edge. */
    @Test
    void breakThrough_isWhereTheLastPointOfTheEdgeLeavesTheWall() {
        Seeds.each(300, draw -> {
            double od = draw.between(20, 300);
            double wall = draw.between(0.02, 0.3) * od / 2;
            double hole = draw.between(0.05, 0.97) * (od - 2 * wall);
            double inner = od / 2 - wall;
            double lowest = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 40_000; i++) {
                double y = hole / 2 * Math.sin(Math.PI * i / 40_000);
                lowest = Math.min(lowest, Math.sqrt(inner * inner - y * y));
            }
            HoleDepth depth = HoleDepth.of(pipe(od, wall), cutter(hole, 3, 999), 1);

            assertThat(depth.edge()).isCloseTo(lowest - 1, within(1e-6));
            assertThat(depth.bottom()).isCloseTo(lowest - 4, within(1e-6));
        });
    }

    // Point length is (D / 2) / tan(A / 2). Worked example: No. 37 drill, 0.104 in, 118 degrees: 0.031 in.
    // Hobbyist machinists' forum, thread on drill point length; 0.3005 D for 118 degrees is common practice, no source.
    @Test
    void markTool_point_hasThePublishedLength() {
        Cutter mark = MarkTool.standard().cutter();

        assertThat(mark.lead() / mark.size() * 0.104).isCloseTo(0.031, within(0.0005));
        assertThat(mark.lead() / mark.size()).isCloseTo(0.3005, within(0.0005));
    }

    @Test
    void check_cutterThatFits_findsNothing() {
        assertThat(HoleDepth.check(pipe(114.3, 6.02), cutter(60, 12, 38), 1)).isEmpty();
    }

    @Test
    void check_holeAsWideAsTheBore_isTooWide() {
        Workpiece pipe = pipe(60, 5);

        assertThat(HoleDepth.check(pipe, cutter(50, 0, 99), 1))
                .singleElement()
                .extracting(Finding::code, Finding::expected, Finding::found)
                .containsExactly(
                        Code.HOLE_TOO_WIDE,
                        "a hole narrower than the pipe's bore, 50.00 mm (1.969 in)",
                        "50.00 mm (1.969 in)");
        assertThatThrownBy(() -> HoleDepth.of(pipe, cutter(50, 0, 99), 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void check_shallowCup_isTooShort() {
        assertThat(HoleDepth.check(pipe(114.3, 6.02), cutter(60, 5, 16), 1))
                .singleElement()
                .extracting(Finding::code, Finding::expected, Finding::found)
                .containsExactly(
                        Code.CUTTER_REACH,
                        "a cutting depth of 16.75 mm (0.659 in) or more, from the crown to where the full diameter is"
                                + " through",
                        "16.00 mm (0.630 in)");
    }

    @Test
    void check_pilotThatReachesTheFarWall_isStopped() {
        // Bore 50: the edge ends at sqrt(625 - 225) - 1 = 19, the pilot of 44 at -25: beyond sqrt(625 - 16) = 24.68.
        assertThat(HoleDepth.check(pipe(60, 5), cutter(30, 44, 99), 1))
                .singleElement()
                .extracting(Finding::code, Finding::found)
                .containsExactly(Code.FAR_WALL, "it would reach 0.32 mm (0.013 in) into it");
        assertThat(HoleDepth.check(pipe(60, 5), cutter(30, 43.6, 99), 1)).isEmpty();
    }

    // Bore 50 with a hole of 30: through at sqrt(625 - 225) = 20; where the pipe is low by 2: sqrt(23^2 - 225) =
    // 17.436.
    @Test
    void lowPlaces_outOfRoundBeyondTheOvertravel_isAWarning() {
        Workpiece oval = new Workpiece("pipe", pipe(60, 5).body(), 4, true, List.of());

        assertThat(HoleDepth.lowPlaces(oval, cutter(30, 0, 99), 1))
                .hasValueSatisfying(f -> assertThat(f.expected())
                        .startsWith("an overtravel of 2.56 mm (0.101 in) or more")
                        .endsWith("out of round by 4.00 mm (0.157 in)"));
        assertThat(HoleDepth.lowPlaces(oval, cutter(30, 0, 99), 2.57)).isEmpty();
        assertThat(HoleDepth.lowPlaces(pipe(60, 5), cutter(30, 0, 99), 0.01)).isEmpty();
    }

    @Test
    void check_holeAlmostAsWideAsTheBore_meetsTheFarWallWithItsEdge() {
        // At the sides both walls are only 2 * sqrt(625 - 24.99^2) = 1.4 apart: an overtravel of 1.5 is too much.
        assertThat(HoleDepth.check(pipe(60, 5), cutter(49.98, 0, 99), 1.5))
                .extracting(Finding::code)
                .containsExactly(Code.FAR_WALL);
    }
}
