package collarwright.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

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
        for (int round = 0; round < MOST_ROUNDS && tidy.step(); round++) {
            continue;
        }
        List<Pattern> all = new ArrayList<>(tidy.plan);
        all.sort(null);
        return all;
    }

    /** How good a plan is; smaller is better. */
    private record Score(int layouts, double rests) implements Comparable<Score> {
        @Override
        public int compareTo(Score other) {
            int byLayouts = Integer.compare(layouts, other.layouts);
            return byLayouts != 0 ? byLayouts : Double.compare(rests, other.rests);
        }
    }

    // The sum of squares grows where the same rest stands in fewer places.
    private Score score(Map<Pattern, Integer> counts) {
        double rests = 0;
        for (Map.Entry<Pattern, Integer> entry : counts.entrySet()) {
            double rest = rest(entry.getKey());
            rests -= entry.getValue() * rest * rest;
        }
        return new Score(counts.size(), rests);
    }

    private double rest(Pattern pattern) {
        return model.capacity[pattern.stock] - pattern.sum(model.weight);
    }

    private Map<Pattern, Integer> counted() {
        Map<Pattern, Integer> counts = new HashMap<>();
        plan.forEach(p -> counts.merge(p, 1, Integer::sum));
        return counts;
    }

    private boolean step() {
        Map<Pattern, Integer> counts = new java.util.TreeMap<>(counted());
        List<Pattern> different = new ArrayList<>(new TreeSet<>(plan));
        if (different.size() > MOST_LAYOUTS) {
            return false;
        }
        Score now = score(counts);
        Score best = now;
        List<Pattern> change = List.of();
        for (Pattern a : different) {
            for (Pattern b : different) {
                if (a.equals(b) && counts.getOrDefault(a, 0) < 2) {
                    continue;
                }
                for (Pattern[] pair : moves(a, b)) {
                    Score then = score(changed(counts, a, b, pair));
                    if (then.compareTo(best) < 0) {
                        best = then;
                        change = List.of(a, b, pair[0], pair[1]);
                    }
                }
            }
        }
        if (change.isEmpty()) {
            return false;
        }
        plan.remove(change.get(0));
        plan.remove(change.get(1));
        plan.add(change.get(2));
        plan.add(change.get(3));
        return true;
    }

    private static Map<Pattern, Integer> changed(Map<Pattern, Integer> counts, Pattern a, Pattern b, Pattern[] pair) {
        Map<Pattern, Integer> then = new java.util.TreeMap<>(counts);
        for (Pattern out : new Pattern[] {a, b}) {
            then.merge(out, -1, (x, y) -> x + y == 0 ? null : Integer.valueOf(x + y));
        }
        for (Pattern in : pair) {
            then.merge(in, 1, Integer::sum);
        }
        return then;
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
