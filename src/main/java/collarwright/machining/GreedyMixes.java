package collarwright.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Lays an order on the fewest sticks, taking again and again the stick that can be run most often.
 *
 * <p>A stick may be run r times if, filled with what is asked for at least r times, the rest still goes on the sticks
 * that are left. What it can hold changes only where r passes a demand over a whole number, and how full it has to be
 * only where r passes the free places over one, so those r are all that have to be looked at.
 */
final class GreedyMixes {

    /** First sticks that are tried; a batch has fewer sensible ones. Our choice, no source. */
    private static final int MOST_STARTS = 200;

    private final int[] demand;
    private final int capacity;

    /**
     * Prepares a search.
     *
     * @param demand collars of each pattern, 1 or more each
     * @param capacity collars that a stick holds, 1 or more
     */
    GreedyMixes(int[] demand, int capacity) {
        this.demand = demand.clone();
        this.capacity = capacity;
    }

    /** Ways to lay the order: one for each first stick that can be run so often. */
    List<List<Mix>> ways() {
        List<List<Mix>> ways = new ArrayList<>();
        ways.add(onePatternFirst());
        long[] whole = longs(demand);
        long sticks = sticks(whole);
        for (long runs : candidates(whole, sticks)) {
            if (ways.size() > MOST_STARTS) {
                break;
            }
            fill(whole, sticks, runs).ifPresent(first -> {
                List<Mix> mixes = new ArrayList<>(List.of(mix(first, runs)));
                long[] rest = whole.clone();
                take(rest, first, runs);
                mixes.addAll(greedy(rest, sticks - runs));
                ways.add(Mix.gathered(mixes));
            });
        }
        return ways;
    }

    /** Full sticks of one pattern each, then the remainders mixed. */
    private List<Mix> onePatternFirst() {
        List<Mix> mixes = new ArrayList<>();
        long[] rest = longs(demand);
        long sticks = sticks(rest);
        for (int p = 0; p < rest.length; p++) {
            long full = rest[p] / capacity;
            if (full > 0) {
                int[] one = new int[rest.length];
                one[p] = capacity;
                mixes.add(mix(one, full));
                take(rest, one, full);
                sticks -= full;
            }
        }
        mixes.addAll(greedy(rest, sticks));
        return Mix.gathered(mixes);
    }

    private List<Mix> greedy(long[] from, long sticks) {
        List<Mix> mixes = new ArrayList<>();
        long[] rest = from.clone();
        long left = sticks;
        while (left > 0) {
            for (long runs : candidates(rest, left)) {
                Optional<int[]> stick = fill(rest, left, runs);
                if (stick.isPresent()) {
                    mixes.add(mix(stick.get(), runs));
                    take(rest, stick.get(), runs);
                    left -= runs;
                    break;
                }
            }
        }
        return mixes;
    }

    private NavigableSet<Long> candidates(long[] rest, long sticks) {
        NavigableSet<Long> runs = new TreeSet<>(Comparator.reverseOrder());
        long free = capacity * sticks - sum(rest);
        runs.add(sticks);
        runs.add(1L);
        for (long k = 1; k <= capacity; k++) {
            add(runs, free / k, sticks);
            for (long d : rest) {
                add(runs, d / k, sticks);
            }
        }
        return runs;
    }

    private static void add(NavigableSet<Long> runs, long value, long most) {
        if (value >= 1) {
            runs.add(StrictMath.min(value, most));
        }
    }

    /** A stick to be run so often: first patterns that it ends, then others; empty if the rest would not fit. */
    private Optional<int[]> fill(long[] rest, long sticks, long runs) {
        int[] counts = new int[rest.length];
        int room = capacity;
        for (int pass = 0; pass < 2; pass++) {
            for (int p = 0; p < rest.length; p++) {
                long most = rest[p] / runs - counts[p];
                boolean ends = rest[p] % runs == 0 && most <= room;
                if (most > 0 && (pass == 1 || ends)) {
                    int taken = (int) StrictMath.min(most, room);
                    counts[p] += taken;
                    room -= taken;
                }
            }
        }
        long left = sum(rest) - runs * (capacity - room);
        return left <= capacity * (sticks - runs) && room < capacity ? Optional.of(counts) : Optional.empty();
    }

    private long sticks(long[] rest) {
        return (sum(rest) + capacity - 1) / capacity;
    }

    private static void take(long[] rest, int[] counts, long runs) {
        for (int p = 0; p < rest.length; p++) {
            rest[p] -= runs * counts[p];
        }
    }

    private static Mix mix(int[] counts, long runs) {
        List<Integer> list = new ArrayList<>();
        for (int count : counts) {
            list.add(count);
        }
        return new Mix(list, StrictMath.toIntExact(runs));
    }

    private static long[] longs(int[] values) {
        long[] all = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            all[i] = values[i];
        }
        return all;
    }

    private static long sum(long[] values) {
        long sum = 0;
        for (long value : values) {
            sum += value;
        }
        return sum;
    }
}
