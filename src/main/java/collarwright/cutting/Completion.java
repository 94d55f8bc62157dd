package collarwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Fills given sticks one by one, every way there is: the longest piece that is left goes on each kind of stick, with every
 * filling that has no room for another wanted piece. What a filling wastes, by length and by every bound that is known, may
 * not sum up to more than the sticks have to spare.
 *
 * <p>After S. Martello, P. Toth, Knapsack Problems, 1990, chapter 8 (dominance), from memory.
 */
final class Completion {

    private static final int MOST_REMEMBERED = 200_000;

    private final Model model;
    private final List<StickBound> bounds;
    private final long mostNodes;
    private final List<Pattern> chosen = new ArrayList<>();
    private final Set<List<Integer>> failed = new HashSet<>();
    private int[] wanted = {};
    private int[] sticks = {};
    private long nodes;

    /** How a search ended. */
    enum End {
        FOUND,
        NONE,
        CUT_OFF
    }

    Completion(Model model, List<StickBound> bounds, long mostNodes) {
        this.model = model;
        this.bounds = bounds;
        this.mostNodes = mostNodes;
    }

    /** Looks for a plan of these pieces on these sticks; some may stay unused. */
    End search(int[] pieces, int[] available) {
        wanted = pieces.clone();
        sticks = available.clone();
        long[] spare = new long[bounds.size()];
        for (int b = 0; b < spare.length; b++) {
            StickBound bound = bounds.get(b);
            spare[b] = new StickBound(bound.value, bound.most, wanted).spare(sticks);
            if (spare[b] < 0) {
                return End.NONE;
            }
        }
        if (next(spare)) {
            return End.FOUND;
        }
        return nodes > mostNodes ? End.CUT_OFF : End.NONE;
    }

    List<Pattern> found() {
        return List.copyOf(chosen);
    }

    long nodes() {
        return nodes;
    }

    private boolean next(long[] spare) {
        int longest = 0;
        while (longest < wanted.length && wanted[longest] == 0) {
            longest++;
        }
        if (longest == wanted.length) {
            return true;
        }
        List<Integer> state = state();
        if (failed.contains(state)) {
            return false;
        }
        for (Pattern pattern : fillings(longest, spare)) {
            if (nodes > mostNodes) {
                return false;
            }
            long[] left = spare.clone();
            for (int b = 0; b < left.length; b++) {
                left[b] -= bounds.get(b).loss(pattern);
            }
            pattern.take(wanted, 1);
            sticks[pattern.stock]--;
            chosen.add(pattern);
            if (next(left)) {
                return true;
            }
            chosen.remove(chosen.size() - 1);
            sticks[pattern.stock]++;
            pattern.take(wanted, -1);
        }
        if (nodes <= mostNodes && failed.size() < MOST_REMEMBERED) {
            failed.add(state);
        }
        return false;
    }

    private List<Integer> state() {
        List<Integer> state = new ArrayList<>();
        Arrays.stream(wanted).forEach(state::add);
        Arrays.stream(sticks).forEach(state::add);
        return List.copyOf(state);
    }

    // The least waste first.
    private List<Pattern> fillings(int longest, long[] spare) {
        List<Pattern> all = new ArrayList<>();
        for (int s = 0; s < sticks.length; s++) {
            if (sticks[s] > 0 && model.weight[longest] <= model.capacity[s]) {
                int[] counts = new int[wanted.length];
                counts[longest] = 1;
                new Filling(s, counts, spare, all).from(longest, model.capacity[s] - model.weight[longest]);
            }
        }
        all.sort((a, b) -> {
            int byWaste = Long.compare(waste(a), waste(b));
            return byWaste != 0 ? byWaste : a.compareTo(b);
        });
        return all;
    }

    private long waste(Pattern pattern) {
        return model.capacity[pattern.stock] - pattern.sum(model.weight);
    }

    /** All fillings of one stick. */
    private final class Filling {
        private final int stock;
        private final int[] counts;
        private final long[] spare;
        private final List<Pattern> all;

        Filling(int stock, int[] counts, long[] spare, List<Pattern> all) {
            this.stock = stock;
            this.counts = counts;
            this.spare = spare;
            this.all = all;
        }

        void from(int kind, long room) {
            if (++nodes > mostNodes) {
                return;
            }
            int at = kind;
            while (at < wanted.length && (model.weight[at] > room || wanted[at] == counts[at])) {
                at++;
            }
            if (at == wanted.length) {
                keep(room);
                return;
            }
            int before = counts[at];
            int more = (int) StrictMath.min(wanted[at] - before, room / model.weight[at]);
            for (int take = more; take >= 0; take--) {
                counts[at] = before + take;
                from(at + 1, room - take * model.weight[at]);
            }
            counts[at] = before;
        }

        private void keep(long room) {
            if (!model.full(counts, wanted, room)) {
                return;
            }
            Pattern pattern = Pattern.of(stock, counts);
            if (StickBound.affordable(bounds, spare, pattern)) {
                all.add(pattern);
            }
        }
    }
}
