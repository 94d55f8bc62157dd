package collarwright.trial;

import collarwright.trial.Guess.Unknown;
import java.util.EnumSet;
import java.util.Set;

/**
 * How the fit gets worse when one unknown is held away from its best value and the other is fitted anew: the profile of the
 * sum of squares. Its ends are limits that stay right where the unknowns go together or stand on a bound.
 *
 * @param model what the readings would be
 * @param free the unknowns that are looked for
 * @param best where the sum of squares is least
 */
record Profile(BearingModel model, Set<Unknown> free, Guess best) {

    private static final int MOST_STEPS = 60;
    private static final double STEP_END = 1e-7;
    private static final double RISE_END = 1e-6;

    Profile {
        free = Set.copyOf(free);
    }

    /**
     * Finds how far an unknown can go in one direction.
     *
     * @param unknown which
     * @param up toward its upper or its lower bound
     * @param rise what the root of (sum of squares / its least − 1) may come to
     * @return the end, or the bound if that comes first, with the other unknown as it is best there
     */
    Guess end(Unknown unknown, boolean up, double rise) {
        double bound = (up ? model.highest() : model.lowest()).get(unknown);
        if (!free.contains(unknown) || bound == best.get(unknown)) {
            return best;
        }
        Guess far = at(unknown, bound, best);
        double over = rise(far) - rise;
        if (over <= 0) {
            return far;
        }
        // The rule of false position, Illinois form: the rise is nearly a straight line.
        double near = best.get(unknown);
        double under = -rise;
        double away = bound;
        Guess last = best;
        boolean wasOver = true;
        for (int step = 0; step < MOST_STEPS && StrictMath.abs(away - near) > STEP_END; step++) {
            double between =
                    Double.isInfinite(over) ? (near + away) / 2 : near + (away - near) * under / (under - over);
            last = at(unknown, between, last);
            double here = rise(last) - rise;
            if (StrictMath.abs(here) <= RISE_END * rise) {
                return last;
            }
            if (here > 0) {
                away = between;
                over = here;
                under = wasOver && step > 0 ? under / 2 : under;
            } else {
                near = between;
                under = here;
                over = !wasOver ? over / 2 : over;
            }
            wasOver = here > 0;
        }
        return last;
    }

    private Guess at(Unknown unknown, double value, Guess near) {
        EnumSet<Unknown> others = EnumSet.noneOf(Unknown.class);
        free.stream().filter(u -> u != unknown).forEach(others::add);
        return new BoundedFit(model, others).from(near.with(unknown, value));
    }

    private double rise(Guess guess) {
        double least = model.sum(best);
        double more = model.sum(guess) - least;
        return more <= 0 ? 0 : StrictMath.sqrt(more / least);
    }
}
