package collarwright.plan;

import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.PriceList;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Tells which prices of a stock are of no use, so that nobody takes a plan by length for the cheapest one. */
final class PriceNotes {

    private PriceNotes() {}

    /**
     * Looks at the prices of one stock.
     *
     * @param stock what is bought
     * @param lengths new sticks and offcuts that anything is cut from that has this stock's name
     * @param prices of the user's file
     * @return PRICE_UNUSED warnings: sticks with a price that are not among the lengths, and lengths without a price beside
     *     some with one
     */
    static List<Finding> of(RoundStock stock, List<StockLength> lengths, PriceList prices) {
        List<StockLength> sold = lengths.stream().filter(l -> !l.offcut()).toList();
        List<Finding> notes = new ArrayList<>();
        List<String> unsold = prices.prices().stream()
                .filter(p -> p.name().equals(stock.name()) && p.measure() == PriceList.Measure.STICK)
                .filter(p -> sold.stream().noneMatch(s -> p.isFor(s.length())))
                .map(PriceList.Price::unit)
                .toList();
        if (!unsold.isEmpty() && !sold.isEmpty()) {
            notes.add(told(
                    "prices of lengths that " + stock.title() + " is sold in here: " + said(sold),
                    "a price for " + String.join(", ", unsold),
                    "if you can buy it, name it in lengths, beside stock",
                    "or take the line out of the price file"));
        }
        List<StockLength> lacking = sold.stream()
                .filter(s -> s.price().isEmpty()
                        && prices.stick(stock.name(), s.length(), stock.kg(s.length()))
                                .isEmpty())
                .toList();
        if (!lacking.isEmpty() && lacking.size() < sold.size()) {
            notes.add(told(
                    "a price for every length of " + stock.title() + ", or for none",
                    "none for " + said(lacking) + ": sticks are planned for the least length, not the least price",
                    "add the price, by stick, by length or by weight",
                    "or name in lengths only what you buy"));
        }
        return notes;
    }

    private static String said(List<StockLength> lengths) {
        return String.join(
                ", ",
                lengths.stream()
                        .map(s -> Decimals.trimmed(s.length(), 1) + " mm")
                        .distinct()
                        .toList());
    }

    private static Finding told(String expected, String found, String... hints) {
        return Finding.warn(Code.PRICE_UNUSED, new Where.Part("prices"), expected, found, hints);
    }
}
