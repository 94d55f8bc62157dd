package collarwright.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.RoundHole;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TrialFitTest {

    // Strut 1.900 in, holes 2 in, 1 15/16 in and 49 mm drilled for 18°, 12° and the 9° to 10° class: common practice,
    // no
    // source. Collar of inside radius 77, wall 4.5.
    private static final TrialCollar TRADE_COLLAR = new TrialCollar(81.5, 4.5);
    private static final List<TrialRow> TRADE = List.of(trade(1, 50.8, 18), trade(2, 49.2125, 12), trade(3, 49, 9.5));

    private static TrialRow trade(int hole, double size, double degrees) {
        return new TrialRow(hole, "saw", size, false, 48.26, StrictMath.toRadians(degrees));
    }

    private static TrialFit.Known known(Optional<Double> bearing, Optional<Double> oversize) {
        return new TrialFit.Known(bearing, oversize);
    }

    private static double rms(double bearing, double oversize) {
        double sum = new BearingModel(TRADE_COLLAR, TRADE).sum(new Guess(bearing, oversize));
        return StrictMath.toDegrees(StrictMath.sqrt(sum / 3));
    }

    @Test
    void tradeSizes_withoutOversize_bearOnAnEdge() {
        TrialFit fit = TrialFit.of(TRADE_COLLAR, TRADE, known(Optional.empty(), Optional.of(0.0)));

        assertThat(fit.bearing().value().nominal()).isCloseTo(0, within(0.05));
        assertThat(fit.bearing().atBound()).isTrue();
        assertThat(fit.bearing().value().min()).isZero();
        assertThat(fit.oversize().given()).isTrue();
        assertThat(FitWords.of(fit)).anyMatch(w -> w.contains("a single edge"));
    }

    @Test
    void tradeSizes_withOversize_cannotTellTheTwoApartAndSayIt() {
        TrialFit fit = TrialFit.of(TRADE_COLLAR, TRADE, TrialFit.Known.NOTHING);

        assertThat(fit.correlation()).isGreaterThan(0.9);
        assertThat(StrictMath.toDegrees(fit.rms())).isCloseTo(0.50, within(0.01));
        // A bearing wall of 1 mm with 0.21 mm more hole is within a tenth of that.
        assertThat(rms(1, 0.21)).isCloseTo(0.55, within(0.005));
        TrialFit.Other other = fit.almost().get(1);
        assertThat(other.bearing()).isBetween(1.0, 1.5);
        assertThat(other.oversize()).isBetween(0.21, 0.3);
        assertThat(rms(other.bearing(), other.oversize()))
                .isCloseTo(1.1 * StrictMath.toDegrees(fit.rms()), within(1e-3));
        assertThat(FitWords.of(fit))
                .anyMatch(w -> w.startsWith("These rows fix bearing wall and oversize together, not each"))
                .anyMatch(w -> w.startsWith("Almost as good as the best (rms 0.49°): "))
                .anyMatch(w -> w.contains("95 % between 0.00 mm and 4.50 mm"))
                .anyMatch(w -> w.startsWith("The limits hold only if all holes come out alike"));
    }

    /** Mathematics Central, University of Regina, question QQ.09.18: D = d/cos θ + t·tan θ, for a flat board. */
    @Test
    void fit_flatBoards_findsTheBoardOfTheRodProblem() {
        Seeds.each(40, seeds -> {
            double bearing = seeds.between(0, 8);
            double oversize = seeds.between(-0.2, 0.4);
            // So wide a collar that its wall is as good as flat.
            TrialCollar collar = new TrialCollar(1e7, 8);
            List<TrialRow> rows = new ArrayList<>();
            for (double degrees : new double[] {4, 8, 13, 19, 26}) {
                double lean = StrictMath.toRadians(degrees);
                double hole = 30 / StrictMath.cos(lean) + bearing * StrictMath.tan(lean);
                rows.add(new TrialRow(rows.size() + 1, "drill", hole - oversize, false, 30, lean));
            }

            TrialFit fit = TrialFit.of(collar, rows, TrialFit.Known.NOTHING);

            assertThat(fit.bearing().value().nominal()).isCloseTo(bearing, within(2e-4));
            assertThat(fit.oversize().value().nominal()).isCloseTo(oversize, within(2e-5));
        });
    }

    @Test
    void fit_noisyRows_isTheLeastOfAFineGrid() {
        Seeds.each(8, seeds -> {
            Guess truth = new Guess(seeds.between(0, 4), seeds.between(0, 0.3));
            List<TrialRow> rows = Ladders.read(Ladders.COLLAR, truth, StrictMath.toRadians(0.5), seeds);
            TrialFit fit = TrialFit.of(Ladders.COLLAR, rows, TrialFit.Known.NOTHING);
            // Holes with their weights, which are drawn up apart from the search for the least.
            BearingModel model = weighed(rows);
            double least = Double.POSITIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            double high = 0;
            double t = StudentT.twoSided(0.95, Ladders.SIZES.size() - 2);
            double best = model.sum(new Guess(
                    fit.bearing().value().nominal(), fit.oversize().value().nominal()));
            for (int b = 0; b <= 94; b++) {
                double sum = leastOver(model, b * 0.05);
                least = StrictMath.min(least, sum);
                if (sum <= best * (1 + t * t / (Ladders.SIZES.size() - 2))) {
                    low = StrictMath.min(low, b * 0.05);
                    high = StrictMath.max(high, b * 0.05);
                }
            }

            assertThat(best).isLessThanOrEqualTo(least);
            // The limits by trying all walls.
            assertThat(fit.bearing().value().min()).isCloseTo(low, within(0.06));
            assertThat(fit.bearing().value().max()).isCloseTo(high, within(0.06));
        });
    }

    // Over all oversizes, by cutting off thirds.
    private static double leastOver(BearingModel model, double bearing) {
        double low = -0.4;
        double high = 0.8;
        for (int i = 0; i < 40; i++) {
            double third = (high - low) / 3;
            if (model.sum(new Guess(bearing, low + third)) < model.sum(new Guess(bearing, high - third))) {
                high -= third;
            } else {
                low += third;
            }
        }
        return model.sum(new Guess(bearing, low));
    }

    // The mean of each hole's three readings, as the fit weighs it.
    private static BearingModel weighed(List<TrialRow> rows) {
        List<TrialRow> means = new ArrayList<>();
        double strays = 0;
        for (int i = 0; i < rows.size(); i += 3) {
            double mean = (rows.get(i).angle()
                            + rows.get(i + 1).angle()
                            + rows.get(i + 2).angle())
                    / 3;
            for (int j = i; j < i + 3; j++) {
                strays += (rows.get(j).angle() - mean) * (rows.get(j).angle() - mean);
            }
            TrialRow row = rows.get(i);
            means.add(new TrialRow(row.hole(), row.cutter(), row.size(), false, row.strut(), mean, 3));
        }
        BearingModel model = new BearingModel(Ladders.COLLAR, means);
        Set<Guess.Unknown> both = Set.of(Guess.Unknown.BEARING, Guess.Unknown.OVERSIZE);
        return new HoleScatter(model, both, strays, rows.size())
                .from(new Guess(1, 0))
                .model();
    }

    @Test
    void fit_measuredHoles_tellTheBearingWallAlone() {
        List<TrialRow> rows = TRADE.stream()
                .map(r -> new TrialRow(r.hole(), r.cutter(), r.size(), true, r.strut(), r.angle()))
                .toList();

        TrialFit fit = TrialFit.of(TRADE_COLLAR, rows, TrialFit.Known.NOTHING);

        assertThat(fit.freedom()).isEqualTo(2);
        assertThat(fit.oversize().given()).isTrue();
        assertThat(FitWords.of(fit)).anyMatch(w -> w.startsWith("Oversize: every hole was measured"));
    }

    @Test
    void fit_oneSizeOnly_saysThatBothGoTogether() {
        List<TrialRow> rows = List.of(trade(1, 50.8, 17.8), trade(1, 50.8, 18.1), trade(1, 50.8, 18.2));

        TrialFit fit = TrialFit.of(TRADE_COLLAR, rows, TrialFit.Known.NOTHING);

        assertThat(fit.bearing().standardError()).isInfinite();
        assertThat(fit.bearing().value().min()).isZero();
        assertThat(fit.bearing().value().max()).isEqualTo(4.5);
        assertThat(FitWords.of(fit)).anyMatch(w -> w.startsWith("These rows fix bearing wall and oversize together"));
    }

    @Test
    void fit_aRowThatCountsTwice_isAsGoodAsTwoRows() {
        List<TrialRow> twice = new ArrayList<>(TRADE);
        twice.add(TRADE.get(0));
        TrialRow first = TRADE.get(0);
        List<TrialRow> heavy = List.of(
                new TrialRow(1, "saw", first.size(), false, first.strut(), first.angle(), 2),
                TRADE.get(1),
                TRADE.get(2));

        TrialFit one = TrialFit.of(TRADE_COLLAR, twice, TrialFit.Known.NOTHING);
        TrialFit other = TrialFit.of(TRADE_COLLAR, heavy, TrialFit.Known.NOTHING);

        assertThat(other.bearing().value().nominal())
                .isCloseTo(one.bearing().value().nominal(), within(1e-6));
        assertThat(other.rms()).isCloseTo(one.rms(), within(1e-9));
    }

    @Test
    void fit_bearingWallGiven_findsTheOversizeAlone() {
        TrialFit fit = TrialFit.of(TRADE_COLLAR, TRADE, known(Optional.of(1.0), Optional.empty()));

        assertThat(fit.bearing().given()).isTrue();
        assertThat(fit.oversize().value().nominal()).isCloseTo(0.21, within(0.05));
        assertThat(fit.almost()).isEmpty();
        assertThat(fit.spread()).isGreaterThan(fit.rms());
        assertThat(fit.off(TRADE.get(0)) + fit.fitted(TRADE.get(0)))
                .isCloseTo(TRADE.get(0).angle(), within(1e-12));
    }

    @Test
    void fit_holesThatDifferAmongThemselves_saysSo() {
        List<Boolean> uneven = new ArrayList<>();
        List<Boolean> even = new ArrayList<>();
        Guess truth = new Guess(1.2, 0.1);
        double noise = StrictMath.toRadians(0.3);
        Seeds.each(100, seeds -> {
            uneven.add(saysUneven(Ladders.read(Ladders.COLLAR, truth, noise, 0.1, seeds)));
            even.add(saysUneven(Ladders.read(Ladders.COLLAR, truth, noise, seeds)));
        });
        assertThat(uneven.stream().filter(said -> said).count()).isGreaterThan(60);
        assertThat(even.stream().filter(said -> said).count()).isLessThan(8);
    }

    private static boolean saysUneven(List<TrialRow> rows) {
        TrialFit fit = TrialFit.of(Ladders.COLLAR, rows, TrialFit.Known.NOTHING);
        return FitWords.of(fit).stream().anyMatch(w -> w.startsWith("The holes differ more"));
    }

    /** Why it is enough to look for one thickness: where in the wall it lies cannot be read from an angle. */
    @Test
    void bearing_atTheInnerOrTheOuterFace_bindsAsInTheMiddle() {
        for (double size : Ladders.SIZES) {
            double inner = RoundHole.tiltLimit(Ladders.STRUT, size, 75.3, 76.3);
            double outer = RoundHole.tiltLimit(Ladders.STRUT, size, 79, 80);
            assertThat(StrictMath.toDegrees(outer - inner)).isBetween(0.0, 0.06);
        }
    }

    @Test
    void fit_tooFewRowsOrWrongValues_isRefused() {
        assertThatThrownBy(() -> TrialFit.of(TRADE_COLLAR, TRADE.subList(0, 2), TrialFit.Known.NOTHING))
                .hasMessageContaining("2 rows for 2 unknowns");
        assertThatThrownBy(() -> trade(1, 50.8, 0)).hasMessageContaining("hole 1");
        assertThatThrownBy(() -> new TrialCollar(4, 5)).hasMessageContaining("wall of 5.0");
    }
}
