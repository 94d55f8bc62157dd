package collarwright.job;

import collarwright.finding.Code;
import collarwright.stock.RoundStock;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads the price file that {@code [shop] prices} names. */
final class PriceReader {

    private PriceReader() {}

    /**
     * Reads the prices.
     *
     * @param shop {@code [shop]}; empty if it is not there
     * @param files opens the file
     * @param profiles know the names of stocks
     * @param stocks names of the job's stocks
     * @return the prices, none where the job names no file; empty after findings
     */
    static Optional<PriceList> read(Optional<TableView> shop, FrameFiles files, Profiles profiles, Set<String> stocks) {
        Optional<KeyView> key = shop.map(t -> t.key("prices")).filter(KeyView::present);
        if (key.isEmpty()) {
            return Optional.of(PriceList.NONE);
        }
        Optional<String> name = key.get().text().map(String::strip);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        FrameFiles.Opened opened = files.open(name.get());
        opened.findings().forEach(shop.get()::add);
        if (opened.bytes().isEmpty()) {
            if (opened.findings().isEmpty()) {
                key.get()
                        .stop(
                                Code.PRICE_FILE,
                                "a file beside the job",
                                name.get() + ", which is not there",
                                "check the name; it is taken from the job's own folder",
                                "take the key out where there are no prices");
            }
            return Optional.empty();
        }
        Set<String> known = new TreeSet<>(stocks);
        profiles.allStock().stream().map(RoundStock::name).forEach(known::add);
        known.addAll(PriceList.THINGS);
        PriceRows rows = PriceRows.read(name.get(), opened.bytes().get(), known);
        rows.findings().forEach(shop.get()::add);
        return rows.findings().stream().anyMatch(f -> f.code() != Code.PRICE_UNKNOWN)
                ? Optional.empty()
                : Optional.of(rows.prices());
    }
}
