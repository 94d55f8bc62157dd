package collarwright.trial;

import collarwright.geometry.Interval;
import collarwright.trial.BoundedFit.Normal;
import collarwright.trial.Guess.Unknown;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Bearing wall and oversize from the angles that were measured on a test collar, by least squares.
 *
 * <p>Limits: where the sum of squares, with the other unknown fitted anew, is its least times 1 + t²/ν, t being Student's for
 * 95 % and ν the degrees of freedom (Bates and Watts, Nonlinear Regression Analysis and Its Applications, 1988, 6.1: the
 * profile t). Values that cannot be (a bearing wall below 0 or above the wall) do not count as candidates, so a limit that
 * would lie beyond a bound stands on it. Readings are taken to be off
 * by chance, each by as much as another.
 *
 * <p>What counts as one piece of evidence is a hole, not a reading: no two holes of one size come out alike, and a hole's own
 * error is the same in all its readings. So each hole counts for what its readings and its diameter are off
 * ({@link HoleScatter}), and the scatter of the holes' means makes the limits, as long as that leaves two degrees of freedom
 * and holes were read more than once; otherwise it is that of the readings, which holds only if all holes come out alike.
 *
 * @param collar the test collar
 * @param rows what was read
 * @param bearing the wall that bears
 * @param oversize of cutters whose holes were not measured
 * @param correlation of the two unknowns' errors, −1 to 1; 0 if one was given
 * @param rms root of the weighted mean of the squares of what the readings are off
 * @param freedom degrees of freedom of the limits: holes (or readings) less fitted unknowns, 1 or more
 * @param byHoles whether the scatter of the holes makes the limits, and not that of the readings
 * @param scatter standard deviation of the holes' diameters, by the readings; 0 where the limits do not count on it
 * @param almost where the rms is a tenth more, on either side; empty unless both were fitted
 */
