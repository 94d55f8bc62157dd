package collarwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Numbers of new sticks in the order of their value, least cost and then fewest sticks, that keep all bounds. Offcuts cost
 * nothing and are all there.
 */
final class StickCounts {

    private static final long MOST_STEPS = 3_000_000;

    private final Model model;
    private final List<StickBound> bounds = new ArrayList<>();
    private final List<int[]> refused = new ArrayList<>();
    private final List<int[]> passed = new ArrayList<>();
    private final List<Integer> fresh = new ArrayList<>();
    private final int[] at;
    private int[] best = {};
    private long bestValue;
    private long steps;

    StickCounts(Model model) {
        this.model = model;
        at = new int[model.stocks()];
        for (int s = 0; s < at.length; s++) {
            if (model.fresh(s) && !model.missing(s)) {
                fresh.add(s);
            } else if (!model.fresh(s)) {
                at[s] = model.limit[s];
            }
        }
    }

    void keep(StickBound bound) {
        bounds.add(bound);
    }

    List<StickBound> bounds() {
        return List.copyOf(bounds);
    }

    /** No plan has these numbers or fewer. */
    void refuse(int[] sticks) {
        refused.add(sticks.clone());
    }

    /** Nobody knows about these numbers. */
    void pass(int[] sticks) {
        passed.add(sticks.clone());
    }

    boolean cutOff() {
        return steps > MOST_STEPS;
    }

    /** The least numbers whose value is below a limit; none, or cut off. */
    Optional<int[]> below(long value) {
        bestValue = value;
        best = new int[0];
        steps = 0;
        go(0, 0);
        return best.length == 0 || cutOff() ? Optional.empty() : Optional.of(best);
    }

    private void go(int depth, long value) {
        if (++steps > MOST_STEPS || value >= bestValue) {
            return;
        }
        if (depth == fresh.size()) {
            if (allowed()) {
                bestValue = value;
                best = at.clone();
            }
            return;
        }
        int s = fresh.get(depth);
        long most = StrictMath.min(model.limit[s], (bestValue - 1 - value) / model.cost[s]);
        long[] range = {depth == fresh.size() - 1 ? least(s, most) : 0, most};
        bounds.forEach(b -> narrow(range, b, depth, value));
        for (long n = range[0]; n <= range[1] && steps <= MOST_STEPS; n++) {
            at[s] = (int) n;
            go(depth + 1, value + n * model.cost[s]);
        }
        at[s] = 0;
    }

    // What is still to be carried costs something even on the sticks that carry it cheapest; that limits how many there
    // can
    // be of sticks that carry it dearer, and how few of those that carry it cheaper. Rounded to the safe side.
    private void narrow(long[] range, StickBound bound, int depth, long value) {
        int s = fresh.get(depth);
        double cheapest = Double.POSITIVE_INFINITY;
        for (int d = depth + 1; d < fresh.size(); d++) {
            int other = fresh.get(d);
            if (bound.most[other] > 0) {
                cheapest = StrictMath.min(cheapest, (double) model.cost[other] / bound.most[other]);
            }
        }
        double lacking = -bound.spare(at);
        if (cheapest < Double.POSITIVE_INFINITY && lacking > 0) {
            double over = value + lacking * cheapest - bestValue;
            double dearer = model.cost[s] - bound.most[s] * cheapest;
            double slip = 1e-9 * (value + lacking * cheapest) + 1;
            if (dearer > 1e-9 * model.cost[s]) {
                range[1] = StrictMath.min(range[1], (long) StrictMath.floor((slip - over) / dearer));
            } else if (dearer < -1e-9 * model.cost[s]) {
                // Beyond what is lacking, more sticks save nothing.
                long enough = (long) StrictMath.ceil(lacking / bound.most[s]);
                long fewest = (long) StrictMath.ceil((over - slip) / -dearer);
                range[0] = StrictMath.max(range[0], StrictMath.min(fewest, enough));
            }
        }
    }

    private long least(int s, long most) {
        at[s] = 0;
        long least = 0;
        for (StickBound bound : bounds) {
            long lacking = -bound.spare(at);
            if (lacking > 0) {
                least = bound.most[s] == 0
                        ? most + 1
                        : StrictMath.max(least, (lacking + bound.most[s] - 1) / bound.most[s]);
            }
        }
        return least;
    }

    private boolean allowed() {
        return bounds.stream().noneMatch(b -> b.spare(at) < 0)
                && refused.stream().noneMatch(this::noMore)
                && passed.stream().noneMatch(p -> Arrays.equals(p, at));
    }

    private boolean noMore(int[] than) {
        for (int s = 0; s < at.length; s++) {
            if (at[s] > than[s]) {
                return false;
            }
        }
        return true;
    }
}
