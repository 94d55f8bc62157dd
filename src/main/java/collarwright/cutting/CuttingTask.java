package collarwright.cutting;

import java.util.List;

/**
 * What is to be cut, from what, by which saw.
 *
 * @param pieces all pieces; two entries may have the same length
 * @param stocks sticks and offcuts; where one of the new sticks has a price, all have
 * @param saw what it takes
 */
public record CuttingTask(List<CutPiece> pieces, List<StockLength> stocks, SawSettings saw) {

    /** Keeps the lists. */
    public CuttingTask {
        pieces = List.copyOf(pieces);
        stocks = List.copyOf(stocks);
        long priced = stocks.stream().filter(s -> s.price().isPresent()).count();
        long fresh = stocks.stream().filter(s -> !s.offcut()).count();
        if (priced != 0 && priced != fresh) {
            throw new IllegalArgumentException("all new sticks have a price, or none has");
        }
    }

    /**
     * Tells whether sticks are compared by price.
     *
     * @return false where they are compared by length
     */
    public boolean priced() {
        return stocks.stream().anyMatch(s -> s.price().isPresent());
    }

    /**
     * Returns the longest piece that can be cut.
     *
     * @return mm; 0 or less where there is no stock
     */
    public double longestPiece() {
        return stocks.stream()
                .filter(s -> s.atHand().orElse(1) > 0)
                .mapToDouble(s -> saw.longestPiece(s.length()))
                .max()
                .orElse(0);
    }
}
