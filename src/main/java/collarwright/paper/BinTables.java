package collarwright.paper;

import collarwright.picture.Figures;
import collarwright.plan.BinTable;
import collarwright.plan.Plan;
import collarwright.tooling.HoleSize;
import collarwright.units.Decimals;
import java.util.List;

/** What every bin of natural stock gets, beside what it would get if all struts had the same holes. */
final class BinTables {

    private BinTables() {}

    static Grid grid(Plan plan) {
        List<List<Cell>> rows =
                BinTable.of(plan).rows().stream().map(BinTables::row).toList();
        return new Grid(
                "Size bins: a hole for each bin, and one for all struts",
                List.of(
                        Column.words("bin"),
                        Column.numbers("struts, mm"),
                        Column.words("strut"),
                        Column.numbers("needed lean"),
                        Column.words("cutter"),
                        Column.numbers("tilt limit"),
                        Column.numbers("slack"),
                        Column.words("for all"),
                        Column.numbers("slack")),
                rows);
    }

    private static List<Cell> row(BinTable.Row row) {
        return List.of(
                Cell.strong(row.bin() + (row.chosen() ? " (this job)" : "")),
                Cell.of(Decimals.fixed(row.od().min(), 2) + " to "
                        + Decimals.fixed(row.od().max(), 2)),
                Cell.of(row.strutEnd()),
                Cell.of(Figures.degrees(row.own().need().lean())),
                Cell.strong(cutter(row.own())),
                Cell.of(row.own()
                        .cutter()
                        .map(c -> Figures.degrees(HoleSize.limit(row.own().need(), c)))
                        .orElse("–")),
                Cell.strong(slack(row.own())),
                Cell.of(cutter(row.whole())),
                Cell.of(slack(row.whole())));
    }

    private static String cutter(HoleSize size) {
        return size.cutter().map(c -> c.marked()).orElse("no cutter");
    }

    private static String slack(HoleSize size) {
        return BinTable.Row.slack(size).map(Figures::degrees).orElse("–");
    }
}
