package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.collar.RoundHole;
import collarwright.geometry.Interval;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoleSizeTest {
    private static final CollarBody BODY = new CollarBody(80.05, new Interval(6.2, 6.4, 6.6), 80);
    private static final Interval STRUT = new Interval(39.9, 40.05, 40.2);
    private static final double LEAN = StrictMath.toRadians(11.64);
    private static final HoleNeed NEED = new HoleNeed(BODY, STRUT, LEAN);

    private static HoleSize choose(HoleNeed need, Fit fit, double bandDegrees, Cutter... cutters) {
        return HoleSize.choose(
                need, new DrillingSettings(Arrays.asList(cutters), fit, StrictMath.toRadians(bandDegrees)));
    }

    private static Optional<String> chosen(Fit fit, double bandDegrees, Cutter... cutters) {
        return choose(NEED, fit, bandDegrees, cutters).cutter().map(Cutter::id);
    }

    // By hand, with the contact on the mid-plane: 40.2/cos 11.64° + 6.6·tan 11.64° = 41.044 + 1.360.
    @Test
    void required_thickestStrutAndWall_isTheHandFigure() {
        assertThat(choose(NEED, Fit.REACH, 0, Jobs.saw(44)).required()).isCloseTo(42.40, within(0.5e-2));
    }

    @Test
    void reach_severalCutters_takesTheSmallestThatReaches() {
        assertThat(chosen(Fit.REACH, 0, Jobs.saw(42), Jobs.saw(42.5), Jobs.saw(43)))
                .contains("HS-42.5");
        assertThat(chosen(Fit.REACH, 0, Jobs.saw(43), Jobs.saw(42.5), Jobs.saw(42)))
                .contains("HS-42.5");
        assertThat(chosen(Fit.REACH, 0, Jobs.saw(41), Jobs.saw(42))).isEmpty();
    }

    @Test
    void reach_spreadOfTheSaw_countsItsSmallestHole() {
        Cutter wild = Jobs.saw(42.5, new Interval(42.3, 42.5, 42.9), true);
        assertThat(chosen(Fit.REACH, 0, wild, Jobs.saw(43))).contains("HS-43");
    }

    @Test
    void reach_holeWiderThanTheBore_isNotTaken() {
        assertThat(chosen(Fit.REACH, 0, Jobs.saw(42), Jobs.saw(150))).isEmpty();
        assertThat(chosen(Fit.NEAREST, 89, Jobs.saw(150))).isEmpty();
        // Its largest hole counts: 2 · (80.05 − 6.6) = 146.9.
        Cutter wild = Jobs.saw(146, new Interval(145, 146, 147), true);
        assertThat(chosen(Fit.REACH, 0, wild)).isEmpty();
    }

    @Test
    void reach_equalSizes_takesTheFirstId() {
        Cutter a =
                new Cutter("A", CutterKind.TWIST, "43 mm", 43, Interval.of(43), true, 8, 100, 80, 600, "metric-twist");
        assertThat(chosen(Fit.REACH, 0, Jobs.saw(43), a)).contains("A");
        assertThat(chosen(Fit.NEAREST, 9, Jobs.saw(43), a)).contains("A");
    }

    @Test
    void nearest_band_mayComeUpShort() {
        // The nominal strut in 42 mm binds at 11.1°, half a degree short; 42.5 mm lets it lean 12.8°.
        double short42 = StrictMath.toDegrees(LEAN - HoleSize.limit(NEED, Jobs.saw(42)));
        double over425 = StrictMath.toDegrees(HoleSize.limit(NEED, Jobs.saw(42.5)) - LEAN);
        assertThat(short42).isBetween(0.3, 0.9);
        assertThat(over425).isGreaterThan(short42);
        assertThat(chosen(Fit.NEAREST, short42 + 1e-6, Jobs.saw(42), Jobs.saw(42.5)))
                .contains("HS-42");
        assertThat(chosen(Fit.NEAREST, short42 - 1e-6, Jobs.saw(42), Jobs.saw(42.5)))
                .contains("HS-42.5");
        assertThat(chosen(Fit.NEAREST, short42 - 1e-6, Jobs.saw(42))).isEmpty();
    }

    @Test
    void nearest_holeNarrowerThanTheThickestStrut_isNotTaken() {
        assertThat(chosen(Fit.NEAREST, 89, Jobs.saw(40.1))).isEmpty();
        assertThat(chosen(Fit.NEAREST, 89, Jobs.saw(40.2))).contains("HS-40.2");
    }

    @Test
    void limits_drawnPieces_lieBetweenTightestAndLoosest() {
        HoleSize size = choose(NEED, Fit.REACH, 0, Jobs.saw(43, new Interval(42.8, 43.1, 43.3), true));
        double tightest = size.tightestLimit();
        double loosest = size.loosestLimit();
        Hole hole = size.at(1, 0);
        assertThat(hole.tiltMin()).isEqualTo(tightest);
        assertThat(hole.tiltMax()).isEqualTo(loosest);
        assertThat(hole.tiltLimit()).isBetween(tightest, loosest);
        assertThat(tightest).as("the thickest strut reaches its angle").isGreaterThanOrEqualTo(LEAN);
        Seeds.each(1000, draw -> {
            double wall = draw.between(6.2, 6.6);
            double limit = RoundHole.tiltLimit(draw.between(39.9, 40.2), draw.between(42.8, 43.3), 80.05 - wall, 80.05);
            assertThat(limit).isBetween(tightest, loosest);
        });
    }

    @Test
    void choose_noHoleNarrowEnough_isInfinite() {
        HoleNeed steep = new HoleNeed(BODY, Interval.of(140), StrictMath.toRadians(40));
        HoleSize size = choose(steep, Fit.REACH, 0, Jobs.saw(145));
        assertThat(size.required()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(size.cutter()).isEmpty();
        assertThatIllegalStateException().isThrownBy(() -> size.at(1, 0));
        assertThatIllegalStateException().isThrownBy(size::tightestLimit);
        assertThatIllegalStateException().isThrownBy(size::loosestLimit);
    }

    // The thickest strut can never lean so far in this bore; that the nominal one could is no reason to drill.
    @Test
    void nearest_noHoleForTheThickestStrut_takesNone() {
        CollarBody tight = new CollarBody(50, Interval.of(5), 80);
        Interval strut = new Interval(60, 70, 80);
        Cutter saw = Jobs.saw(85);
        double lean = RoundHole.tiltLimit(70, 85, 45, 50);
        HoleNeed need = new HoleNeed(tight, strut, lean);
        assertThat(RoundHole.required(80, lean, 45, 50)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(choose(need, Fit.NEAREST, 1, saw).cutter()).isEmpty();
        assertThat(choose(new HoleNeed(tight, Interval.of(70), lean), Fit.NEAREST, 1, saw)
                        .cutter())
                .contains(saw);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1e-9, -1, StrictMath.PI / 2, Double.POSITIVE_INFINITY})
    void choose_leanOutOfRange_isRefused(double lean) {
        assertThatIllegalArgumentException().isThrownBy(() -> new HoleNeed(BODY, STRUT, lean));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, 1e-17, 1e-9})
    void choose_hardlyAnyLean_takesAHoleForTheStrut(double lean) {
        HoleSize size = choose(new HoleNeed(BODY, STRUT, lean), Fit.REACH, 0, Jobs.saw(40), Jobs.saw(41));
        assertThat(size.required()).isCloseTo(40.2, within(1e-6));
        assertThat(size.cutter()).map(Cutter::id).contains("HS-41");
    }

    // Every cutter tried by hand instead of by streams.
    @Test
    void choose_drawnRacks_agreesWithTryingEveryCutter() {
        Seeds.each(300, draw -> {
            List<Cutter> rack = draw.numbers(draw.whole(1, 12), 38, 50).stream()
                    .map(mm -> Jobs.saw(StrictMath.rint(mm * 10) / 10))
                    .distinct()
                    .toList();
            Fit fit = draw.coin() ? Fit.REACH : Fit.NEAREST;
            double lean = draw.between(0.05, 0.35);
            double band = draw.between(0, 0.02);
            HoleNeed need = new HoleNeed(BODY, STRUT, lean);
            Cutter best = null;
            for (Cutter c : rack) {
                boolean fits = c.size() >= 40.2
                        && (fit == Fit.REACH
                                ? RoundHole.tiltLimit(40.2, c.size(), 80.05 - 6.6, 80.05) >= lean
                                : RoundHole.tiltLimit(40.05, c.size(), 80.05 - 6.4, 80.05) >= lean - band);
                boolean better = fits && (best == null || cost(need, fit, c) < cost(need, fit, best));
                best = better ? c : best;
            }
            assertThat(HoleSize.choose(need, new DrillingSettings(rack, fit, band))
                            .cutter())
                    .isEqualTo(Optional.ofNullable(best));
        });
    }

    private static double cost(HoleNeed need, Fit fit, Cutter cutter) {
        double limit = RoundHole.tiltLimit(40.05, cutter.size(), 80.05 - 6.4, 80.05);
        return fit == Fit.REACH ? cutter.size() : StrictMath.abs(limit - need.lean());
    }

    // Each size alone at its ends, and a draw of many collars whose sizes spread evenly: the interval by chance holds
    // √3 standard deviations of each, so about 1.73 of the limit's.
    @Test
    void tolerance_sizesThatSpread_isWhatManyCollarsShow() {
        HoleSize size = HoleSize.choose(
                NEED, new DrillingSettings(List.of(Jobs.saw(44, new Interval(43.9, 44, 44.1), true)), Fit.REACH, 0));
        Tolerance tolerance = size.tolerance();
        Seeds draw = Seeds.of(7);
        double sum = 0;
        double squares = 0;
        int many = 20_000;
        for (int i = 0; i < many; i++) {
            double limit = BODY.tiltLimit(draw.between(39.9, 40.2), draw.between(43.9, 44.1), draw.between(6.2, 6.6));
            sum += limit;
            squares += limit * limit;
        }
        double deviation = StrictMath.sqrt(squares / many - sum / many * sum / many);
        assertThat(tolerance.spread()).isCloseTo(StrictMath.sqrt(3) * deviation, within(0.03 * tolerance.spread()));
        double middle = BODY.tiltLimit(40.05, 44, 6.4);
        assertThat(tolerance.perHole())
                .isCloseTo((BODY.tiltLimit(40.05, 44.001, 6.4) - middle) * 100, within(2e-2 * tolerance.perHole()));
        assertThat(tolerance.perStrut())
                .isCloseTo((BODY.tiltLimit(40.051, 44, 6.4) - middle) * 100, within(2e-2 * -tolerance.perStrut()));
        assertThat(tolerance.perWall())
                .isCloseTo((BODY.tiltLimit(40.05, 44, 6.401) - middle) * 100, within(2e-2 * -tolerance.perWall()));
    }
}
