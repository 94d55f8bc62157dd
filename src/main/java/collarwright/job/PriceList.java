package collarwright.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What things cost in a user's own price file.
 *
 * @param prices in the order of the file, each name and unit once
 */
public record PriceList(List<Price> prices) {

    /** Nobody said what anything costs. */
    public static final PriceList NONE = new PriceList(List.of());

    /** A stick's price counts for sticks whose length differs by less, in mm. Our choice, no source. */
    static final double SAME_LENGTH = 0.5;

    /** Names that prices may have beside those of stocks. */
    public static final List<String> THINGS =
            List.of("tie", "pin", "plug", "cap", "strip", "strip-sheet", "plate-sheet");

    /** Lengths count to a millionth of a millimetre: what is smaller comes from binary sums. */
    private static final int LENGTH_DECIMALS = 6;

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
     * Returns what prices a name can have: those that something is bought by.
     *
     * @param name one of {@link #THINGS}, or of a stock
     * @return the measures; never empty
     */
    public static Set<Measure> measures(String name) {
        return switch (name) {
            case "tie", "pin", "cap", "plate-sheet" -> EnumSet.of(Measure.PIECE, Measure.PACK);
            case "plug" -> EnumSet.of(Measure.PIECE, Measure.PACK, Measure.LENGTH);
            case "strip" -> EnumSet.of(Measure.LENGTH, Measure.KILOGRAM);
            case "strip-sheet" -> EnumSet.of(Measure.PIECE, Measure.PACK, Measure.KILOGRAM);
            default -> EnumSet.of(Measure.LENGTH, Measure.STICK, Measure.KILOGRAM);
        };
    }

    /**
     * One price.
     *
     * @param name of a stock, or one of {@link #THINGS}
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

        /**
         * Tells whether a stick's price is for sticks of a length.
         *
         * @param length mm
         * @return true if it differs by less than half a millimetre
         */
        public boolean isFor(double length) {
            return StrictMath.abs(size - length) < SAME_LENGTH;
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
        return byLength(stock, length).or(() -> byWeight(stock, kg));
    }

    /**
     * Returns what something costs that is bought by its length and whose weight nobody knows.
     *
     * @param name of the stock or the thing
     * @param length mm
     * @return its price, worked out in decimals; empty where the file tells none by length
     */
    public Optional<Double> byLength(String name, double length) {
        return find(name, Measure.LENGTH, 0)
                .map(p -> BigDecimal.valueOf(p.price())
                        .multiply(BigDecimal.valueOf(length).setScale(LENGTH_DECIMALS, RoundingMode.HALF_UP))
                        .divide(BigDecimal.valueOf(p.size()), MathContext.DECIMAL128)
                        .doubleValue());
    }

    /**
     * Returns what something costs that is bought by its weight.
     *
     * @param name of the stock or the thing
     * @param kg weight of it, above 0
     * @return its price, worked out in decimals; empty where the file tells none by weight
     */
    public Optional<Double> byWeight(String name, double kg) {
        return find(name, Measure.KILOGRAM, 0)
                .map(p -> BigDecimal.valueOf(p.price())
                        .multiply(BigDecimal.valueOf(kg))
                        .doubleValue());
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
                .filter(p -> measure != Measure.STICK || p.isFor(length))
                .findFirst();
    }
}
