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
        long least = depth == fresh.size() - 1 ? least(s, most) : 0;
        for (long n = least; n <= most; n++) {
            at[s] = (int) n;
            long with = value + n * model.cost[s];
            if (with >= bestValue || steps > MOST_STEPS) {
                break;
            }
            if (reachable(depth, with)) {
                go(depth + 1, with);
            }
        }
        at[s] = 0;
    }

    // What is still to be carried costs something even on the sticks that carry it cheapest.
    private boolean reachable(int depth, long value) {
        for (StickBound bound : bounds) {
            long lacking = -bound.spare(at);
            if (lacking > 0) {
                double cheapest = Double.POSITIVE_INFINITY;
                for (int d = depth + 1; d < fresh.size(); d++) {
                    int s = fresh.get(d);
                    if (bound.most[s] > 0) {
                        cheapest = StrictMath.min(cheapest, (double) model.cost[s] / bound.most[s]);
                    }
                }
                if (value + lacking * cheapest * (1 - 1e-9) >= bestValue) {
                    return false;
                }
            }
        }
        return true;
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
