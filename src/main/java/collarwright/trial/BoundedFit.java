package collarwright.trial;

import collarwright.trial.Guess.Unknown;
import java.util.Set;

/**
 * Least squares of one or two unknowns between bounds, by the rule of Levenberg and Marquardt with an active set: an unknown
 * that stands on a bound and would go beyond it is held there for the step.
 *
 * @param model what the readings would be
 * @param free the unknowns that are looked for; the others keep their value
 */
record BoundedFit(BearingModel model, Set<Unknown> free) {

    private static final int MOST_STEPS = 200;
    private static final double FIRST_DAMPING = 1e-4;
    private static final double MOST_DAMPING = 1e12;
    private static final double STEP_END = 1e-10;

    BoundedFit {
        free = Set.copyOf(free);
    }

    /**
     * Half the slope of the sum of squares and the matrix that goes with it.
     *
     * @param bearing half the slope over the bearing wall
     * @param oversize half the slope over the oversize
     * @param bearings sum of the squares of the angles' slopes over the bearing wall
     * @param both sum of the products of both slopes
     * @param oversizes sum of the squares of the slopes over the oversize
     */
    record Normal(double bearing, double oversize, double bearings, double both, double oversizes) {

        static Normal of(BearingModel model, Guess at) {
            double[] sums = new double[5];
            for (TrialRow row : model.rows()) {
                double off = model.angle(row, at) - row.angle();
                double b = model.slope(row, at, Unknown.BEARING);
                double o = model.slope(row, at, Unknown.OVERSIZE);
                double[] terms = {b * off, o * off, b * b, b * o, o * o};
                for (int i = 0; i < terms.length; i++) {
                    sums[i] += row.weight() * terms[i];
                }
            }
            return new Normal(sums[0], sums[1], sums[2], sums[3], sums[4]);
        }

        double slope(Unknown unknown) {
            return unknown == Unknown.BEARING ? bearing : oversize;
        }

        double square(Unknown unknown) {
            return unknown == Unknown.BEARING ? bearings : oversizes;
        }

        /** How much of both is one and the same, −1 to 1. */
        double likeness() {
            return both / StrictMath.sqrt(bearings * oversizes);
        }
    }

    /**
     * Finds the best guess.
     *
     * @param start where to begin, between the bounds
     * @return where the sum of squares is least
     */
    Guess from(Guess start) {
        Guess at = start;
        double sum = model.sum(at);
        double damping = FIRST_DAMPING;
        Normal normal = Normal.of(model, at);
        for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING; step++) {
            Guess next = step(at, normal, damping);
            double moved =
                    StrictMath.abs(next.bearing() - at.bearing()) + StrictMath.abs(next.oversize() - at.oversize());
            double there = model.sum(next);
            if (there <= sum) {
                at = next;
                sum = there;
                if (moved < STEP_END) {
                    return at;
                }
                damping = StrictMath.max(damping / 10, 1e-12);
                normal = Normal.of(model, at);
            } else if (moved < STEP_END) {
                return at;
            } else {
                damping *= 10;
            }
        }
        return at;
    }

    private Guess step(Guess at, Normal normal, double damping) {
        boolean bearing = moves(Unknown.BEARING, at, normal);
        boolean oversize = moves(Unknown.OVERSIZE, at, normal);
        double a = normal.bearings() * (1 + damping);
        double c = normal.oversizes() * (1 + damping);
        double b = bearing && oversize ? normal.both() : 0;
        double determinant = a * c - b * b;
        Guess next = at;
        if (bearing && oversize && determinant > 0) {
            next = new Guess(
                    at.bearing() - (c * normal.bearing() - b * normal.oversize()) / determinant,
                    at.oversize() - (a * normal.oversize() - b * normal.bearing()) / determinant);
        } else if (bearing) {
            next = at.with(Unknown.BEARING, at.bearing() - normal.bearing() / a);
        } else if (oversize) {
            next = at.with(Unknown.OVERSIZE, at.oversize() - normal.oversize() / c);
        }
        return next.within(model.lowest(), model.highest());
    }

    private boolean moves(Unknown unknown, Guess at, Normal normal) {
        double slope = normal.slope(unknown);
        boolean low = at.get(unknown) <= model.lowest().get(unknown) && slope >= 0;
        boolean high = at.get(unknown) >= model.highest().get(unknown) && slope <= 0;
        return free.contains(unknown) && normal.square(unknown) > 0 && !low && !high;
    }
}
