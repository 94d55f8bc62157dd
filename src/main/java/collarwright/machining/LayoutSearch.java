package collarwright.machining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Looks through every way to lay an order on a given number of sticks with a given number of layouts.
 *
 * <p>1. How often each layout is run: every way to part the sticks. 2. For these runs, pattern by pattern, every way to
 * make its collars; what room is left decides the rest, so a room that failed once is not tried again. The work is cut
 * off by a count of trials, the same on every machine; then nothing is said about what was not looked at.
 */
final class LayoutSearch {

    /** Ways that are kept for one parting of the sticks, to choose the least turning from. Our choice, no source. */
    private static final int MOST_WAYS = 8;

    private final int[] demand;
    private final int capacity;
    private long trials;

    private final List<List<Mix>> found = new ArrayList<>();
    private Set<List<Integer>> failed = new HashSet<>();
    private long[] runs = new long[0];
    private int[][] counts = new int[0][0];
    private int foundHere;

    /**
     * Prepares a search.
     *
     * @param demand collars of each pattern, 1 or more each
     * @param capacity collars that a stick holds
     * @param trials how many steps may be taken in all
     */
    LayoutSearch(int[] demand, int capacity, long trials) {
        this.demand = demand.clone();
        this.capacity = capacity;
        this.trials = trials;
    }

    /** Whether every way that was asked for has been looked through. */
    boolean complete() {
        return trials > 0;
    }

    /**
     * Looks for ways with so many layouts.
     *
     * @param sticks sticks in all
     * @param layouts layouts, 1 or more
     * @return ways, none of them if there is none or the trials ran out
     */
    List<List<Mix>> ways(long sticks, int layouts) {
        found.clear();
        if (layouts <= sticks) {
            runs = new long[layouts];
            part(0, sticks, sticks);
        }
        return List.copyOf(found);
    }

    /** Every falling list of runs that adds up. */
    private void part(int index, long left, long most) {
        if (!step()) {
            return;
        }
        int open = runs.length - index;
        if (open == 1) {
            if (left <= most) {
                runs[index] = left;
                lay();
            }
            return;
        }
        for (long r = StrictMath.min(most, left - (open - 1)); r * open >= left && complete(); r--) {
            runs[index] = r;
            part(index + 1, left - r, r);
        }
    }

    private void lay() {
        failed = new HashSet<>();
        foundHere = 0;
        counts = new int[runs.length][demand.length];
        int[] room = new int[runs.length];
        Arrays.fill(room, capacity);
        pattern(0, room);
    }

    private boolean pattern(int pattern, int[] room) {
        if (pattern == demand.length) {
            keep();
            return true;
        }
        List<Integer> state = state(pattern, room);
        if (failed.contains(state)) {
            return false;
        }
        boolean any = spread(pattern, 0, demand[pattern], room);
        if (!any && complete()) {
            failed.add(state);
        }
        return any;
    }

    private static List<Integer> state(int pattern, int[] room) {
        List<Integer> state = new ArrayList<>(room.length + 1);
        state.add(pattern);
        for (int r : room) {
            state.add(r);
        }
        return state;
    }

    /** Spreads what is left of a pattern over the layouts from one on. */
    private boolean spread(int pattern, int layout, long left, int[] room) {
        if (layout == runs.length - 1) {
            long each = left / runs[layout];
            if (left % runs[layout] != 0 || each > room[layout] || !step()) {
                return false;
            }
            return with(pattern, layout, (int) each, room, () -> pattern(pattern + 1, room));
        }
        boolean any = false;
        long most = StrictMath.min(room[layout], left / runs[layout]);
        for (long each = most; each >= 0 && foundHere < MOST_WAYS && step(); each--) {
            long rest = left - each * runs[layout];
            if (rest > reach(layout + 1, room)) {
                break;
            }
            any |= with(pattern, layout, (int) each, room, () -> spread(pattern, layout + 1, rest, room));
        }
        return any;
    }

    private boolean with(int pattern, int layout, int each, int[] room, BooleanSupplier then) {
        counts[layout][pattern] = each;
        room[layout] -= each;
        boolean any = then.getAsBoolean();
        room[layout] += each;
        return any;
    }

    private long reach(int from, int[] room) {
        long most = 0;
        for (int i = from; i < runs.length; i++) {
            most += runs[i] * room[i];
        }
        return most;
    }

    private void keep() {
        foundHere++;
        List<Mix> mixes = new ArrayList<>();
        for (int i = 0; i < runs.length; i++) {
            List<Integer> list = new ArrayList<>();
            for (int count : counts[i]) {
                list.add(count);
            }
            mixes.add(new Mix(list, StrictMath.toIntExact(runs[i])));
        }
        found.add(Mix.gathered(mixes));
    }

    private boolean step() {
        trials--;
        return trials > 0;
    }
}
