package collarwright.job;

import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the job's table {@code [saw]} and the file of offcuts that it names. All of its keys may be left out. */
final class SawReader {

    /** Widest cut that is believed. Our choice: the widest blades and discs cut less than half of it. */
    private static final double WIDEST_KERF = 20;

    private static final double LONGEST_END = 2000;
    private static final double COARSEST_MERGE = 5;

    private final Optional<TableView> table;
    private final FrameFiles files;
    private boolean good = true;

    /**
     * Reads a table.
     *
     * @param table {@code [saw]}; empty if it is not there
     * @param files opens the file of offcuts
     */
    SawReader(Optional<TableView> table, FrameFiles files) {
        this.table = table;
        this.files = files;
    }

    /** The lengths of the three stocks, as the job has them; none of them where the stock could not be read. */
    record Offers(List<StockLength> struts, List<StockLength> collars, List<StockLength> rings) {}

    /**
     * Reads the settings.
     *
     * @param offers what stock is sold in
     * @param prices what things cost; empty if they could not be read
     * @param stocks names of the job's stocks; empty where they could not be read
     * @return the settings, or empty after findings
     */
    Optional<CuttingSettings> read(Offers offers, Optional<PriceList> prices, Set<String> stocks) {
        double kerf = length("kerf", SawSettings.USUAL.kerf(), WIDEST_KERF);
        double first = length("trim-first", 0, LONGEST_END);
        double last = length("trim-last", 0, LONGEST_END);
        double grip = length("grip", 0, LONGEST_END);
        double merge = length("merge", 0, COARSEST_MERGE);
        double keep = length("keep", CuttingSettings.USUAL_KEEP, 100_000);
        List<CuttingSettings.Offcut> offcuts =
                table.map(t -> offcuts(t.key("offcuts"), t, stocks)).orElse(List.of());
        return good && prices.isPresent()
                ? Optional.of(new CuttingSettings(
                        new SawSettings(kerf, first, last, grip),
                        merge,
                        keep,
                        offers.struts,
                        offers.collars,
                        offers.rings,
                        offcuts,
                        prices.get()))
                : Optional.empty();
    }

    private double length(String name, double usual, double most) {
        Optional<KeyView> key = table.map(t -> t.key(name)).filter(KeyView::present);
        if (key.isEmpty()) {
            return usual;
        }
        Optional<Length> length = key.get().length(Length.Zero.ALLOWED);
        if (length.isPresent() && length.get().mm() > most) {
            key.get()
                    .stop(
                            Code.JOB_OUT_OF_RANGE,
                            "at most " + StockReader.mm(most),
                            length.get().text(),
                            "check the unit");
            good = false;
        }
        good = length.isPresent() && good;
        return length.map(Length::mm).orElse(usual);
    }

    private List<CuttingSettings.Offcut> offcuts(KeyView key, TableView table, Set<String> stocks) {
        if (!key.present()) {
            return List.of();
        }
        Optional<String> name = key.text().map(String::strip);
        if (name.isEmpty()) {
            good = false;
            return List.of();
        }
        FrameFiles.Opened opened = files.open(name.get());
        opened.findings().forEach(table::add);
        if (opened.bytes().isEmpty()) {
            if (opened.findings().isEmpty()) {
                key.stop(
                        Code.OFFCUT_FILE,
                        "a file beside the job",
                        name.get() + ", which is not there",
                        "check the name; it is taken from the job's own folder",
                        "take the key out where there are no offcuts");
            }
            good = false;
            return List.of();
        }
        OffcutRows rows = OffcutRows.read(name.get(), opened.bytes().get(), stocks);
        rows.findings().forEach(table::add);
        good = rows.findings().isEmpty() && good;
        return rows.offcuts();
    }
}
