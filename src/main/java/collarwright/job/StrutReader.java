package collarwright.job;

import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.stock.RoundStock;
import collarwright.strut.EndWork;
import collarwright.strut.SizeBins;
import collarwright.strut.StrutSettings;
import collarwright.strut.TieHole;
import java.util.List;
import java.util.Optional;

/** Reads the job's table {@code [strut]}. */
final class StrutReader {

    private final TableView table;
    private final Profiles profiles;

    /**
     * Reads a table.
     *
     * @param table {@code [strut]}
     * @param profiles know stock and materials
     */
    StrutReader(TableView table, Profiles profiles) {
        this.table = table;
        this.profiles = profiles;
    }

    /**
     * Reads the struts.
     *
     * @return what every strut is made of, or empty after findings
     */
    Optional<StrutSettings> read() {
        MeasuredStock measured = MeasuredStock.in(table);
        BinReader binned = new BinReader(table);
        Optional<RoundStock> whole = measured.on(stock());
        Optional<Optional<SizeBins>> bins = binned.read(whole);
        Optional<RoundStock> stock = whole.map(s -> BinReader.sorted(s, bins.orElse(Optional.empty())));
        KeyView holeKey = table.key("tie-hole");
        Optional<TieHole> hole = holeKey.present() ? hole(holeKey, stock) : Optional.empty();
        Optional<EndWork> ends = new EndWorkReader(table, whole, hole).read();
        return stock.isEmpty() || bins.isEmpty() || ends.isEmpty() || (holeKey.present() && hole.isEmpty())
                ? Optional.empty()
                : Optional.of(new StrutSettings(stock.get(), hole, bins.get(), ends.get()));
    }

    /**
     * Returns the lengths that the job gives.
     *
     * @return with prices and numbers; none where it gives none
     */
    List<StockLength> offers() {
        return OfferReader.read(table.key("lengths")).orElse(List.of());
    }

    private Optional<RoundStock> stock() {
        KeyView name = table.key("stock");
        KeyView od = table.key("od");
        if (!name.present() && !od.present()) {
            table.need("stock", "a profile's name; or od, wall and material in place", "stock = \"pvc-metric-40x3.0\"");
        }
        if (name.present() && od.present()) {
            od.stop(
                    Code.JOB_CONFLICT,
                    "stock or od",
                    "both",
                    "take od, wall, lengths and material out, or stock",
                    "a measured diameter is measured-od");
        }
        if (od.present()) {
            return StockReader.inPlace(table, profiles, false).filter(s -> !name.present());
        }
        for (String key : new String[] {"wall", "material"}) {
            KeyView alone = table.key(key);
            if (alone.present() && name.present()) {
                alone.stop(
                        Code.JOB_CONFLICT,
                        "stock, or od with wall and material",
                        key + " beside stock",
                        "take it out; the profile says it"
                                + (key.equals("wall") ? " (a measured wall is measured-wall)" : ""));
            }
        }
        return HubReader.named(name, profiles).flatMap(s -> StockReader.soldIn(s, table.key("lengths")));
    }

    private static Optional<TieHole> hole(KeyView key, Optional<RoundStock> stock) {
        Optional<TableView> table = key.table();
        if (table.isEmpty()) {
            return Optional.empty();
        }
        KeyView diameterKey =
                table.get().need("diameter", "the hole's diameter", "tie-hole = { diameter = \"6 mm\", … }");
        KeyView fromEndKey = table.get()
                .need("from-end", "from the cut end to the hole's axis", "tie-hole = { …, from-end = \"18 mm\" }");
        Optional<Double> diameter = diameterKey.size();
        Optional<Double> fromEnd = fromEndKey.size();
        if (diameter.isEmpty() || fromEnd.isEmpty()) {
            return Optional.empty();
        }
        boolean fits = true;
        if (stock.isPresent() && diameter.get() >= stock.get().od().min()) {
            diameterKey.stop(
                    Code.JOB_CONFLICT,
                    "a hole narrower than the strut, "
                            + StockReader.mm(stock.get().od().min()),
                    StockReader.mm(diameter.get()),
                    "check the diameter and the unit");
            fits = false;
        }
        if (fromEnd.get() <= diameter.get() / 2) {
            fromEndKey.stop(
                    Code.JOB_CONFLICT,
                    "more than half the hole's diameter, " + StockReader.mm(diameter.get() / 2),
                    StockReader.mm(fromEnd.get()),
                    "from-end is measured to the middle of the hole");
            fits = false;
        }
        return fits ? Optional.of(new TieHole(diameter.get(), fromEnd.get())) : Optional.empty();
    }
}
