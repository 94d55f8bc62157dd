package collarwright.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plans which piece is cut from which stick: offcuts first, then the least cost of new sticks, then the fewest of them; then,
 * without a proof, few different layouts and one long rest.
 *
 * <p>Cost is the price of the new sticks, to two decimals; where there are no prices, it is their length.
 *
 * <p>Method: the relaxation of P.C. Gilmore and R.E. Gomory, A linear programming approach to the cutting-stock problem,
 * Operations Research 9 (1961) 849-859, gives patterns and bounds; the bounds are recounted in whole numbers, so that no
 * rounding can make a plan look proven; whole sticks are found by diving and by trying every filling. The work is cut off by a
 * number of steps, so that the same task gives the same plan on every machine.
 */
public final class CuttingPlanner {

    private CuttingPlanner() {}

    /**
     * Plans a task.
     *
     * @param task pieces, stock and saw
     * @return the plan; pieces that are longer than all stock, or for which no stock is left, are uncut
     */
    public static CutPlan plan(CuttingTask task) {
        Model model = Model.of(task);
        if (model.kinds() == 0) {
            return new CutPlan(task, List.of(), uncut(task, model, List.of()), new CutProof(0, 0, 0, 0, 0));
        }
        Search.Found found = new Search(model).run(plan -> Tidy.up(model, plan));
        List<Pattern> cut =
                found.plan().stream().filter(p -> !model.missing(p.stock)).toList();
        List<Pattern> missing =
                found.plan().stream().filter(p -> model.missing(p.stock)).toList();
        return new CutPlan(
                task, layouts(task, model, cut), uncut(task, model, missing), proof(model, cut, missing, found));
    }

    private static CutProof proof(Model model, List<Pattern> cut, List<Pattern> missing, Search.Found found) {
        long value = model.value(model.sticks(cut));
        long bound = missing.isEmpty() ? found.bound() : value;
        long cost = value / model.costWeight;
        long least = bound / model.costWeight;
        int sticks = (int) (value % model.costWeight);
        int fewest = cost == least ? (int) (bound % model.costWeight) : 0;
        return new CutProof(cost * model.costUnit, least * model.costUnit, sticks, fewest, found.nodes());
    }

    private static List<Integer> uncut(CuttingTask task, Model model, List<Pattern> missing) {
        int[] left = task.pieces().stream().mapToInt(CutPiece::count).toArray();
        model.pieces.forEach(same -> same.forEach(piece -> left[piece] = 0));
        for (Pattern pattern : missing) {
            for (int i = 0; i < pattern.kinds.length; i++) {
                List<Integer> same = model.pieces.get(pattern.kinds[i]);
                // The last of equal pieces are those that wait.
                int rest = pattern.counts[i];
                for (int k = same.size() - 1; k >= 0 && rest > 0; k--) {
                    int piece = same.get(k);
                    int more = StrictMath.min(rest, task.pieces().get(piece).count() - left[piece]);
                    left[piece] += more;
                    rest -= more;
                }
            }
        }
        List<Integer> all = java.util.Arrays.stream(left).boxed().toList();
        return all.stream().allMatch(n -> n == 0) ? List.of() : all;
    }

    private static List<StickLayout> layouts(CuttingTask task, Model model, List<Pattern> cut) {
        int[] left = task.pieces().stream().mapToInt(CutPiece::count).toArray();
        Map<Pattern, Integer> runs = new TreeMap<>();
        cut.forEach(p -> runs.merge(p, 1, Integer::sum));
        List<Map.Entry<Pattern, Integer>> order = new ArrayList<>(runs.entrySet());
        order.sort(Comparator.comparingInt((Map.Entry<Pattern, Integer> e) -> e.getKey().stock)
                .thenComparing(e -> -e.getValue())
                .thenComparing(Map.Entry::getKey));
        List<int[]> stockLeft = new ArrayList<>();
        for (List<StockLength> same : model.stocks) {
            stockLeft.add(same.stream()
                    .mapToInt(s -> s.atHand().orElse(Model.ENDLESS))
                    .toArray());
        }
        List<StickLayout> layouts = new ArrayList<>();
        for (Map.Entry<Pattern, Integer> entry : order) {
            for (int run = 0; run < entry.getValue(); run++) {
                List<StickLayout.Portion> portions = portions(entry.getKey(), model, left);
                StockLength stock = taken(model.stocks.get(entry.getKey().stock), stockLeft.get(entry.getKey().stock));
                add(layouts, StickLayout.of(task, stock, 1, portions));
            }
        }
        return layouts;
    }

    private static void add(List<StickLayout> layouts, StickLayout one) {
        StickLayout last = layouts.isEmpty() ? one : layouts.get(layouts.size() - 1);
        boolean alike = !layouts.isEmpty()
                && last.stock().equals(one.stock())
                && last.portions().equals(one.portions());
        if (alike) {
            layouts.set(
                    layouts.size() - 1, new StickLayout(last.stock(), last.runs() + 1, last.portions(), last.sums()));
        } else {
            layouts.add(one);
        }
    }

    private static StockLength taken(List<StockLength> same, int[] left) {
        int at = 0;
        while (left[at] == 0) {
            at++;
        }
        left[at] -= left[at] == Model.ENDLESS ? 0 : 1;
        return same.get(at);
    }

    private static List<StickLayout.Portion> portions(Pattern pattern, Model model, int[] left) {
        List<StickLayout.Portion> portions = new ArrayList<>();
        for (int i = 0; i < pattern.kinds.length; i++) {
            int rest = pattern.counts[i];
            for (int piece : model.pieces.get(pattern.kinds[i])) {
                int count = StrictMath.min(rest, left[piece]);
                if (count > 0) {
                    portions.add(new StickLayout.Portion(piece, count));
                    left[piece] -= count;
                    rest -= count;
                }
            }
        }
        return portions;
    }
}
