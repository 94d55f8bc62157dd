package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Looks for the plan of the least cost with the fewest sticks: numbers of sticks are taken in this order, and each is either
 * shown to be too few, by a bound or by trying everything, or cut. The first that is cut is the best. Where neither comes out
 * within a number of steps, the search goes on and the bound stays there.
 */
final class Search {

    /** With more lengths than these, sticks are filled longest first and only length bounds the cost. */
    private static final int MOST_KINDS = 400;

    private static final int MOST_NUMBERS = 600;
    private static final int MOST_PASSED = 12;
    private static final int MOST_DIVES = 400;
    private static final int MOST_PATTERNS = 3000;
    private static final int MOST_TREE = 400;
    private static final long MOST_NODES = 100_000;

    private final Model model;
    private final Knapsack knapsack;
    private final StickCounts counts;
    private List<Pattern> pool = List.of();
    private List<Pattern> best = List.of();
    private long value;
    private long bound = -1;
    private List<Pattern> tried = List.of();
    private long nodes;

    Search(Model model) {
        this.model = model;
        knapsack = new Knapsack(model);
        counts = new StickCounts(model);
    }

    /**
     * What was found.
     *
     * @param plan one pattern for each stick
     * @param value its value
     * @param bound no plan has less
     * @param nodes steps taken
     */
    record Found(List<Pattern> plan, long value, long bound, long nodes) {
        /** Keeps the list. */
        Found {
            plan = List.copyOf(plan);
        }
    }

    /** Searches; the plan found is made nicer before it is handed out. */
    Found run(UnaryOperator<List<Pattern>> nicer) {
        counts.keep(StickBound.byLength(model));
        if (model.kinds() > MOST_KINDS) {
            List<Pattern> plan = new ArrayList<>();
            new LongestFirst(model).fill(model.demand.clone(), model.limit.clone(), plan);
            value = model.value(model.sticks(plan));
            return new Found(plan, value, leastByBounds(), 0);
        }
        Relaxation root = new Relaxation(model, knapsack, model.demand, model.limit, true);
        singles().forEach(root::offer);
        Relaxation.Result relaxed = root.solve(b -> false);
        relaxed.bounds().forEach(counts::keep);
        pool = root.patterns();
        Dive first = new Dive(model, knapsack, pool, MOST_DIVES);
        best = first.cheap();
        value = model.value(model.sticks(best));
        nodes += first.solved();
        pool = first.pool();
        numbers();
        List<Pattern> plan = nicer.apply(best);
        return new Found(plan, value, bound < 0 ? value : StrictMath.min(bound, value), nodes);
    }

    // One kind on each stick: something to start from.
    private List<Pattern> singles() {
        List<Pattern> all = new ArrayList<>();
        for (int s = 0; s < model.stocks(); s++) {
            for (int kind = 0; kind < model.kinds(); kind++) {
                int[] one = new int[model.kinds()];
                one[kind] = (int) StrictMath.min(model.demand[kind], model.capacity[s] / model.weight[kind]);
                all.add(Pattern.of(s, one));
            }
        }
        return all;
    }

    private void numbers() {
        int passed = 0;
        for (int i = 0; i < MOST_NUMBERS && passed < MOST_PASSED && !knapsack.spentAll(); i++) {
            Optional<int[]> sticks = counts.below(value);
            if (sticks.isEmpty()) {
                if (counts.cutOff() && bound < 0) {
                    bound = leastByBounds();
                }
                return;
            }
            Verdict verdict = judge(sticks.get());
            if (verdict == Verdict.OPEN) {
                passed++;
                bound = bound < 0 ? model.value(sticks.get()) : bound;
                counts.pass(sticks.get());
            }
        }
        if (bound < 0) {
            bound = counts.below(value).map(model::value).orElseGet(() -> counts.cutOff() ? leastByBounds() : value);
        }
    }

    private enum Verdict {
        DECIDED,
        OPEN
    }

    private Verdict judge(int[] sticks) {
        nodes++;
        Relaxation relaxation = new Relaxation(model, knapsack, model.demand, sticks, false);
        pool.forEach(relaxation::offer);
        Relaxation.Result result = relaxation.solve(b -> b.spare(sticks) < 0);
        List<StickBound> broken =
                result.bounds().stream().filter(b -> b.spare(sticks) < 0).toList();
        if (!broken.isEmpty()) {
            counts.keep(broken.get(broken.size() - 1));
            return Verdict.DECIDED;
        }
        Dive dive = new Dive(model, knapsack, relaxation.patterns(), MOST_DIVES);
        List<Pattern> plan = result.possible() ? dive.within(sticks) : List.of();
        nodes += dive.solved();
        if (plan.isEmpty()) {
            Completion.End end = tryAll(sticks);
            if (end == Completion.End.NONE) {
                counts.refuse(sticks);
                return Verdict.DECIDED;
            }
            if (end == Completion.End.CUT_OFF) {
                return Verdict.OPEN;
            }
            plan = tried;
        }
        best = plan;
        value = model.value(model.sticks(plan));
        return Verdict.DECIDED;
    }

    private Completion.End tryAll(int[] sticks) {
        Optional<List<Pattern>> few = new LowLoss(model, counts.bounds(), sticks, MOST_PATTERNS).list(sticks);
        if (few.isPresent()) {
            PatternTree tree = new PatternTree(model, few.get(), MOST_TREE);
            Completion.End end = tree.search(sticks);
            nodes += tree.nodes();
            if (end != Completion.End.CUT_OFF) {
                tried = trimmed(tree.found());
                return end;
            }
        }
        Completion all = new Completion(model, counts.bounds(), MOST_NODES);
        Completion.End end = all.search(model.demand, sticks);
        nodes += all.nodes();
        tried = all.found();
        return end;
    }

    private List<Pattern> trimmed(List<Pattern> plan) {
        int[] wanted = model.demand.clone();
        List<Pattern> cut = new ArrayList<>();
        for (Pattern pattern : plan) {
            Pattern once = pattern.trimmed(wanted);
            once.take(wanted, 1);
            if (!once.empty()) {
                cut.add(once);
            }
        }
        return cut;
    }

    // Where there are too many kinds of sticks to go through all numbers: what the bounds say by themselves.
    private long leastByBounds() {
        long least = 0;
        int[] offcuts = new int[model.stocks()];
        for (int s = 0; s < offcuts.length; s++) {
            offcuts[s] = model.fresh(s) ? 0 : model.limit[s];
        }
        for (StickBound b : counts.bounds()) {
            double cheapest = Double.POSITIVE_INFINITY;
            for (int s = 0; s < offcuts.length; s++) {
                if (model.fresh(s) && b.most[s] > 0) {
                    cheapest = StrictMath.min(cheapest, (double) model.cost[s] / b.most[s]);
                }
            }
            long lacking = -b.spare(offcuts);
            if (lacking > 0 && cheapest < Double.POSITIVE_INFINITY) {
                least = StrictMath.max(least, (long) StrictMath.ceil(lacking * cheapest * (1 - 1e-9)));
            }
        }
        return StrictMath.min(least, value);
    }
}
