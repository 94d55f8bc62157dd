package collarwright.paper;

import collarwright.cutting.CutPlan;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.StockNeed;
import collarwright.plan.StripNeed;
import collarwright.plan.UnitWords;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The pipe and strip that the order takes: how many sticks of each length, where a cutting plan says so. */
final class StockToPull {

    private static final Map<StockNeed.Role, String> USES = Map.of(
            StockNeed.Role.COLLAR, "collars", StockNeed.Role.RING, "centre rings", StockNeed.Role.STRUT, "struts");

    private StockToPull() {}

    static Grid grid(Plan plan, Paperwork work) {
        Job job = plan.job();
        List<List<Cell>> rows = new ArrayList<>();
        work.stock().needs().forEach(need -> rows.add(row(work, need)));
        // Beside the struts, where collars of pipe stand.
        work.strips().needs().forEach(need -> rows.add(1, strip(job, need)));
        return new Grid(
                "Pipe, bar and strip",
                List.of(
                        Column.words("for"),
                        Column.words("stock and size"),
                        Column.numbers("pieces"),
                        Column.numbers("net length"),
                        Column.words("sold in"),
                        Column.words("take")),
                rows);
    }

    private static List<Cell> row(Paperwork work, StockNeed need) {
        Job job = work.plan().job();
        return List.of(
                Cell.strong(Objects.requireNonNull(USES.get(need.role()))),
                Cell.of(need.stock().title() + "\n" + UnitWords.of(job, size(need.stock()))),
                Cell.of(Integer.toString(need.pieces())),
                Cell.strong(metres(job, need.netLength())),
                Cell.of(soldIn(job, need.stock())),
                Cell.of(UnitWords.of(job, need.plan().map(StockToPull::taken).orElseGet(() -> elsewhere(work, need)))));
    }

    private static List<Cell> strip(Job job, StripNeed need) {
        return List.of(
                Cell.strong("collars, rolled"),
                Cell.of("Strip or sheet, " + need.material() + "\n"
                        + UnitWords.of(
                                job,
                                Sizes.both(need.width()) + " wide\n" + Sizes.both(need.thickness())
                                        + " thick, nominal, not measured")),
                Cell.of(Integer.toString(need.pieces())),
                Cell.strong(metres(job, need.length())),
                Cell.of("not known"),
                Cell.of("cuts and margins of the sheet come on top"));
    }

    private static String elsewhere(Paperwork work, StockNeed need) {
        if (need.role() != StockNeed.Role.COLLAR
                || !work.plan().job().shop().machine().programmed()) {
            return "not planned";
        }
        return "the machine's own sticks";
    }

    private static String taken(CutPlan plan) {
        List<String> lines = new ArrayList<>();
        if (plan.offcutsUsed() > 0) {
            lines.add(plan.offcutsUsed() + (plan.offcutsUsed() == 1 ? " offcut" : " offcuts"));
        }
        plan.task().stocks().stream()
                .filter(s -> !s.offcut() && plan.taken(s) > 0)
                .forEach(s -> lines.add(plan.taken(s) + " of " + s.id()));
        if (!plan.uncut().isEmpty()) {
            lines.add("not enough for all pieces");
        } else if (plan.proof().proven()) {
            lines.add("the least, proven");
        } else {
            lines.add("the least within " + Decimals.fixed(100 * plan.proof().gap(), 2) + " %");
        }
        return String.join("\n", lines);
    }

    private static String soldIn(Job job, RoundStock stock) {
        return stock.lengths().isEmpty()
                ? "not known"
                : stock.lengths().stream().map(l -> metres(job, l)).collect(Collectors.joining("\n"));
    }

    /** In the job's unit first. */
    private static String metres(Job job, double length) {
        String metres = Decimals.fixed(length / 1000, 2) + " m";
        String feet = Decimals.fixed(length / 304.8, 1) + " ft";
        return UnitWords.inches(job) ? feet + "\n(" + metres + ")" : metres + "\n(" + feet + ")";
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
