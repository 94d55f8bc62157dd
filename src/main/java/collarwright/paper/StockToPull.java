package collarwright.paper;

import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutType;
import collarwright.units.Decimals;
import java.util.List;
import java.util.stream.Collectors;

/** The pipe that the order takes, net: saw cuts, trims and offcuts come on top. */
final class StockToPull {

    private final Plan plan;
    private final Amounts amounts;

    StockToPull(Plan plan) {
        this.plan = plan;
        this.amounts = new Amounts(plan);
    }

    Grid grid() {
        Job job = plan.job();
        double struts = 0;
        for (StrutType type : plan.struts().types()) {
            struts += type.cut() * job.order().made(type.count());
        }
        int collars = amounts.collarsToMake();
        int rings = amounts.ringsToMake();
        return new Grid(
                "Stock to pull, net length without saw cuts, trims and offcuts",
                List.of(
                        Column.words("for"),
                        Column.words("stock and size"),
                        Column.numbers("pieces"),
                        Column.numbers("net length"),
                        Column.words("sold in")),
                List.of(
                        row(
                                "collars",
                                job.hub().collar(),
                                collars,
                                collars * job.hub().width()),
                        row(
                                "centre rings",
                                job.hub().ring(),
                                rings,
                                rings * job.hub().ringWidth()),
                        row("struts", job.strut().stock(), amounts.strutsToMake(), struts)));
    }

    private static List<Cell> row(String use, RoundStock stock, int pieces, double length) {
        return List.of(
                Cell.strong(use),
                Cell.of(stock.title() + "\n" + size(stock)),
                Cell.of(Integer.toString(pieces)),
                Cell.strong(metres(length)),
                Cell.of(soldIn(stock)));
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
