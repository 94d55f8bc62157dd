package collarwright.paper;

import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.StockNeed;
import collarwright.plan.UnitWords;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The pipe that the order takes, net: saw cuts, trims and offcuts come on top. */
final class StockToPull {

    private static final Map<StockNeed.Role, String> USES = Map.of(
            StockNeed.Role.COLLAR, "collars", StockNeed.Role.RING, "centre rings", StockNeed.Role.STRUT, "struts");

    private StockToPull() {}

    static Grid grid(Plan plan) {
        return new Grid(
                "Stock to pull, net length without saw cuts, trims and offcuts",
                List.of(
                        Column.words("for"),
                        Column.words("stock and size"),
                        Column.numbers("pieces"),
                        Column.numbers("net length"),
                        Column.words("sold in")),
                StockNeed.of(plan).stream().map(need -> row(plan.job(), need)).toList());
    }

    private static List<Cell> row(Job job, StockNeed need) {
        return List.of(
                Cell.strong(Objects.requireNonNull(USES.get(need.role()))),
                Cell.of(need.stock().title() + "\n" + UnitWords.of(job, size(need.stock()))),
                Cell.of(Integer.toString(need.pieces())),
                Cell.strong(metres(need.netLength())),
                Cell.of(soldIn(need.stock())));
    }

    private static String soldIn(RoundStock stock) {
        return stock.lengths().isEmpty()
                ? "not known"
                : stock.lengths().stream().map(StockToPull::metres).collect(Collectors.joining("\n"));
    }

    private static String metres(double length) {
        return Decimals.fixed(length / 1000, 2) + " m\n(" + Decimals.fixed(length / 304.8, 1) + " ft)";
    }

    /** Outside diameter and wall, and whether anybody measured them. */
    static String size(RoundStock stock) {
        return "Ø " + diameter(stock) + "\n" + wall(stock);
    }

    static String diameter(RoundStock stock) {
        return range(stock.od().min(), stock.od().max()) + measured(stock.odMeasured());
    }

    static String wall(RoundStock stock) {
        return stock.wall()
                .map(w -> "wall " + range(w.min(), w.max()) + measured(stock.wallMeasured()))
                .orElse("solid");
    }

    private static String range(double least, double most) {
        return least == most
                ? Sizes.both(least)
                : Sizes.exact(least).replace(" mm", "") + " to " + Sizes.exact(most) + " ("
                        + Sizes.inches(least).replace(" in", "") + " to " + Sizes.inches(most) + ")";
    }

    private static String measured(boolean measured) {
        return measured ? ", measured" : ", nominal, not measured";
    }
}
