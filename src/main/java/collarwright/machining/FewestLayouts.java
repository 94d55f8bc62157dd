package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Lays an order on the fewest sticks, with few layouts, and among those with little turning.
 *
 * <p>Every collar takes one place, so the fewest sticks are the order over the places of a stick, rounded up. Layouts:
 * {@link GreedyMixes} gives ways, {@link LayoutSearch} looks through everything with fewer layouts, as far as its trials
 * go, and so proves how few there can be.
 *
 * @param mixes what lies on the sticks, in order
 * @param leastLayouts proven: as many sticks cannot be laid with fewer layouts
 */
record FewestLayouts(List<Mix> mixes, int leastLayouts) {

    /** Some tens of milliseconds; kits and orders of a few domes end long before. Our choice, no source. */
    private static final long TRIALS = 2_000_000;

    FewestLayouts {
        mixes = List.copyOf(mixes);
    }

    /**
     * Lays an order.
     *
     * @param demand collars of each pattern, 1 or more each; at least one pattern
     * @param capacity collars that a stick holds, 1 or more
     * @param turning how far one stick of a mix turns in all of its programs
     * @return the sticks with what is proven about their layouts
     */
    static FewestLayouts of(int[] demand, int capacity, ToDoubleFunction<Mix> turning) {
        List<List<Mix>> ways = new GreedyMixes(demand, capacity).ways();
        int fewest = ways.stream().mapToInt(List::size).min().orElseThrow();
        long total = 0;
        for (int d : demand) {
            total += d;
        }
        long sticks = (total + capacity - 1) / capacity;
        LayoutSearch search = new LayoutSearch(demand, capacity, TRIALS);
        int proven = StrictMath.max(1, (demand.length + capacity - 1) / capacity);
        List<List<Mix>> all = new ArrayList<>(ways);
        for (int layouts = proven; layouts <= fewest; layouts++) {
            List<List<Mix>> more = search.ways(sticks, layouts);
            all.addAll(more);
            if (!more.isEmpty() || !search.complete()) {
                break;
            }
            proven = StrictMath.min(fewest, layouts + 1);
        }
        return new FewestLayouts(best(all, turning), proven);
    }

    private static List<Mix> best(List<List<Mix>> ways, ToDoubleFunction<Mix> turning) {
        int fewest = ways.stream().mapToInt(List::size).min().orElseThrow();
        List<Mix> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (List<Mix> way : ways) {
            if (way.size() == fewest) {
                double turned = 0;
                for (Mix mix : way) {
                    turned += mix.runs() * turning.applyAsDouble(mix);
                }
                if (best.isEmpty() || turned < least) {
                    best = way;
                    least = turned;
                }
            }
        }
        return best;
    }
}
