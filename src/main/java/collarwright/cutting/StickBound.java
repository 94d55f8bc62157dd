package collarwright.cutting;

import java.util.List;

/**
 * What every plan keeps: each kind of piece gets a value, and no stick of stock s can carry more than {@code most[s]} of it,
 * so the sticks' values together are no less than the value of all pieces. Whole numbers; {@code most} is the proven optimum
 * (or bound) of an exact filling, so that no rounding of a simplex result can make the bound wrong.
 *
 * <p>With one stock it is the bound of A.A. Farley, A note on bounding a class of linear programming problems, including
 * cutting stock problems, Operations Research 38 (1990), from memory.
 */
final class StickBound {
    final long[] value;
    final long[] most;
    final long all;

    StickBound(long[] value, long[] most, int[] demand) {
        this.value = value;
        this.most = most;
        long sum = 0;
        for (int i = 0; i < value.length; i++) {
            sum += value[i] * demand[i];
        }
        all = sum;
    }

    /** Room by length alone. */
    static StickBound byLength(Model model) {
        return new StickBound(model.weight, model.capacity, model.demand);
    }

    /** What so many sticks can carry beyond what is wanted; below 0 where they are too few. */
    long spare(int[] sticks) {
        long sum = -all;
        for (int s = 0; s < sticks.length; s++) {
            sum += sticks[s] * most[s];
        }
        return sum;
    }

    long loss(Pattern pattern) {
        return most[pattern.stock] - pattern.sum(value);
    }

    /** Whether a filling loses no more of any bound than there is to spare. */
    static boolean affordable(List<StickBound> bounds, long[] spare, Pattern pattern) {
        for (int b = 0; b < spare.length; b++) {
            if (bounds.get(b).loss(pattern) > spare[b]) {
                return false;
            }
        }
        return true;
    }
}
