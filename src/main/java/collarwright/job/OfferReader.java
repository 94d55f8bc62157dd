package collarwright.job;

import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the lengths that a stock is sold in: {@code lengths = ["3 m", { length = "6 m", price = 12.50, at-hand = 40 }]}.
 */
final class OfferReader {

    private static final int MOST_AT_HAND = 1_000_000;
    private static final double LONGEST = 100_000;

    private OfferReader() {}

    /**
     * Reads a list of lengths.
     *
     * @param key where it stands
     * @return the lengths in the order of the text, none where the key is not there; empty after findings
     */
    static Optional<List<StockLength>> read(KeyView key) {
        List<KeyView> items = key.items();
        List<StockLength> offers = new ArrayList<>();
        Set<Double> seen = new HashSet<>();
        for (KeyView item : items) {
            Optional<StockLength> offer = item.isTable()
                    ? item.table().flatMap(OfferReader::priced)
                    : item.length(Length.Zero.REFUSED).flatMap(l -> usable(item, l));
            offer.filter(o -> !seen.add(o.length()))
                    .ifPresent(o -> item.stop(
                            Code.JOB_CONFLICT,
                            "each length once",
                            o.id() + " a second time",
                            "give one length one price and one number"));
            offer.ifPresent(offers::add);
        }
        long priced = offers.stream().filter(o -> o.price().isPresent()).count();
        if (priced != 0 && priced != offers.size()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "a price for every length, or for none",
                    priced + " of " + offers.size() + " lengths with a price",
                    "add the prices that are missing, or take all of them out: then the least length is bought");
            return Optional.empty();
        }
        return offers.size() == items.size() && seen.size() == items.size() ? Optional.of(offers) : Optional.empty();
    }

    private static Optional<StockLength> priced(TableView table) {
        KeyView lengthKey = table.need("length", "how long a stick is", "lengths = [{ length = \"6 m\", … }]");
        Optional<Length> length = lengthKey.length(Length.Zero.REFUSED);
        KeyView priceKey = table.key("price");
        KeyView handKey = table.key("at-hand");
        Optional<Double> price = priceKey.number(0, StockLength.DEAREST);
        Optional<Integer> atHand = handKey.wholeNumber(0, MOST_AT_HAND);
        boolean good = priceKey.present() == price.isPresent() && handKey.present() == atHand.isPresent();
        return length.filter(l -> good)
                .flatMap(l -> usable(lengthKey, l))
                .map(l -> new StockLength(l.id(), l.length(), price, atHand, false));
    }

    private static Optional<StockLength> usable(KeyView key, Length length) {
        if (length.mm() > LONGEST) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "a stick of at most 100 m",
                    length.text(),
                    "check the unit; coils are not cut by this plan");
            return Optional.empty();
        }
        return Optional.of(StockLength.unlimited(Decimals.trimmed(length.mm(), 3) + " mm", length.mm()));
    }
}
