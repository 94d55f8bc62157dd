package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Laying orders on sticks, against trying everything where that can be done. */
class FewestLayoutsTest {

    private static FewestLayouts of(int capacity, int... demand) {
        return FewestLayouts.of(demand, capacity, mix -> 0);
    }

    private static int sticks(FewestLayouts laid) {
        return laid.mixes().stream().mapToInt(Mix::runs).sum();
    }

    // By hand: 12 + 6 + 6 = 24 on sticks of 4 are six; two of the first and one of each other, six times, are all.
    @Test
    void order_thatIsAKit_isOneLayout() {
        assertThat(of(4, 12, 6, 6)).isEqualTo(new FewestLayouts(List.of(new Mix(List.of(2, 1, 1), 6)), 1));
    }

    // By hand: 10 + 3 = 13 on sticks of 4 are four; no number but 1 divides both, so one layout cannot do, two can.
    @Test
    void order_thatIsNoKit_isTwoLayouts() {
        FewestLayouts laid = of(4, 10, 3);
        assertThat(sticks(laid)).isEqualTo(4);
        assertThat(laid.mixes()).hasSize(2);
        assertThat(laid.leastLayouts()).isEqualTo(2);
    }

    @Test
    void sameStickCounts_withLeastTurning_areChosen() {
        // Two sticks of two places for two and two: kept apart they do not turn, mixed they do. One layout comes first.
        assertThat(FewestLayouts.of(new int[] {2, 2}, 2, mix -> mix.counts().contains(0) ? 0 : 1)
                        .mixes())
                .containsExactly(new Mix(List.of(1, 1), 2));
        // Three and one on sticks of two: two layouts either way it is done.
        assertThat(FewestLayouts.of(new int[] {3, 1}, 2, mix -> 0).mixes()).hasSize(2);
    }

    /** Everything tried: no plan has fewer sticks; none with as many has fewer layouts than what is called proven. */
    @Test
    void smallOrders_againstEveryPlan_haveTheFewestSticksAndLayouts() {
        Seeds.each(400, draw -> {
            int[] demand = new int[draw.whole(1, 3)];
            Arrays.setAll(demand, i -> draw.whole(1, 5));
            int capacity = draw.whole(1, 5);
            FewestLayouts laid = FewestLayouts.of(demand, capacity, mix -> 0);
            Everything all = new Everything(demand, capacity);

            assertThat(sticks(laid)).isEqualTo(all.sticks());
            assertThat(laid.mixes()).hasSize(all.layouts());
            assertThat(laid.leastLayouts()).isEqualTo(all.layouts());
            counts(laid, demand, capacity);
        });
    }

    private static void counts(FewestLayouts laid, int[] demand, int capacity) {
        long[] made = new long[demand.length];
        for (Mix mix : laid.mixes()) {
            assertThat(mix.collars()).isBetween(1, capacity);
            for (int p = 0; p < made.length; p++) {
                made[p] += (long) mix.runs() * mix.counts().get(p);
            }
        }
        assertThat(made).isEqualTo(Arrays.stream(demand).asLongStream().toArray());
        assertThat(laid.mixes()).extracting(Mix::counts).doesNotHaveDuplicates();
    }

    /** 1 to 12 patterns, 1 to 3,000 collars, any stick: every collar made, no stick too many, the same every time. */
    @Test
    @Timeout(60)
    void drawnOrders_addUpOnTheFewestSticks() {
        Seeds.each(150, draw -> {
            int[] demand = new int[draw.whole(1, 12)];
            int each = draw.whole(1, 3000 / demand.length);
            Arrays.setAll(demand, i -> draw.whole(1, each));
            int capacity = draw.whole(1, draw.coin() ? 500 : 14);
            FewestLayouts laid = FewestLayouts.of(demand, capacity, mix -> 0);

            int total = Arrays.stream(demand).sum();
            assertThat(sticks(laid)).isEqualTo((total + capacity - 1) / capacity);
            assertThat(laid.leastLayouts()).isBetween(1, laid.mixes().size());
            // Full sticks of each pattern, and no more remainders than patterns: what a shop would do by hand.
            assertThat(laid.mixes()).hasSizeLessThanOrEqualTo(2 * demand.length);
            counts(laid, demand, capacity);
            assertThat(FewestLayouts.of(demand, capacity, mix -> 0)).isEqualTo(laid);
        });
    }

    /** Every way to fill sticks, each no later in order than the one before. */
    private static final class Everything {
        private final int[] demand;
        private final int capacity;
        private final List<int[]> kinds = new ArrayList<>();
        private int sticks = Integer.MAX_VALUE;
        private int layouts = Integer.MAX_VALUE;

        Everything(int[] demand, int capacity) {
            this.demand = demand;
            this.capacity = capacity;
            kinds(new int[demand.length], 0, capacity);
            for (int most = 1; sticks == Integer.MAX_VALUE; most++) {
                fill(demand.clone(), 0, most, new ArrayList<>());
            }
        }

        int sticks() {
            return sticks;
        }

        int layouts() {
            return layouts;
        }

        private void kinds(int[] kind, int pattern, int room) {
            if (pattern == demand.length) {
                if (room < capacity) {
                    kinds.add(kind.clone());
                }
                return;
            }
            for (int n = 0; n <= Math.min(room, demand[pattern]); n++) {
                kind[pattern] = n;
                kinds(kind, pattern + 1, room - n);
            }
            kind[pattern] = 0;
        }

        private void fill(int[] left, int kind, int open, List<Integer> used) {
            int sum = Arrays.stream(left).sum();
            if (sum == 0) {
                sticks = Math.min(sticks, used.size());
                layouts = Math.min(layouts, new HashSet<>(used).size());
                return;
            }
            if (sum > open * capacity) {
                return;
            }
            for (int k = kind; k < kinds.size(); k++) {
                int[] rest = left.clone();
                boolean fits = true;
                for (int p = 0; p < rest.length; p++) {
                    rest[p] -= kinds.get(k)[p];
                    fits &= rest[p] >= 0;
                }
                if (fits) {
                    used.add(k);
                    fill(rest, k, open - 1, used);
                    used.remove(used.size() - 1);
                }
            }
        }
    }
}
