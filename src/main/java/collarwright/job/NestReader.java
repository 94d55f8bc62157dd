package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.Optional;

/** Reads the stock sheet that parts are nested on. */
final class NestReader {
    /** Longer sheets than any machine's bed, in mm: our choice, no source. */
    private static final double MOST_SHEET = 20_000;
    /** Nearer to the edge no line is drawn. */
    private static final double LEAST_MARGIN = 5;

    /** What stays between two cuts, so that the lines of neighbours never fall together: our choice, no source. */
    private static final double LEAST_WEB = 1;

    private static final double MOST_GAP = 50;
    private static final double USUAL_GAP = 5;
    private static final double USUAL_MARGIN = 10;

    private NestReader() {}

    /**
     * Reads the sheet that a table speaks of.
     *
     * @param table with the keys sheet-length, sheet-width, gap, margin, turn
     * @param kerf width of the cut along edges that lines allow for; 0 for nominal lines
     * @return the sheet; empty after findings
     */
    static Optional<SheetPacker.Stock> read(TableView table, double kerf) {
        Optional<Double> length =
                upTo(table.need("sheet-length", "the stock sheet's length", "sheet-length = \"600 mm\""), MOST_SHEET);
        Optional<Double> width =
                upTo(table.need("sheet-width", "the stock sheet's width", "sheet-width = \"400 mm\""), MOST_SHEET);
        double least = kerf + LEAST_WEB;
        Given<Double> gap = new Given<>(table.key("gap"), k -> gap(k, least), StrictMath.max(USUAL_GAP, least));
        Given<Double> margin = new Given<>(table.key("margin"), NestReader::margin, USUAL_MARGIN);
        Given<Boolean> turn = new Given<>(table.key("turn"), KeyView::flag, true);
        if (length.isEmpty() || width.isEmpty() || !gap.good() || !margin.good() || !turn.good()) {
            return Optional.empty();
        }
        if (StrictMath.min(length.get(), width.get()) <= 2 * margin.value()) {
            table.key("sheet-width")
                    .stop(
                            Code.JOB_CONFLICT,
                            "a sheet wider than its two margins, " + mm(2 * margin.value()),
                            mm(StrictMath.min(length.get(), width.get())),
                            "take a larger sheet or a smaller margin");
            return Optional.empty();
        }
        return Optional.of(new SheetPacker.Stock(length.get(), width.get(), gap.value(), margin.value(), turn.value()));
    }

    private static Optional<Double> margin(KeyView key) {
        Optional<Double> margin = upTo(key, MOST_SHEET);
        if (margin.filter(m -> m < LEAST_MARGIN).isPresent()) {
            key.stop(Code.JOB_OUT_OF_RANGE, "at least " + mm(LEAST_MARGIN), key.shown(), "write margin = \"5 mm\"");
            return Optional.empty();
        }
        return margin;
    }

    // Where lines are nominal nobody here knows the cut's width.
    private static Optional<Double> gap(KeyView key, double least) {
        Optional<Double> gap = upTo(key, MOST_GAP);
        if (gap.filter(g -> g < least).isPresent()) {
            boolean nominal = !(least > LEAST_WEB);
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "at least " + mm(least) + (nominal ? "" : ": the kerf and 1 mm"),
                    key.shown(),
                    nominal
                            ? "lines are nominal here: take a gap wider than the cut, gap = \"5 mm\""
                            : "take a wider gap, or leave it out");
            return Optional.empty();
        }
        return gap;
    }

    /** A length of 0 or more; empty after a finding, or if nothing stands there. */
    static Optional<Double> upTo(KeyView key, double most) {
        Optional<Double> length = key.length(Length.Zero.ALLOWED).map(Length::mm);
        if (length.filter(l -> l > most).isPresent()) {
            key.stop(Code.JOB_OUT_OF_RANGE, "at most " + mm(most), key.shown(), "check the unit");
            return Optional.empty();
        }
        return length;
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2) + " mm";
    }
}
