package collarwright.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The plan with parts of sticks allowed: patterns are made as they are needed, each the best filling for the values of the
 * pieces so far.
 *
 * <p>Source: P.C. Gilmore, R.E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9
 * (1961) 849-859.
 */
final class Relaxation {

    private static final int MOST_ROUNDS = 3000;
    private static final int MOST_STEPS = 20_000;
    private static final long MOST_WORK = 3_000_000_000L;
    private static final double ENOUGH = 1e-7;
    /** Right sides are a little below what is wanted, each by another part of it, so that steps do not stand still. */
    private static final double NUDGE = 1e-6;

    private final Model model;
    private final Knapsack knapsack;
    private final int[] demand;
    private final int[] limit;
    private final boolean byCost;
    private final int[] rowOfKind;
    private final int[] rowOfStock;
    private final List<Pattern> cut = new ArrayList<>();
    private final List<Integer> columnOf = new ArrayList<>();
    private final Set<Pattern> known = new HashSet<>();
    private Simplex simplex;
    private double unit;
    private double[] costs = {};
    private int rows;

    /** Result of pricing: the bound it proves, and new patterns. */
    private record Priced(StickBound bound, List<Pattern> better) {}

    /**
     * Sets a problem.
     *
     * @param byCost true for the least cost (pieces may always be cut); false for the least length that stays uncut with so
     *     many sticks
     */
    Relaxation(Model model, Knapsack knapsack, int[] demand, int[] limit, boolean byCost) {
        this.model = model;
        this.knapsack = knapsack;
        this.demand = demand.clone();
        this.limit = limit.clone();
        this.byCost = byCost;
        rowOfKind = new int[model.kinds()];
        rowOfStock = new int[model.stocks()];
        simplex = start();
    }

    private Simplex start() {
        for (int kind = 0; kind < demand.length; kind++) {
            rowOfKind[kind] = demand[kind] > 0 ? rows++ : -1;
        }
        for (int s = 0; s < limit.length; s++) {
            rowOfStock[s] = limit[s] == Model.ENDLESS ? -1 : rows++;
        }
        double[] right = new double[rows];
        double[] startCost = new double[rows];
        long dearest = 0;
        for (long c : model.cost) {
            dearest = StrictMath.max(dearest, c);
        }
        unit = byCost ? StrictMath.max(1, dearest) : model.weight[0];
        for (int kind = 0; kind < demand.length; kind++) {
            int row = rowOfKind[kind];
            if (row >= 0) {
                right[row] = demand[kind] * (1 - NUDGE * (1 + row * 7919 % 1000) / 1000.0);
                startCost[row] = byCost ? 2.0 : model.weight[kind] / unit;
            }
        }
        for (int s = 0; s < limit.length; s++) {
            if (rowOfStock[s] >= 0) {
                right[rowOfStock[s]] = limit[s];
            }
        }
        costs = new double[model.stocks()];
        for (int s = 0; s < costs.length; s++) {
            costs[s] = byCost ? model.cost[s] / unit : 0;
        }
        Simplex fresh = new Simplex(right, startCost);
        for (int row : rowOfKind) {
            if (row >= 0) {
                fresh.add(new int[] {row}, new double[] {-1}, 0);
            }
        }
        return fresh;
    }

    /** Offers a pattern; one that cuts too much, or from sticks that are not there, is left out. */
    void offer(Pattern pattern) {
        if (pattern.empty() || limit[pattern.stock] == 0 || !pattern.within(demand) || !known.add(pattern)) {
            return;
        }
        int stockRow = rowOfStock[pattern.stock];
        int n = pattern.kinds.length;
        int[] at = new int[stockRow < 0 ? n : n + 1];
        double[] factors = new double[at.length];
        for (int i = 0; i < n; i++) {
            at[i] = rowOfKind[pattern.kinds[i]];
            factors[i] = pattern.counts[i];
        }
        if (stockRow >= 0) {
            at[n] = stockRow;
            factors[n] = 1;
        }
        cut.add(pattern);
        columnOf.add(simplex.add(at, factors, costs[pattern.stock]));
    }

    /** What came out. */
    record Result(List<Share> shares, double uncut, List<StickBound> bounds) {
        /** Keeps the lists. */
        Result {
            shares = List.copyOf(shares);
            bounds = List.copyOf(bounds);
        }

        boolean possible() {
            return uncut < 1e-5;
        }
    }

    /** A pattern and how often it is cut, more than 0. */
    record Share(Pattern pattern, double times) {}

    /**
     * Solves the problem.
     *
     * @param enough tells of a bound that nothing more needs to be known
     */
    Result solve(java.util.function.Predicate<StickBound> enough) {
        List<StickBound> bounds = new ArrayList<>();
        for (int round = 0; round < MOST_ROUNDS && !knapsack.spentAll(); round++) {
            long stepsBefore = simplex.steps();
            boolean solved = simplex.solve((int) StrictMath.min(MOST_STEPS, MOST_WORK / (3L * rows * rows + 1)));
            knapsack.spend((simplex.steps() - stepsBefore) * ((long) rows * rows * 3 + 8L * cut.size()));
            if (!solved) {
                break;
            }
            if (!byCost && uncut(simplex.solution()) < ENOUGH) {
                break;
            }
            Optional<Priced> priced = priced(simplex.duals());
            if (priced.isEmpty()) {
                break;
            }
            bounds.add(priced.get().bound);
            if (enough.test(priced.get().bound)) {
                break;
            }
            int before = cut.size();
            priced.get().better.forEach(this::offer);
            if (cut.size() == before) {
                break;
            }
        }
        double[] solution = simplex.solution();
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < cut.size(); i++) {
            double times = solution[columnOf.get(i)];
            if (times > ENOUGH) {
                shares.add(new Share(cut.get(i), times));
            }
        }
        return new Result(shares, uncut(solution), bounds.subList(StrictMath.max(0, bounds.size() - 3), bounds.size()));
    }

    private double uncut(double[] solution) {
        double sum = 0;
        for (int kind = 0; kind < demand.length; kind++) {
            if (rowOfKind[kind] >= 0) {
                sum += solution[rowOfKind[kind]];
            }
        }
        return sum;
    }

    private Optional<Priced> priced(double[] duals) {
        double scale = StrictMath.max(1, StrictMath.floor((double) (1L << 31) / unit)) * unit;
        long[] values = new long[demand.length];
        for (int kind = 0; kind < demand.length; kind++) {
            int row = rowOfKind[kind];
            values[kind] = row < 0 ? 0 : (long) StrictMath.floor(StrictMath.max(0, duals[row]) * scale);
        }
        long[] most = new long[model.stocks()];
        List<Pattern> better = new ArrayList<>();
        for (int s = 0; s < most.length; s++) {
            Knapsack.Filling filling = knapsack.fill(values, demand, model.capacity[s]);
            most[s] = filling.bound();
            double dual = rowOfStock[s] < 0 ? 0 : StrictMath.min(0, duals[rowOfStock[s]]);
            double gain = filling.value() / scale + dual - costs[s];
            if (limit[s] > 0 && gain > ENOUGH * StrictMath.max(costs[s], 1e-2)) {
                better.add(Pattern.of(s, filling.counts()));
            }
        }
        return Optional.of(new Priced(new StickBound(values, most, demand), better));
    }

    /** Patterns made or offered, in order. */
    List<Pattern> patterns() {
        return List.copyOf(cut);
    }
}
