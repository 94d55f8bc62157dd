package collarwright.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for whole sticks near the plan with parts of sticks: what is whole there is kept, then the largest part is made one
 * stick, and the rest is solved anew. Where that fails, the next largest parts are tried, at few places of the way.
 */
final class Dive {

    private static final double WHOLE = 1e-4;
    private static final int FEW_PIECES = 24;
    private static final long FEW_NODES = 20_000;

    private final Model model;
    private final Knapsack knapsack;
    private final List<Pattern> pool;
    private final int mostSolved;
    private int solved;

    Dive(Model model, Knapsack knapsack, List<Pattern> pool, int mostSolved) {
        this.model = model;
        this.knapsack = knapsack;
        this.pool = new ArrayList<>(pool);
        this.mostSolved = mostSolved;
    }

    int solved() {
        return solved;
    }

    /** Patterns that turned up on the way, too. */
    List<Pattern> pool() {
        return List.copyOf(pool);
    }

    /** Any plan, at little cost; sticks that are missing make it always possible. */
    List<Pattern> cheap() {
        int[] wanted = model.demand.clone();
        int[] left = model.limit.clone();
        List<Pattern> plan = new ArrayList<>();
        while (pieces(wanted) > 0) {
            if (knapsack.spentAll()) {
                new LongestFirst(model).fill(wanted, left, plan);
                return plan;
            }
            List<Relaxation.Share> shares = relaxed(wanted, left, true).shares();
            if (shares.isEmpty()) {
                new LongestFirst(model).fill(wanted, left, plan);
            } else if (!whole(shares, wanted, left, plan)) {
                take(ordered(shares).get(0).pattern(), wanted, left, plan);
            }
        }
        return plan;
    }

    /** A plan with no more than these sticks; none where the search finds none. */
    List<Pattern> within(int[] sticks) {
        for (int turns = 0; turns <= 3 && solved < mostSolved && !knapsack.spentAll(); turns++) {
            List<Pattern> plan = new ArrayList<>();
            if (go(model.demand.clone(), sticks.clone(), plan, turns)) {
                return plan;
            }
        }
        return List.of();
    }

    private boolean go(int[] wanted, int[] left, List<Pattern> plan, int turns) {
        while (true) {
            int pieces = pieces(wanted);
            if (pieces == 0) {
                return true;
            }
            if (pieces <= FEW_PIECES) {
                Completion rest = new Completion(model, List.of(StickBound.byLength(model)), FEW_NODES);
                Completion.End end = rest.search(wanted, left);
                if (end != Completion.End.CUT_OFF) {
                    plan.addAll(rest.found());
                    return end == Completion.End.FOUND;
                }
            }
            if (solved >= mostSolved || knapsack.spentAll()) {
                return false;
            }
            Relaxation.Result result = relaxed(wanted, left, false);
            if (!result.possible()) {
                return false;
            }
            if (!whole(result.shares(), wanted, left, plan)) {
                return part(ordered(result.shares()), wanted, left, plan, turns);
            }
        }
    }

    private boolean part(List<Relaxation.Share> shares, int[] wanted, int[] left, List<Pattern> plan, int turns) {
        int size = plan.size();
        for (int i = 0; i <= turns && i < shares.size(); i++) {
            int[] wantedThen = wanted.clone();
            int[] leftThen = left.clone();
            take(shares.get(i).pattern(), wantedThen, leftThen, plan);
            if (go(wantedThen, leftThen, plan, turns - i)) {
                return true;
            }
            plan.subList(size, plan.size()).clear();
        }
        return false;
    }

    private Relaxation.Result relaxed(int[] wanted, int[] left, boolean byCost) {
        solved++;
        Relaxation relaxation = new Relaxation(model, knapsack, wanted, left, byCost);
        pool.forEach(relaxation::offer);
        int offered = relaxation.patterns().size();
        Relaxation.Result result = relaxation.solve(bound -> !byCost && bound.spare(left) < 0);
        List<Pattern> all = relaxation.patterns();
        pool.addAll(all.subList(offered, all.size()));
        return result;
    }

    private boolean whole(List<Relaxation.Share> shares, int[] wanted, int[] left, List<Pattern> plan) {
        boolean any = false;
        for (Relaxation.Share share : ordered(shares)) {
            for (int times = (int) (share.times() + WHOLE); times > 0; times--) {
                any |= take(share.pattern(), wanted, left, plan);
            }
        }
        return any;
    }

    private static boolean take(Pattern pattern, int[] wanted, int[] left, List<Pattern> plan) {
        Pattern cut = pattern.trimmed(wanted);
        if (cut.empty() || left[cut.stock] == 0) {
            return false;
        }
        cut.take(wanted, 1);
        if (left[cut.stock] != Model.ENDLESS) {
            left[cut.stock]--;
        }
        plan.add(cut);
        return true;
    }

    // Rounded, so that two parts which differ by an error of rounding stay in the order of their patterns.
    private static List<Relaxation.Share> ordered(List<Relaxation.Share> shares) {
        return shares.stream()
                .sorted(Comparator.comparingLong((Relaxation.Share s) -> -StrictMath.round(s.times() * 1e4))
                        .thenComparing(Relaxation.Share::pattern))
                .toList();
    }

    private static int pieces(int[] wanted) {
        int sum = 0;
        for (int count : wanted) {
            sum += count;
        }
        return sum;
    }
}