public record TrialFit(
        TrialCollar collar,
        List<TrialRow> rows,
        Estimate bearing,
        Estimate oversize,
        double correlation,
        double rms,
        int freedom,
        boolean byHoles,
        double scatter,
        List<Other> almost) {

    /** The share of the limits. */
    public static final double SHARE = 0.95;

    private static final double TENTH_MORE = StrictMath.sqrt(1.1 * 1.1 - 1);
    /** Below it limits from a few holes are too wide to be of use. Our choice, no source. */
    private static final int LEAST_FREEDOM = 2;

    private static final double ONE_AND_THE_SAME = 1 - 1e-9;

    /** Keeps the lists. */
    public TrialFit {
        rows = List.copyOf(rows);
        almost = List.copyOf(almost);
    }

    /**
     * Another pair that fits.
     *
     * @param bearing the wall that bears
     * @param oversize of the cutters
     * @param rms of what the readings are off with it
     */
    public record Other(double bearing, double oversize, double rms) {}

    /**
     * What is known before.
     *
     * @param bearing the wall that bears; empty if it is looked for
     * @param oversize of the cutters; empty if it is looked for
     */
    public record Known(Optional<Double> bearing, Optional<Double> oversize) {
        /** Nothing is known: both are looked for. */
        public static final Known NOTHING = new Known(Optional.empty(), Optional.empty());

        /**
         * Counts what is looked for.
         *
         * @param rows what was read; where every hole was measured, the oversize plays no part
         * @return 0 to 2
         */
        public int unknowns(List<TrialRow> rows) {
            return free(rows).size();
        }

        private Set<Unknown> free(List<TrialRow> rows) {
            EnumSet<Unknown> free = EnumSet.noneOf(Unknown.class);
            if (bearing.isEmpty()) {
                free.add(Unknown.BEARING);
            }
            boolean measured = !rows.isEmpty() && rows.stream().allMatch(TrialRow::sizeMeasured);
            if (oversize.isEmpty() && !measured) {
                free.add(Unknown.OVERSIZE);
            }
            return free;
        }
    }

    /**
     * Fits.
     *
     * @param collar the test collar
     * @param rows what was read; more rows than unknowns; every size below the bore
     * @param known what is known before; a bearing wall within the wall, an oversize with which every strut passes
     * @return the fit
     * @throws IllegalArgumentException if there are too few rows
     */
    public static TrialFit of(TrialCollar collar, List<TrialRow> rows, Known known) {
        Set<Unknown> free = known.free(rows);
        int freedom = rows.size() - free.size();
        if (freedom < 1) {
            throw new IllegalArgumentException(rows.size() + " rows for " + free.size() + " unknowns");
        }
        BearingModel model = new BearingModel(collar, rows);
        Guess start = new Guess(
                known.bearing().orElse(collar.wall() / 4), known.oversize().orElse(0.0));
        Guess best = new BoundedFit(model, free).from(start.within(model.lowest(), model.highest()));
        List<TrialRow> means = means(rows);
        int between = means.size() - free.size();
        if (between < LEAST_FREEDOM || means.size() == rows.size()) {
            return new Reckoning(model, model, free, best, freedom, 0).fit();
        }
        double within = byHole(rows).stream().mapToDouble(TrialFit::within).sum();
        HoleScatter.Weighed weighed =
                new HoleScatter(new BearingModel(collar, means), free, within, rows.size()).from(best);
        return new Reckoning(model, weighed.model(), free, weighed.best(), between, weighed.scatter()).fit();
    }

    // One row for each hole, that counts as much as all its readings: least squares finds the same.
    private static List<TrialRow> means(List<TrialRow> rows) {
        return byHole(rows).stream().map(TrialFit::mean).toList();
    }

    private static TrialRow mean(List<TrialRow> hole) {
        TrialRow first = hole.get(0);
        double weights = hole.stream().mapToDouble(TrialRow::weight).sum();
        double angle = hole.stream().mapToDouble(r -> r.weight() * r.angle()).sum() / weights;
        return new TrialRow(
                first.hole(), first.cutter(), first.size(), first.sizeMeasured(), first.strut(), angle, weights);
    }

    private static Collection<List<TrialRow>> byHole(List<TrialRow> rows) {
        return rows.stream()
                .collect(Collectors.groupingBy(
                        r -> r.hole() + " " + r.size() + " " + r.sizeMeasured() + " " + r.strut(),
                        TreeMap::new,
                        Collectors.toList()))
                .values();
    }

    /**
     * The same fit with an oversize that the holes themselves showed, where every one of them was measured.
     *
     * @param shown mean of what they are wider than their cutters, with the least and the largest
     * @return a fit that differs in nothing else: a measured hole takes no oversize
     */
    public TrialFit showing(Interval shown) {
        Estimate by = new Estimate(shown, 0, true, false);
        return new TrialFit(collar, rows, bearing, by, correlation, rms, freedom, byHoles, scatter, almost);
    }

    /**
     * Counts what was fitted.
     *
     * @return 0 to 2
     */
    public int unknowns() {
        return (bearing.given() ? 0 : 1) + (oversize.given() ? 0 : 1);
    }

    /**
     * Returns what a reading is off.
     *
     * @param row one of the rows
     * @return measured less fitted angle
     */
    public double off(TrialRow row) {
        return row.angle() - fitted(row);
    }

    /**
     * Returns the angle that a row should have.
     *
     * @param row one of the rows
     * @return the tilt limit by the fit
     */
    public double fitted(TrialRow row) {
        Guess best = new Guess(bearing.value().nominal(), oversize.value().nominal());
        return new BearingModel(collar, rows).angle(row, best);
    }

    /**
     * Returns how far readings stray.
     *
     * @return the standard deviation of a reading of weight 1
     */
    public double spread() {
        double weights = rows.stream().mapToDouble(TrialRow::weight).sum();
        return rms * StrictMath.sqrt(weights / (rows.size() - unknowns()));
    }

    /**
     * Tells how much more the holes differ than the readings in one hole do: the ratio of the two mean squares, which is
     * about 1 where every hole is as wide as its cutter says (Draper and Smith, Applied Regression Analysis, 3rd edition,
     * 1998, 2.1: lack of fit and pure error).
     *
     * @return the ratio; empty where too few holes were read more than once
     */
    public OptionalDouble unevenness() {
        Collection<List<TrialRow>> holes = byHole(rows);
        int between = holes.size() - unknowns();
        int within = rows.size() - holes.size();
        double pure = holes.stream().mapToDouble(TrialFit::within).sum();
        double all =
                rows.stream().mapToDouble(r -> r.weight() * off(r) * off(r)).sum();
        return between > 0 && within > 1 && pure > 0
                ? OptionalDouble.of((all - pure) / between / (pure / within))
                : OptionalDouble.empty();
    }

    private static double within(List<TrialRow> hole) {
        double mean = mean(hole).angle();
        return hole.stream()
                .mapToDouble(r -> r.weight() * (r.angle() - mean) * (r.angle() - mean))
                .sum();
    }

    /** Everything that follows from the best guess. */
    private record Reckoning(
            BearingModel all, BearingModel model, Set<Unknown> free, Guess best, int freedom, double scatter) {

        TrialFit fit() {
            Normal normal = Normal.of(model, best);
            boolean both = free.size() == 2;
            return new TrialFit(
                    all.collar(),
                    all.rows(),
                    estimate(Unknown.BEARING, normal),
                    estimate(Unknown.OVERSIZE, normal),
                    both && normal.bearings() > 0 && normal.oversizes() > 0 ? -normal.likeness() : 0,
                    rms(best),
                    freedom,
                    !all.equals(model),
                    scatter,
                    both ? almost() : List.of());
        }

        private double rms(Guess guess) {
            double weights = all.rows().stream().mapToDouble(TrialRow::weight).sum();
            return StrictMath.sqrt(all.sum(guess) / weights);
        }

        private Estimate estimate(Unknown unknown, Normal normal) {
            double value = best.get(unknown);
            if (!free.contains(unknown)) {
                return new Estimate(Interval.of(value), 0, true, false);
            }
            double rise = StudentT.twoSided(SHARE, freedom) / StrictMath.sqrt(freedom);
            Profile profile = new Profile(model, free, best);
            double low = StrictMath.min(value, profile.end(unknown, false, rise).get(unknown));
            double high = StrictMath.max(value, profile.end(unknown, true, rise).get(unknown));
            boolean bound = value <= model.lowest().get(unknown)
                    || value >= model.highest().get(unknown);
            return new Estimate(new Interval(low, value, high), error(unknown, normal), false, bound);
        }

        private double error(Unknown unknown, Normal normal) {
            double variance = model.sum(best) / freedom / normal.square(unknown);
            double alike = free.size() == 2 && normal.bearings() > 0 && normal.oversizes() > 0 ? normal.likeness() : 0;
            boolean told = normal.square(unknown) > 0 && StrictMath.abs(alike) < ONE_AND_THE_SAME;
            return told ? StrictMath.sqrt(variance / (1 - alike * alike)) : Double.POSITIVE_INFINITY;
        }

        private List<Other> almost() {
            Profile profile = new Profile(all, free, best);
            return List.of(
                    other(profile.end(Unknown.BEARING, false, TENTH_MORE)),
                    other(profile.end(Unknown.BEARING, true, TENTH_MORE)));
        }

        private Other other(Guess guess) {
            return new Other(guess.bearing(), guess.oversize(), rms(guess));
        }
    }
}
