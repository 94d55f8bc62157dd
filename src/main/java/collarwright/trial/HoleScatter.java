package collarwright.trial;

import collarwright.trial.Guess.Unknown;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How much holes of one size differ among themselves, told from readings that were repeated in each of them, and what the
 * mean of a hole's readings counts for it.
 *
 * <p>A hole's mean is off by the readings' own scatter, the less the more of them there are, and by what its diameter is off
 * times how fast the tilt limit grows with the diameter: much in a tight hole, little in a wide one. Its weight is
 * {@code 1/(1/n + λ·(dθ/dD)²)}, n being the readings and λ the variance of the holes' diameters over that of a reading.
 *
 * <p>The scatter that is counted with is the mean of a row of values, each weighed by its restricted likelihood: that of the
 * readings with what the fitted unknowns take from them allowed for (Patterson and Thompson, Biometrika 58, 1971, 545), with
 * the slopes of the best fit. The likeliest alone is often 0 where the holes do differ a little, and then tight holes count for too much. The row of values is our choice, no source.
 *
 * @param model one row for each hole: the mean of its readings, its weight their number
 * @param free the unknowns that are looked for
 * @param within sum of the weighted squares of what readings differ from their hole's mean
 * @param readings how many readings there are in all
 */
record HoleScatter(BearingModel model, Set<Unknown> free, double within, int readings) {

    private static final List<Double> TRIED = List.of(
            0.0, 0.004, 0.008, 0.012, 0.016, 0.02, 0.03, 0.04, 0.055, 0.075, 0.1, 0.14, 0.2, 0.3, 0.45, 0.7, 1.1);
    /** Slopes hardly change from fit to fit. */
    private static final int ROUNDS = 2;

    private static final double TINY = 1e-300;

    HoleScatter {
        free = Set.copyOf(free);
    }

    /**
     * A fit with weights.
     *
     * @param model holes with their weights
     * @param best where the sum of squares is least
     * @param scatter standard deviation of the holes' diameters
     * @param unlikely how unlikely it is: minus twice the logarithm of the restricted likelihood, but for a constant
     */
    record Weighed(BearingModel model, Guess best, double scatter, double unlikely) {}

    /**
     * Finds the scatter to count with and the fit that goes with it.
     *
     * @param start a guess between the bounds
     * @return the fit
     */
    Weighed from(Guess start) {
        Weighed even = with(0, start);
        double reading = readingVariance(even);
        List<Weighed> tried = new ArrayList<>();
        Guess near = even.best();
        for (double scatter : TRIED) {
            tried.add(with(scatter * scatter / reading, near));
            near = tried.get(tried.size() - 1).best();
        }
        double least = tried.stream().mapToDouble(Weighed::unlikely).min().orElseThrow();
        double shares = 0;
        double mean = 0;
        for (int i = 0; i < TRIED.size(); i++) {
            double share = StrictMath.exp((least - tried.get(i).unlikely()) / 2);
            shares += share;
            mean += share * TRIED.get(i);
        }
        mean /= shares;
        return with(mean * mean / reading, near(mean, tried));
    }

    private static Guess near(double scatter, List<Weighed> tried) {
        int at = 0;
        while (at + 1 < TRIED.size() && TRIED.get(at + 1) <= scatter) {
            at++;
        }
        return tried.get(at).best();
    }

    // By what a hole's own readings differ; where they do not differ at all, by what the means are off.
    private double readingVariance(Weighed even) {
        int repeated = readings - model.rows().size();
        double pure = repeated > 0 ? within / repeated : 0;
        double all = (even.model().sum(even.best()) + within) / (readings - free.size());
        return StrictMath.max(StrictMath.max(pure, 1e-4 * all), TINY);
    }

    private Weighed with(double ratio, Guess start) {
        Guess best = start;
        BearingModel weighed = model;
        for (int round = 0; round < (ratio > 0 ? ROUNDS : 1); round++) {
            weighed = new BearingModel(model.collar(), rows(ratio, best));
            best = new BoundedFit(weighed, free).from(best);
        }
        double least = weighed.sum(best) + within;
        double unlikely = (readings - free.size()) * StrictMath.log(StrictMath.max(least, TINY))
                + StrictMath.log(StrictMath.max(information(weighed, best), TINY));
        for (TrialRow row : weighed.rows()) {
            unlikely -= StrictMath.log(row.weight());
        }
        double variance = least / (readings - free.size());
        return new Weighed(weighed, best, StrictMath.sqrt(ratio * variance), unlikely);
    }

    private List<TrialRow> rows(double ratio, Guess at) {
        List<TrialRow> rows = new ArrayList<>();
        for (TrialRow row : model.rows()) {
            double slope = model.slopeOverHole(row, at);
            rows.add(row.weighing(1 / (1 / row.weight() + ratio * slope * slope)));
        }
        return rows;
    }

    private double information(BearingModel weighed, Guess best) {
        BoundedFit.Normal normal = BoundedFit.Normal.of(weighed, best);
        if (free.size() == 2) {
            return normal.bearings() * normal.oversizes() - normal.both() * normal.both();
        }
        return free.stream().mapToDouble(normal::square).findFirst().orElse(1);
    }
}
