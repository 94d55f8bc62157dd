package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether whole numbers of given patterns make all pieces from given sticks: branch and bound. At each node the plan with
 * parts of sticks is solved; where a pattern comes out in parts, either at least the next whole number of it is cut, or at
 * most the last. That a node has no plan is recounted in whole numbers before it is believed.
 */
final class PatternTree {

    private static final double WHOLE = 1e-5;
    private static final int MOST_STEPS = 5000;
    private static final double SCALE = 1L << 30;

    private final Model model;
    private final List<Pattern> patterns;
    private final int mostNodes;
    private final List<Pattern> found = new ArrayList<>();
    private int nodes;
    private boolean doubtful;

    PatternTree(Model model, List<Pattern> patterns, int mostNodes) {
        this.model = model;
        this.patterns = patterns;
        this.mostNodes = mostNodes;
    }

    Completion.End search(int[] sticks) {
        if (go(model.demand.clone(), sticks.clone(), new TreeMap<>())) {
            return Completion.End.FOUND;
        }
        return doubtful || nodes >= mostNodes ? Completion.End.CUT_OFF : Completion.End.NONE;
    }

    List<Pattern> found() {
        return List.copyOf(found);
    }

    int nodes() {
        return nodes;
    }

    private boolean go(int[] wanted, int[] left, Map<Integer, Integer> most) {
        if (nodes++ >= mostNodes) {
            return false;
        }
        Node node = new Node(wanted, left, most);
        if (!node.solve()) {
            doubtful = true;
            return false;
        }
        if (node.uncut() > WHOLE) {
            doubtful |= !node.surelyImpossible();
            return false;
        }
        int part = node.largestPart();
        if (part < 0) {
            node.keepWhole();
            return true;
        }
        int whole = (int) StrictMath.floor(node.times[part]);
        Pattern pattern = patterns.get(part);
        int[] wantedThen = wanted.clone();
        int[] leftThen = left.clone();
        Map<Integer, Integer> mostThen = new TreeMap<>(most);
        int size = found.size();
        for (int i = 0; i <= whole; i++) {
            found.add(pattern);
        }
        for (int i = 0; i < pattern.kinds.length; i++) {
            int kind = pattern.kinds[i];
            wantedThen[kind] = StrictMath.max(0, wantedThen[kind] - (whole + 1) * pattern.counts[i]);
        }
        leftThen[pattern.stock] -= whole + 1;
        mostThen.computeIfPresent(part, (k, v) -> v - whole - 1);
        if (go(wantedThen, leftThen, mostThen)) {
            return true;
        }
        found.subList(size, found.size()).clear();
        Map<Integer, Integer> fewer = new TreeMap<>(most);
        fewer.put(part, whole);
        return go(wanted, left, fewer);
    }

    private final class Node {
        private final int[] wanted;
        private final int[] left;
        private final Map<Integer, Integer> most;
        private final int[] rowOfKind;
        private final int[] rowOfStock;
        private final Map<Integer, Integer> rowOfPattern = new TreeMap<>();
        private final Simplex simplex;
        private final int firstPattern;
        private final double[] times;
        private double[] solution = {};

        Node(int[] wanted, int[] left, Map<Integer, Integer> most) {
            this.wanted = wanted;
            this.left = left;
            this.most = most;
            rowOfKind = new int[wanted.length];
            rowOfStock = new int[left.length];
            times = new double[patterns.size()];
            int rows = 0;
            for (int kind = 0; kind < wanted.length; kind++) {
                rowOfKind[kind] = wanted[kind] > 0 ? rows++ : -1;
            }
            for (int s = 0; s < left.length; s++) {
                rowOfStock[s] = left[s] > 0 ? rows++ : -1;
            }
            for (int p : most.keySet()) {
                rowOfPattern.put(p, rows++);
            }
            double[] right = new double[rows];
            double[] cost = new double[rows];
            for (int kind = 0; kind < wanted.length; kind++) {
                if (rowOfKind[kind] >= 0) {
                    right[rowOfKind[kind]] = wanted[kind];
                    cost[rowOfKind[kind]] = model.weight[kind] / (double) model.weight[0];
                }
            }
            for (int s = 0; s < left.length; s++) {
                if (rowOfStock[s] >= 0) {
                    right[rowOfStock[s]] = left[s];
                }
            }
            rowOfPattern.forEach((p, row) -> right[row] = StrictMath.max(0, most.getOrDefault(p, 0)));
            simplex = new Simplex(right, cost);
            for (int row : rowOfKind) {
                if (row >= 0) {
                    simplex.add(new int[] {row}, new double[] {-1}, 0);
                }
            }
            firstPattern = simplex.size();
            for (int p = 0; p < patterns.size(); p++) {
                column(p);
            }
        }

