package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A task in whole numbers: kinds of pieces that differ in length, longest first, each with one kerf; kinds of stock that
 * differ in room or cost. One number stands for cost and sticks: cost × (sticks there may be + 1) + 1 for each new stick,
 * so that a smaller number is less cost, or as much cost and fewer sticks.
 */
final class Model {

    /** Of a price, two decimals count. */
    private static final double PRICE_STEPS = 100;

    /** No limit to the sticks of a stock. */
    static final int ENDLESS = Integer.MAX_VALUE;

    final long[] weight;
    final int[] demand;
    /** Indices of the task's pieces, of each kind. */
    final List<List<Integer>> pieces;

    final long[] capacity;
    final long[] cost;
    final int[] limit;
    /** The task's stocks, of each kind; none of the sticks that are missing. */
    final List<List<StockLength>> stocks;

    /** What one more unit of cost counts against one more stick. */
    final long costWeight;
    /** What the units of cost were divided by. */
    final double costUnit;

    private Model(Map<Long, List<Integer>> byWeight, List<Offer> offers, CuttingTask task, Scale scale) {
        int kinds = byWeight.size();
        weight = new long[kinds];
        demand = new int[kinds];
        pieces = new ArrayList<>();
        int kind = 0;
        for (Map.Entry<Long, List<Integer>> entry : byWeight.entrySet()) {
            weight[kind] = entry.getKey();
            for (int piece : entry.getValue()) {
                demand[kind] = StrictMath.addExact(
                        demand[kind], task.pieces().get(piece).count());
            }
            pieces.add(List.copyOf(entry.getValue()));
            kind++;
        }
        costWeight = scale.costWeight;
        costUnit = scale.unit / (task.priced() ? PRICE_STEPS : 1000);
        capacity = offers.stream().mapToLong(o -> o.room).toArray();
        limit = offers.stream().mapToInt(Offer::limit).toArray();
        stocks = offers.stream().map(o -> List.copyOf(o.stocks)).toList();
        cost = new long[offers.size()];
        for (int s = 0; s < cost.length; s++) {
            Offer offer = offers.get(s);
            cost[s] = offer.missing() ? scale.missing() : offer.offcut ? 0 : offer.cost / scale.unit * costWeight + 1;
        }
    }

    private record Scale(long unit, long costWeight, long dearest, long mostPieces) {
        // More than all pieces of a stick from the dearest sticks, one from each.
        long missing() {
            return (dearest / unit * costWeight + 1) * (mostPieces + 1);
        }
    }

    /** Stock of one room and cost. */
    private static final class Offer {
        private final long room;
        private final long cost;
        private final boolean offcut;
        private final List<StockLength> stocks = new ArrayList<>();

        Offer(long room, long cost, boolean offcut) {
            this.room = room;
            this.cost = cost;
            this.offcut = offcut;
        }

        boolean missing() {
            return stocks.isEmpty();
        }

        int limit() {
            if (missing() || stocks.stream().anyMatch(s -> s.atHand().isEmpty())) {
                return ENDLESS;
            }
            long sum = stocks.stream().mapToLong(s -> s.atHand().orElse(0)).sum();
            return (int) StrictMath.min(sum, ENDLESS - 1);
        }
    }

    /**
     * Turns a task into numbers.
     *
     * @param task what is to be cut; pieces that are longer than all stock are left out
     * @return the model; without kinds where nothing can be cut
     */
    static Model of(CuttingTask task) {
        List<Offer> offers = offers(task);
        long widest = offers.stream().mapToLong(o -> o.room).max().orElse(0);
        long kerf = Grains.up(task.saw().kerf());
        Map<Long, List<Integer>> byWeight = new TreeMap<>((a, b) -> Long.compare(b, a));
        long count = 0;
        for (int i = 0; i < task.pieces().size(); i++) {
            CutPiece piece = task.pieces().get(i);
            long weight = Grains.up(piece.length()) + kerf;
            if (weight <= widest) {
                byWeight.computeIfAbsent(weight, w -> new ArrayList<>()).add(i);
                count += piece.count();
            }
        }
        long least = byWeight.keySet().stream().reduce((a, b) -> b).orElse(0L);
        List<Offer> usable =
                new ArrayList<>(offers.stream().filter(o -> o.room >= least).toList());
        long unit = 0;
        long dearest = 0;
        for (Offer offer : usable) {
            unit = offer.offcut ? unit : gcd(unit, offer.cost);
            dearest = StrictMath.max(dearest, offer.cost);
        }
        boolean endless = usable.stream().anyMatch(o -> o.room == widest && o.limit() == ENDLESS);
        if (!endless && !usable.isEmpty()) {
            usable.add(new Offer(widest, 0, false));
        }
        return new Model(
                byWeight,
                usable,
                task,
                new Scale(StrictMath.max(unit, 1), count + 1, dearest, widest / StrictMath.max(1, least)));
    }

    private static List<Offer> offers(CuttingTask task) {
        Map<List<Long>, Offer> offers =
                new TreeMap<>((a, b) -> java.util.Arrays.compare(a.toArray(Long[]::new), b.toArray(Long[]::new)));
        for (StockLength stock : task.stocks()) {
            if (stock.atHand().orElse(1) == 0) {
                continue;
            }
            long room = task.saw().room(stock.length());
            long cost = stock.offcut()
                    ? 0
                    : stock.price()
                            .map(p -> StrictMath.round(p * PRICE_STEPS))
                            .orElseGet(() -> Grains.down(stock.length()));
            // Offcuts first, then new stock, long before short, cheap before dear.
            List<Long> key = List.of(stock.offcut() ? 0L : 1L, -room, cost);
            offers.computeIfAbsent(key, k -> new Offer(room, cost, stock.offcut()))
                    .stocks
                    .add(stock);
        }
        return List.copyOf(offers.values());
    }

    static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    int kinds() {
        return weight.length;
    }

    int stocks() {
        return capacity.length;
    }

    boolean fresh(int stock) {
        return cost[stock] > 0;
    }

    boolean missing(int stock) {
        return stocks.get(stock).isEmpty();
    }

    /** Cost of all sticks, with their number. */
    /** Whether none of the pieces that are wanted fits into what is left of a stick. */
    boolean full(int[] counts, int[] wanted, long room) {
        for (int i = 0; i < wanted.length; i++) {
            if (counts[i] < wanted[i] && weight[i] <= room) {
                return false;
            }
        }
        return true;
    }

    long value(int[] sticks) {
        long sum = 0;
        for (int s = 0; s < sticks.length; s++) {
            sum += sticks[s] * cost[s];
        }
        return sum;
    }

    /** How many sticks of each stock are cut. */
    int[] sticks(List<Pattern> cut) {
        int[] sticks = new int[stocks()];
        cut.forEach(p -> sticks[p.stock]++);
        return sticks;
    }
}
