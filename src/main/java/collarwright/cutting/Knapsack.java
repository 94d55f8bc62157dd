package collarwright.cutting;

import java.util.Arrays;

/**
 * Which pieces fill a stick to the highest value: exactly, in whole numbers. Few different rooms are counted through, else
 * pieces are tried by value for their length. The value of the rest is bounded as if the last piece could be split, and by
 * what a stick of so much room holds of the kinds that follow, counted through with room and lengths rounded down to cells:
 * where many lengths are worth nearly the same for their length, only the second tells the fillings apart.
 *
 * <p>Source: S. Martello, P. Toth, Knapsack Problems, 1990, chapter 3 (bounded knapsack), from memory.
 */
final class Knapsack {

    private static final long TABLE = 400_000;
    private static final long MOST_NODES = 300_000;
    /** Cells of the longest stick, by which the rest is bounded. */
    private static final int CELLS = 4096;
    /** Steps of all fillings and all simplex work together, in units of about a nanosecond's work. */
    private static final long MOST_SPENT = 6_000_000_000L;

    private final long[] weight;
    private final long grain;
    private final long cell;

    private long[] value = {};
    private int[] most = {};
    private int[] order = {};
    private long[] lightest = {};
    /** The most that the kinds from a place of the order on are worth together in so many cells. */
    private long[][] rest = {};

    private int[] taking = {};
    private int[] best = {};
    private long bestValue;
    private long nodes;
    private long spent;

    Knapsack(Model model) {
        weight = model.weight;
        long common = 0;
        for (long w : weight) {
            common = Model.gcd(common, w);
        }
        grain = StrictMath.max(common, 1);
        long longest = 0;
        for (long room : model.capacity) {
            longest = StrictMath.max(longest, room);
        }
        cell = longest / CELLS + 1;
    }

    /**
     * A filling.
     *
     * @param counts of all kinds
     * @param value of these
     * @param bound no filling has more; the value itself unless the search was cut off
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Filling(int[] counts, long value, long bound) {}

    /** Fills a stick; no kind more often than {@code most}. */
    Filling fill(long[] values, int[] mostOfEach, long room) {
        value = values;
        most = mostOfEach;
        long copies = 0;
        for (int i = 0; i < weight.length; i++) {
            copies += values[i] > 0 ? StrictMath.min(most[i], room / weight[i]) : 0;
        }
        return copies * (room / grain) <= TABLE ? table((int) (room / grain), (int) copies) : search(room);
    }

    /** Counts other work, too. */
    void spend(long steps) {
        spent += steps;
    }

    /** Whether a plan has taken all the steps it may. */
    boolean spentAll() {
        return spent > MOST_SPENT;
    }

    private Filling table(int room, int copies) {
        spent += (long) copies * room;
        long[] got = new long[room + 1];
        boolean[][] taken = new boolean[copies][];
        int[] kindOf = new int[copies];
        int copy = 0;
        for (int i = 0; i < weight.length; i++) {
            int w = (int) StrictMath.min(weight[i] / grain, room + 1L);
            int times = value[i] > 0 ? StrictMath.min(most[i], room / w) : 0;
            for (int t = 0; t < times; t++, copy++) {
                boolean[] row = new boolean[room + 1];
                kindOf[copy] = i;
                taken[copy] = row;
                for (int c = room; c >= w; c--) {
                    long with = got[c - w] + value[i];
                    if (with > got[c]) {
                        got[c] = with;
                        row[c] = true;
                    }
                }
            }
        }
        int[] counts = new int[weight.length];
        int left = room;
        for (int k = copy - 1; k >= 0; k--) {
            if (taken[k][left]) {
                counts[kindOf[k]]++;
                left -= (int) (weight[kindOf[k]] / grain);
            }
        }
        return new Filling(counts, got[room], got[room]);
    }

    private Filling search(long room) {
        order = ordered(room);
        lightest = new long[order.length + 1];
        lightest[order.length] = Long.MAX_VALUE;
        for (int i = order.length - 1; i >= 0; i--) {
            lightest[i] = StrictMath.min(lightest[i + 1], weight[order[i]]);
        }
        taking = new int[weight.length];
        best = new int[weight.length];
        bestValue = 0;
        nodes = 0;
        rest = rest((int) (room / cell));
        long root = StrictMath.min(rest[0][(int) (room / cell)], asIfSplit(0, room));
        dive(0, room, 0);
        spent += 20 * nodes + 50L * weight.length + 4L * order.length * (room / cell);
        return new Filling(best, bestValue, nodes > MOST_NODES ? root : bestValue);
    }

    private int[] ordered(long room) {
        return java.util.stream.IntStream.range(0, weight.length)
                .filter(i -> value[i] > 0 && most[i] > 0 && weight[i] <= room)
                .boxed()
                .sorted((a, b) -> {
                    int byRate = Double.compare((double) value[b] / weight[b], (double) value[a] / weight[a]);
                    return byRate != 0 ? byRate : Integer.compare(a, b);
                })
                .mapToInt(i -> i)
                .toArray();
    }

    /** As if there were any number of each kind, or all for nothing where one is shorter than a cell. */
    private long[][] rest(int cells) {
        long[][] from = new long[order.length + 1][];
        from[order.length] = new long[cells + 1];
        for (int at = order.length - 1; at >= 0; at--) {
            long[] row = from[at + 1].clone();
            int w = (int) (weight[order[at]] / cell);
            long v = value[order[at]];
            for (int c = w; c <= cells; c++) {
                row[c] = w > 0 ? StrictMath.max(row[c], row[c - w] + v) : row[c] + most[order[at]] * v;
            }
            from[at] = row;
        }
        return from;
    }

    // Rounded quotients may swap two kinds whose rates are all but equal: the bound takes the better rate of the rest.
    private long asIfSplit(int from, long room) {
        long sum = 0;
        long left = room;
        for (int at = from; at < order.length; at++) {
            int kind = order[at];
            long take = StrictMath.min(most[kind], left / weight[kind]);
            sum += take * value[kind];
            left -= take * weight[kind];
            if (take < most[kind]) {
                return sum + split(left, kind) + 1;
            }
        }
        return sum;
    }

    private long split(long left, int kind) {
        return StrictMath.multiplyHigh(left, value[kind]) == 0
                ? left * value[kind] / weight[kind]
                : (long) StrictMath.ceil((double) left / weight[kind] * value[kind] * (1 + 1e-12));
    }

    private void dive(int at, long room, long got) {
        if (got > bestValue) {
            bestValue = got;
            best = Arrays.copyOf(taking, taking.length);
        }
        if (at == order.length || room < lightest[at]) {
            return;
        }
        int kind = order[at];
        int take = (int) StrictMath.min(most[kind], room / weight[kind]);
        for (; take >= 0; take--) {
            nodes++;
            long left = room - take * weight[kind];
            long with = got + take * value[kind];
            if (nodes > MOST_NODES) {
                break;
            }
            if (with + asIfSplit(at + 1, left) <= bestValue) {
                break; // taking fewer of what is worth most is worth no more
            }
            if (with + rest[at + 1][(int) (left / cell)] <= bestValue) {
                continue; // fewer of it may leave a room that is filled better
            }
            taking[kind] = take;
            dive(at + 1, left, with);
        }
        taking[kind] = 0;
    }
}
