package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Makes a plan nicer without another stick: pieces change places between two sticks where that leaves fewer different layouts,
 * or as many and a longer rest in one place. Every step is better than the one before, so it ends; how good the end is,
 * nobody proves.
 */
final class Tidy {

    private static final int MOST_LAYOUTS = 60;
    private static final int MOST_ROUNDS = 200;

    private final Model model;
    private List<Pattern> plan;

    private Tidy(Model model, List<Pattern> plan) {
        this.model = model;
        this.plan = new ArrayList<>(plan);
    }

    static List<Pattern> up(Model model, List<Pattern> plan) {
        Tidy tidy = new Tidy(model, plan);
        int round = 0;
        while (round < MOST_ROUNDS && tidy.step()) {
            round++;
        }
        List<Pattern> all = new ArrayList<>(tidy.plan);
        all.sort(null);
        return all;
    }

    /** By how much a change makes a plan better; less is better, and less than nothing is an improvement. */
    private record Change(int layouts, double rests, List<Pattern> patterns) {
        boolean betterThan(Change other) {
            return layouts != other.layouts ? layouts < other.layouts : rests < other.rests;
        }
    }

    // The sum of squares grows where the same rest stands in fewer places.
    private double rests(Pattern pattern) {
        double rest = rest(pattern);
        return -rest * rest;
    }

    private double rest(Pattern pattern) {
        return model.capacity[pattern.stock] - pattern.sum(model.weight);
    }

    private boolean step() {
        Map<Pattern, Integer> counts = new TreeMap<>();
        plan.forEach(p -> counts.merge(p, 1, Integer::sum));
        if (counts.size() > MOST_LAYOUTS) {
            return false;
        }
        // What a rounding could be is no improvement.
        Change best = new Change(0, -1, List.of());
        for (Map.Entry<Pattern, Integer> a : counts.entrySet()) {
            for (Pattern b : counts.keySet()) {
                if (a.getKey().equals(b) && a.getValue() < 2) {
                    continue;
                }
                for (Pattern[] pair : moves(a.getKey(), b)) {
                    Change change = change(counts, List.of(a.getKey(), b, pair[0], pair[1]));
                    best = change.betterThan(best) ? change : best;
                }
            }
        }
        if (best.patterns.isEmpty()) {
            return false;
        }
        plan.remove(best.patterns.get(0));
        plan.remove(best.patterns.get(1));
        plan.add(best.patterns.get(2));
        plan.add(best.patterns.get(3));
        return true;
    }

    /** The first two patterns go, the last two come. */
    private Change change(Map<Pattern, Integer> counts, List<Pattern> patterns) {
        int layouts = 0;
        double rests = 0;
        for (int i = 0; i < 4; i++) {
            Pattern pattern = patterns.get(i);
            rests += i < 2 ? -rests(pattern) : rests(pattern);
            if (patterns.indexOf(pattern) == i) {
                int more = 0;
                for (int k = i; k < 4; k++) {
                    more += patterns.get(k).equals(pattern) ? (k < 2 ? -1 : 1) : 0;
                }
                int before = counts.getOrDefault(pattern, 0);
                layouts += (before + more > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
            }
        }
        return new Change(layouts, rests, patterns);
    }

    // A piece of b goes to a, or changes places with a shorter one of a.
    private List<Pattern[]> moves(Pattern a, Pattern b) {
        List<Pattern[]> all = new ArrayList<>();
        long room = (long) rest(a);
        for (int from : b.kinds) {
            if (model.weight[from] <= room && pieces(b) > 1) {
                all.add(pair(a, b, from, -1));
            }
            for (int to : a.kinds) {
                long more = model.weight[from] - model.weight[to];
                if (more > 0 && more <= room) {
                    all.add(pair(a, b, from, to));
                }
            }
        }
        return all;
    }

    private Pattern[] pair(Pattern a, Pattern b, int from, int to) {
        int[] inA = a.spread(model.kinds());
        int[] inB = b.spread(model.kinds());
        inA[from]++;
        inB[from]--;
        if (to >= 0) {
            inA[to]--;
            inB[to]++;
        }
        return new Pattern[] {Pattern.of(a.stock, inA), Pattern.of(b.stock, inB)};
    }

    private static int pieces(Pattern pattern) {
        int sum = 0;
        for (int count : pattern.counts) {
            sum += count;
        }
        return sum;
    }
}
