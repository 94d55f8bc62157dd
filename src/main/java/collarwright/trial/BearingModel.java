package collarwright.trial;

import collarwright.collar.RoundHole;
import java.util.List;

/**
 * What the readings would be for a bearing wall and an oversize, by the exact contact of a round strut in a curved wall whose
 * middle part alone bears.
 *
 * @param collar the test collar
 * @param rows what was read
 */
record BearingModel(TrialCollar collar, List<TrialRow> rows) {

    /** How far a hole stays narrower than the bore. */
    private static final double NARROWER = 1e-6;

    /** Half the step over which slopes are taken. */
    private static final double HALF_STEP = 1e-4;

    BearingModel {
        rows = List.copyOf(rows);
    }

    /** The least that can be: a single edge bears, and the tightest strut still passes. */
    Guess lowest() {
        double narrowest = rows.stream()
                .filter(r -> !r.sizeMeasured())
                .mapToDouble(r -> r.strut() - r.size())
                .max()
                .orElse(0);
        return new Guess(0, narrowest);
    }

    /** The most that can be: the whole wall bears, and the widest hole is just narrower than the bore. */
    Guess highest() {
        double widest = rows.stream()
                .filter(r -> !r.sizeMeasured())
                .mapToDouble(r -> collar.bore() - NARROWER - r.size())
                .min()
                .orElse(0);
        return new Guess(collar.wall(), widest);
    }

    /** The lean at which a strut binds. */
    double angle(TrialRow row, Guess guess) {
        // A measured size or a bound may come out a rounding below the strut.
        double hole = StrictMath.max(row.strut(), row.drilled(guess.oversize()));
        double half = guess.bearing() / 2;
        return RoundHole.tiltLimit(row.strut(), hole, collar.middle() - half, collar.middle() + half);
    }

    /** The sum of the weighted squares of what the readings are off. */
    double sum(Guess guess) {
        double sum = 0;
        for (TrialRow row : rows) {
            double off = angle(row, guess) - row.angle();
            sum += row.weight() * off * off;
        }
        return sum;
    }

    /** How fast an angle grows with one of the unknowns; on a bound to its inner side. */
    double slope(TrialRow row, Guess guess, Guess.Unknown unknown) {
        double at = guess.get(unknown);
        double above = StrictMath.min(highest().get(unknown), at + HALF_STEP);
        double below = StrictMath.max(lowest().get(unknown), at - HALF_STEP);
        double rise = angle(row, guess.with(unknown, above)) - angle(row, guess.with(unknown, below));
        return above > below ? rise / (above - below) : 0;
    }

    /** How fast an angle grows with the diameter of its hole, whether it was measured or not. */
    double slopeOverHole(TrialRow row, Guess guess) {
        double hole = StrictMath.max(row.strut(), row.drilled(guess.oversize()));
        double half = guess.bearing() / 2;
        double below = StrictMath.max(row.strut(), hole - HALF_STEP);
        double above = StrictMath.min(collar.bore() - NARROWER, hole + HALF_STEP);
        double rise = RoundHole.tiltLimit(row.strut(), above, collar.middle() - half, collar.middle() + half)
                - RoundHole.tiltLimit(row.strut(), below, collar.middle() - half, collar.middle() + half);
        return rise / (above - below);
    }
}
