package collarwright.cutting;

import java.util.List;

/** Fills stick after stick with the longest pieces that fit, from the stock that costs least for what it carries. */
final class LongestFirst {

    private final Model model;

    LongestFirst(Model model) {
        this.model = model;
    }

    /** Puts all that is wanted on sticks; those that are missing always have room. */
    void fill(int[] wanted, int[] left, List<Pattern> plan) {
        while (true) {
            Pattern best = null;
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s < left.length; s++) {
                Pattern pattern = left[s] > 0 ? greedy(s, wanted) : Pattern.of(s, new int[wanted.length]);
                double rate = pattern.empty() ? least : (double) model.cost[s] / pattern.sum(model.weight);
                if (rate < least) {
                    least = rate;
                    best = pattern;
                }
            }
            if (best == null) {
                return;
            }
            int times = StrictMath.min(best.times(wanted), left[best.stock]);
            for (int i = 0; i < times; i++) {
                plan.add(best);
            }
            best.take(wanted, times);
            left[best.stock] -= left[best.stock] == Model.ENDLESS ? 0 : times;
        }
    }

    private Pattern greedy(int stock, int[] wanted) {
        long room = model.capacity[stock];
        int[] counts = new int[wanted.length];
        for (int kind = 0; kind < counts.length; kind++) {
            counts[kind] = (int) StrictMath.min(wanted[kind], room / model.weight[kind]);
            room -= counts[kind] * model.weight[kind];
        }
        return Pattern.of(stock, counts);
    }
}
