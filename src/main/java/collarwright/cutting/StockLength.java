package collarwright.cutting;

import java.util.Optional;

/**
 * Sticks of one length that may be cut.
 *
 * @param id name of the offcut, or of the length for people, such as {@code 6 m}
 * @param length as it lies there, ends included, above 0
 * @param price of one stick, 0 or more; empty where nobody said
 * @param atHand how many there are, 0 or more; empty for as many as are needed
 * @param offcut whether it is left over from other work: it costs nothing and is used first
 */
public record StockLength(String id, double length, Optional<Double> price, Optional<Integer> atHand, boolean offcut) {
    /** Dearest stick there may be. */
    public static final double DEAREST = 1e5;

    /** Checks the ranges. */
    public StockLength {
        if (id.isBlank() || !(length > 0 && length <= Grains.LONGEST)) {
            throw new IllegalArgumentException("no such stock: " + id + ", " + length + " mm");
        }
        if (!price.map(p -> p >= 0 && p <= DEAREST).orElse(true) || atHand.orElse(0) < 0) {
            throw new IllegalArgumentException(id + ": price and number are 0 or more");
        }
        if (offcut && (atHand.isEmpty() || price.isPresent())) {
            throw new IllegalArgumentException(id + ": offcuts are counted, and have no price");
        }
    }

    /**
     * New sticks, as many as are needed, without a price.
     *
     * @param id the length for people
     * @param length mm
     * @return the stock
     */
    public static StockLength unlimited(String id, double length) {
        return new StockLength(id, length, Optional.empty(), Optional.empty(), false);
    }

    /**
     * One piece left over from other work.
     *
     * @param id its name, which stays on it
     * @param length mm
     * @return the stock
     */
    public static StockLength offcut(String id, double length) {
        return new StockLength(id, length, Optional.empty(), Optional.of(1), true);
    }
}