        // A pattern whose stick is used up stays as a column of nothing, so that columns keep their places.
        private void column(int p) {
            Pattern pattern = patterns.get(p);
            List<Integer> rows = new ArrayList<>();
            List<Double> factors = new ArrayList<>();
            if (left[pattern.stock] > 0) {
                for (int i = 0; i < pattern.kinds.length; i++) {
                    if (rowOfKind[pattern.kinds[i]] >= 0) {
                        rows.add(rowOfKind[pattern.kinds[i]]);
                        factors.add((double) pattern.counts[i]);
                    }
                }
                rows.add(rowOfStock[pattern.stock]);
                factors.add(1.0);
                if (rowOfPattern.containsKey(p)) {
                    rows.add(rowOfPattern.getOrDefault(p, 0));
                    factors.add(1.0);
                }
            }
            simplex.add(
                    rows.stream().mapToInt(r -> r).toArray(),
                    factors.stream().mapToDouble(f -> f).toArray(),
                    0);
        }

        boolean solve() {
            boolean solved = simplex.solve(MOST_STEPS);
            solution = simplex.solution();
            System.arraycopy(solution, firstPattern, times, 0, times.length);
            return solved;
        }

        double uncut() {
            double sum = 0;
            for (int row : rowOfKind) {
                sum += row < 0 ? 0 : solution[row];
            }
            return sum;
        }

        int largestPart() {
            int best = -1;
            long most = 0;
            for (int p = 0; p < times.length; p++) {
                double part = times[p] - StrictMath.floor(times[p] + WHOLE);
                long rounded = StrictMath.round(part * 1e4);
                if (part > WHOLE && rounded > most) {
                    most = rounded;
                    best = p;
                }
            }
            return best;
        }

        void keepWhole() {
            for (int p = 0; p < times.length; p++) {
                for (int i = (int) StrictMath.floor(times[p] + 0.5); i > 0; i--) {
                    found.add(patterns.get(p));
                }
            }
        }

        // Values of pieces, sticks and limits in whole numbers: if what is wanted is worth more than all that may be
        // cut,
        // nothing can cut it.
        boolean surelyImpossible() {
            double[] duals = simplex.duals();
            long[] value = new long[wanted.length];
            long worth = 0;
            for (int kind = 0; kind < wanted.length; kind++) {
                value[kind] = rowOfKind[kind] < 0
                        ? 0
                        : (long) StrictMath.floor(StrictMath.max(0, duals[rowOfKind[kind]]) * SCALE);
                worth += value[kind] * wanted[kind];
            }
            long[] stick = new long[left.length];
            for (int p = 0; p < patterns.size(); p++) {
                Pattern pattern = patterns.get(p);
                if (!most.containsKey(p)) {
                    stick[pattern.stock] = StrictMath.max(stick[pattern.stock], pattern.sum(value));
                }
            }
            for (int s = 0; s < left.length; s++) {
                worth -= left[s] * stick[s];
            }
            for (Map.Entry<Integer, Integer> limited : most.entrySet()) {
                Pattern pattern = patterns.get(limited.getKey());
                long beyond = pattern.sum(value) - stick[pattern.stock];
                worth -= StrictMath.max(0, beyond) * StrictMath.max(0, limited.getValue());
            }
            return worth > 0;
        }
    }
}
