package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundHoleTest {
    /** A strut in a hole of a collar, in any proportion down to parts in a million. */
    private record Case(double strut, double hole, double inner, double outer) {
        static Case drawn(Seeds draw) {
            double inner = draw.between(5, 300);
            double outer = inner * (1 + StrictMath.pow(10, draw.between(-6, 0.3)));
            double strut = 2 * inner * StrictMath.pow(10, draw.between(-3, -1e-3));
            double part = draw.coin() ? draw.between(0, 1) : StrictMath.pow(10, draw.between(-10, 0));
            double hole = draw.whole(0, 3) == 0
                    ? 2 * inner - (2 * inner - strut) * StrictMath.pow(10, draw.between(-9, 0))
                    : strut + (2 * inner - strut) * part;
            return new Case(strut, StrictMath.max(strut, StrictMath.min(hole, Math.nextDown(2 * inner))), inner, outer);
        }

        double limit() {
            return RoundHole.tiltLimit(strut, hole, inner, outer);
        }

        double flat() {
            double wall = outer - inner;
            return StrictMath.acos(StrictMath.min(1, strut / StrictMath.hypot(hole, wall)))
                    - StrictMath.atan(wall / hole);
        }
    }

    @Test
    void tiltLimit_holeAsWideAsTheStrut_isZero() {
        assertThat(RoundHole.tiltLimit(40, 40, 50, 55)).isZero();
        assertThat(RoundHole.tiltLimit(40, 40, 20.000001, 20.1)).isZero();
    }

    @Test
    void required_noLean_isTheStrut() {
        assertThat(RoundHole.required(40, 0, 50, 55)).isEqualTo(40);
        assertThat(RoundHole.required(40, -0.0, 50, 55)).isEqualTo(40);
    }

    // A needed lean that is only the rounding error of a flat hub: the hole must be the strut, and never "none".
    @ParameterizedTest
    @ValueSource(doubles = {4.9e-324, 1e-300, 1e-17, 1e-15, 1e-13, 1e-11, 1e-9, 1e-7})
    void required_vanishingLean_isHardlyWiderThanTheStrut(double lean) {
        assertThat(RoundHole.required(40, lean, 50, 55)).isBetween(40.0, 40 + 100 * lean + 1e-13);
        assertThat(RoundHole.required(40, lean, 20.00001, 20.1)).isBetween(40.0, 40 + 100 * lean + 1e-13);
    }

    @Test
    void required_leanThatNoHoleAllows_isInfinite() {
        assertThat(RoundHole.required(40, StrictMath.toRadians(80), 22, 24)).isEqualTo(Double.POSITIVE_INFINITY);
        // The flat answer is still narrower than the bore, the curved one is not.
        double lean = RoundHole.tiltLimit(90, Math.nextDown(100.0), 50, 52);
        double flat = 90 / StrictMath.cos(lean + 1e-3) + 2 * StrictMath.tan(lean + 1e-3);
        assertThat(flat).isLessThan(100);
        assertThat(RoundHole.required(90, lean + 1e-3, 50, 52)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void tiltLimit_drawnCollars_isFlatOnTheMidPlaneAndNeverMore() {
        Seeds.each(4000, draw -> {
            Case c = Case.drawn(draw);
            double limit = c.limit();
            assertThat(limit).as("%s", c).isBetween(0.0, StrictMath.PI / 2);
            double lean = c.flat();
            boolean onMidPlane = StrictMath.cos(lean) / c.hole + StrictMath.sin(lean) / 2 / c.inner <= 1 / c.strut;
            // The flat form in arc cosines loses digits where the hole is as wide as the strut.
            double rounding = 1e-14 * (c.outer / (c.outer - c.inner) + 1 / StrictMath.max(1e-7, lean)) + 1e-12;
            if (onMidPlane) {
                assertThat(limit).as("%s", c).isCloseTo(lean, within(rounding));
            } else {
                assertThat(limit).as("%s", c).isLessThanOrEqualTo(lean + rounding);
            }
        });
    }

    @Test
    void required_ofTheLimit_isTheHole() {
        Seeds.each(4000, draw -> {
            Case c = Case.drawn(draw);
            if (c.hole < 2 * c.inner * (1 - 1e-9)) {
                assertThat(RoundHole.required(c.strut, c.limit(), c.inner, c.outer))
                        .as("%s", c)
                        .isCloseTo(c.hole, within(1e-11 * c.hole));
            }
        });
    }

    @Test
    void required_ofAVanishingLimit_isTheHole() {
        Seeds.each(2000, draw -> {
            Case c = Case.drawn(draw);
            double hole = c.strut * (1 + StrictMath.pow(10, draw.between(-13, -6)));
            if (hole < 2 * c.inner * (1 - 1e-9)) {
                double limit = RoundHole.tiltLimit(c.strut, hole, c.inner, c.outer);
                assertThat(RoundHole.required(c.strut, limit, c.inner, c.outer))
                        .as("%s", c)
                        .isCloseTo(hole, within(1e-11 * hole));
            }
        });
    }

    @Test
    void tiltLimit_ofTheRequired_isTheLean() {
        Seeds.each(4000, draw -> {
            Case c = Case.drawn(draw);
            double lean = draw.between(0.001, 1.2);
            double hole = RoundHole.required(c.strut, lean, c.inner, c.outer);
            if (hole < 2 * c.inner) {
                assertThat(RoundHole.tiltLimit(c.strut, hole, c.inner, c.outer))
                        .as("%s", c)
                        .isCloseTo(lean, within(1e-11));
            }
        });
    }

    @Test
    void required_whereTheContactIsOnTheMidPlane_isTheRodThroughABoard() {
        Seeds.each(1000, draw -> {
            double inner = draw.between(40, 100);
            double wall = draw.between(1, 8);
            double strut = draw.between(10, 30);
            double lean = draw.between(0.15, 0.5);
            double board = strut / StrictMath.cos(lean) + wall * StrictMath.tan(lean);
            double found = RoundHole.required(strut, lean, inner, inner + wall);
            if (board >= strut * StrictMath.cos(lean) * (1 + board * StrictMath.tan(lean) / (2 * inner))) {
                assertThat(found).isCloseTo(board, within(1e-12 * board));
            } else {
                assertThat(found).isGreaterThan(board);
            }
        });
    }

    @Test
    void tiltLimit_moreWall_isNeverMore() {
        Seeds.each(4000, draw -> {
            Case c = Case.drawn(draw);
            double more = (c.outer - c.inner) * StrictMath.pow(10, draw.between(-6, 0));
            assertThat(RoundHole.tiltLimit(c.strut, c.hole, c.inner, c.outer + more))
                    .as("%s", c)
                    .isLessThanOrEqualTo(c.limit() + 1e-12);
            double narrower = StrictMath.max(c.inner - more, c.hole / 2 * 1.000001);
            if (narrower < c.inner) {
                assertThat(RoundHole.tiltLimit(c.strut, c.hole, narrower, c.outer))
                        .as("%s", c)
                        .isLessThanOrEqualTo(c.limit() + 1e-12);
            }
        });
    }

    @Test
    void tiltLimit_widerHoleOrThinnerStrut_isNeverLess() {
        Seeds.each(4000, draw -> {
            Case c = Case.drawn(draw);
            double wider = c.hole + (2 * c.inner - c.hole) * draw.between(0, 0.99);
            double thinner = c.strut * draw.between(0.1, 1);
            assertThat(RoundHole.tiltLimit(c.strut, wider, c.inner, c.outer)).isGreaterThanOrEqualTo(c.limit() - 1e-12);
            assertThat(RoundHole.tiltLimit(thinner, c.hole, c.inner, c.outer))
                    .isGreaterThanOrEqualTo(c.limit() - 1e-12);
        });
    }

    @Test
    void tiltLimit_scaledCollar_isTheSame() {
        Seeds.each(1000, draw -> {
            Case c = Case.drawn(draw);
            double scale = StrictMath.pow(2, draw.whole(-200, 200));
            assertThat(RoundHole.tiltLimit(c.strut * scale, c.hole * scale, c.inner * scale, c.outer * scale))
                    .as("%s", c)
                    .isCloseTo(c.limit(), within(1e-13));
        });
    }

    static Stream<Double> awkward() {
        return Seeds.AWKWARD.stream();
    }

    @ParameterizedTest
    @MethodSource("awkward")
    void roundHole_awkwardSize_isRefusedOrAnswered(double value) {
        double[] usual = {40, 42, 50, 55};
        for (int i = 0; i < 4; i++) {
            double[] sizes = usual.clone();
            sizes[i] = value;
            boolean limitExists = sizes[0] >= 1e-100
                    && sizes[1] >= sizes[0]
                    && sizes[1] < 2 * sizes[2]
                    && sizes[3] > sizes[2]
                    && sizes[3] <= 1e100;
            if (limitExists) {
                assertThat(RoundHole.tiltLimit(sizes[0], sizes[1], sizes[2], sizes[3]))
                        .isBetween(0.0, StrictMath.PI / 2);
            } else {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> RoundHole.tiltLimit(sizes[0], sizes[1], sizes[2], sizes[3]));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("awkward")
    void required_awkwardLean_isRefusedOrAnswered(double lean) {
        if (lean >= 0 && lean < StrictMath.PI / 2) {
            assertThat(RoundHole.required(40, lean, 50, 55)).isGreaterThanOrEqualTo(40);
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> RoundHole.required(40, lean, 50, 55));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "40, 39.999, 50, 55",
        "40, 100, 50, 55",
        "40, 42, 20, 55",
        "40, 42, 50, 49",
        "1e-101, 42, 50, 55",
        "40, 42, 50, 1e101"
    })
    void tiltLimit_sizeOutOfRange_isRefused(double strut, double hole, double inner, double outer) {
        assertThatIllegalArgumentException().isThrownBy(() -> RoundHole.tiltLimit(strut, hole, inner, outer));
    }

    /** cos θ = d/D: what is left of D = d/cos θ + t·tan θ (Mathematics Central, question QQ.09.18) without a wall. */
    @Test
    void tiltLimit_noWallOnAWideCollar_isTheThinEdge() {
        Seeds.each(200, draw -> {
            double strut = draw.between(1, 100);
            double hole = strut * (1 + StrictMath.pow(10, draw.between(-9, -0.3)));
            double radius = strut * 1e9;

            double limit = RoundHole.tiltLimit(strut, hole, radius, radius);

            // arccos(d/D) loses digits near 0; its half-angle tangent does not.
            double edge = 2 * StrictMath.atan(StrictMath.sqrt((hole - strut) / (hole + strut)));
            assertThat(limit).isCloseTo(edge, within(1e-7 * edge + 1e-12));
            assertThat(RoundHole.required(strut, limit, radius, radius)).isCloseTo(hole, within(1e-9 * hole));
        });
    }

    @Test
    void tiltLimit_noWallOnANarrowCollar_isTheLimitOfThinWalls() {
        Seeds.each(200, draw -> {
            double strut = draw.between(10, 60);
            double hole = strut + draw.between(0.05, 4);
            double radius = draw.between(0.6, 3) * hole;

            double limit = RoundHole.tiltLimit(strut, hole, radius, radius);

            assertThat(limit).isCloseTo(RoundHole.tiltLimit(strut, hole, radius, radius + 1e-8), within(1e-7));
            assertThat(limit).isLessThanOrEqualTo(StrictMath.acos(strut / hole) + 1e-12);
            assertThat(RoundHole.required(strut, limit, radius, radius)).isCloseTo(hole, within(1e-7));
        });
        assertThat(RoundHole.tiltLimit(40, 40, 50, 50)).isZero();
    }

    @Test
    void tiltLimit_thinStrut_canLieNearlyFlat() {
        // A hair in a thin-walled collar: cos θ = d/D as good as exactly.
        assertThat(RoundHole.tiltLimit(0.001, 10, 50, 50.0000001)).isCloseTo(StrictMath.acos(0.0001), within(1e-7));
    }
}
