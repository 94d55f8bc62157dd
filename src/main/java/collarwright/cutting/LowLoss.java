package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All fillings that a plan with given sticks may use: those that waste no more than all sticks together have to spare, by
 * every bound. Fillings with room for another wanted piece are left out; a plan with one of them is no worse with that piece
 * cut in vain.
 */
final class LowLoss {

    private static final int MOST_STEPS = 400_000;

    private final Model model;
    private final List<StickBound> bounds;
    private final long[] spare;
    private final StickBound tight;
    private final long tightSpare;
    private final int most;
    private final Integer[] order;
    private final int[] counts;
    private final List<Pattern> all = new ArrayList<>();
    private int steps;

    LowLoss(Model model, List<StickBound> bounds, int[] sticks, int most) {
        this.model = model;
        this.bounds = bounds;
        this.most = most;
        spare = bounds.stream().mapToLong(b -> b.spare(sticks)).toArray();
        int best = 0;
        for (int b = 1; b < spare.length; b++) {
            if ((double) spare[b] / bounds.get(b).all < (double) spare[best] / bounds.get(best).all) {
                best = b;
            }
        }
        tight = bounds.get(best);
        tightSpare = spare[best];
        counts = new int[model.kinds()];
        order = new Integer[counts.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        java.util.Arrays.sort(order, (a, b) -> {
            int byRate = Double.compare(
                    (double) tight.value[b] / model.weight[b], (double) tight.value[a] / model.weight[a]);
            return byRate != 0 ? byRate : Integer.compare(a, b);
        });
    }

    /** The fillings of all stocks; empty where there are too many to list. */
    Optional<List<Pattern>> list(int[] sticks) {
        for (int s = 0; s < sticks.length; s++) {
            if (sticks[s] > 0) {
                go(s, 0, model.capacity[s], tight.most[s] - tightSpare);
            }
        }
        return steps > MOST_STEPS || all.size() > most ? Optional.empty() : Optional.of(all);
    }

    // {@code lacking}: what the rest of the stick has to be worth at least.
    private void go(int stock, int depth, long room, long lacking) {
        if (++steps > MOST_STEPS || all.size() > most) {
            return;
        }
        if (depth == order.length) {
            if (lacking <= 0) {
                keep(stock, room);
            }
            return;
        }
        int kind = order[depth];
        double rate = (double) tight.value[kind] / model.weight[kind];
        if (room * rate * (1 + 1e-12) + 1 < lacking) {
            return;
        }
        int take = (int) StrictMath.min(model.demand[kind], room / model.weight[kind]);
        for (; take >= 0; take--) {
            counts[kind] = take;
            go(stock, depth + 1, room - take * model.weight[kind], lacking - take * tight.value[kind]);
        }
        counts[kind] = 0;
    }

    private void keep(int stock, long room) {
        if (!model.full(counts, model.demand, room)) {
            return;
        }
        Pattern pattern = Pattern.of(stock, counts);
        if (StickBound.affordable(bounds, spare, pattern)) {
            all.add(pattern);
        }
    }
}
