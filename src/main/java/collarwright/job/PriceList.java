package collarwright.job;

import java.util.List;
import java.util.Optional;

/**
 * What things cost in a user's own price file.
 *
 * @param prices in the order of the file, each name and unit once
 */
public record PriceList(List<Price> prices) {

    /** Nobody said what anything costs. */
    public static final PriceList NONE = new PriceList(List.of());

    private static final double SAME_LENGTH = 0.5;

    /** Keeps the prices. */
    public PriceList {
        prices = List.copyOf(prices);
    }

    /** What a price is for. */
    public enum Measure {
        /** Each piece. */
        PIECE,
        /** A pack of so many pieces. */
        PACK,
        /** So many millimetres, cut to length. */
        LENGTH,
        /** A stick so many millimetres long. */
        STICK,
        /** A kilogram. */
        KILOGRAM
    }

    /**
     * One price.
     *
     * @param name of a stock, or {@code tie}, {@code pin}, {@code plug}, {@code cap}
     * @param measure what it is for
     * @param size pieces of a pack, millimetres of a length or a stick, else 1
     * @param unit the unit as it was written
     * @param price 0 or more, in the job's currency
     */
    public record Price(String name, Measure measure, double size, String unit, double price) {
        /** Checks the ranges. */
        public Price {
            if (!(size > 0 && price >= 0 && price < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(name + ": no such price");
            }
        }
    }

    /**
     * Returns what a piece of stock costs: as a stick of its length, else by its length, else by its weight.
     *
     * @param stock name of the stock
     * @param length mm
     * @param kg weight of the piece
     * @return its price; empty where the file does not tell
     */
    public Optional<Double> stick(String stock, double length, double kg) {
        return find(stock, Measure.STICK, length).map(Price::price).or(() -> byLength(stock, length, kg));
    }

    /**
     * Returns what stock costs that is bought by its length or its weight.
     *
     * @param stock name of the stock
     * @param length mm
     * @param kg weight of it
     * @return its price; empty where the file does not tell
     */
    public Optional<Double> byLength(String stock, double length, double kg) {
        return find(stock, Measure.LENGTH, 0)
                .map(p -> p.price() * length / p.size())
                .or(() -> find(stock, Measure.KILOGRAM, 0).map(p -> p.price() * kg));
    }

    /**
     * Returns how pieces are bought.
     *
     * @param name such as {@code tie}
     * @return the price of a piece, else that of a pack; empty where the file does not tell
     */
    public Optional<Price> pieces(String name) {
        return find(name, Measure.PIECE, 0).or(() -> find(name, Measure.PACK, 0));
    }

    private Optional<Price> find(String name, Measure measure, double length) {
        return prices.stream()
                .filter(p -> p.name().equals(name) && p.measure() == measure)
                .filter(p -> measure != Measure.STICK || StrictMath.abs(p.size() - length) < SAME_LENGTH)
                .findFirst();
    }
}
