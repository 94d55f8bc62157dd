package collarwright.paper;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.SawnLength;
import collarwright.cutting.StickLayout;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is cut from each stick, long pieces first; trim, pieces, cuts and rest add up to the stick. */
final class SawTable {

    private SawTable() {}

    /** Lengths in mm, or in inches with the millimetres behind. */
    static List<Grid> grids(StockWork work, boolean inches) {
        List<Grid> grids = new ArrayList<>();
        List<List<String>> names = work.layoutNames();
        for (int i = 0; i < names.size(); i++) {
            StockNeed need = work.needs().get(i);
            List<String> layouts = names.get(i);
            need.plan().filter(p -> !p.layouts().isEmpty()).ifPresent(p -> grids.add(grid(need, p, layouts, inches)));
        }
        return grids;
    }

    private static Grid grid(StockNeed need, CutPlan plan, List<String> names, boolean inches) {
        String what = switch (need.role()) {
            case STRUT -> "Struts";
            case COLLAR -> need.forMachine() ? "Machine sticks" : "Collars";
            case RING -> "Centre rings";
        };
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            rows.add(row(plan, plan.layouts().get(i), names.get(i), inches));
        }
        return new Grid(
                what + " from sticks: cut long pieces first; " + (inches ? "inches, mm below" : "mm")
                        + ", for one stick",
                List.of(
                        Column.words("layout"),
                        Column.numbers("sticks"),
                        Column.words("stick"),
                        Column.words("pieces"),
                        Column.numbers("trim"),
                        Column.numbers("all pieces"),
                        Column.numbers("cuts"),
                        Column.numbers("kerf"),
                        Column.numbers("rest")),
                rows);
    }

    private static List<Cell> row(CutPlan plan, StickLayout layout, String name, boolean inches) {
        StickLayout.Sums sums = layout.sums();
        return List.of(
                Cell.strong(name),
                Cell.strong(Integer.toString(layout.runs())),
                Cell.of((layout.stock().offcut() ? "offcut " + layout.stock().id() + "\n" : "")
                        + shown(sums.length(), inches)),
                Cell.of(layout.portions().stream()
                        .map(p -> portion(plan.task().pieces().get(p.piece()), p.count(), inches))
                        .collect(Collectors.joining("\n"))),
                Cell.of(shown(sums.trim(), inches)),
                Cell.of(shown(sums.pieces(), inches)),
                Cell.of(Integer.toString(sums.cuts())),
                Cell.of(shown(sums.kerf(), inches)),
                Cell.of(shown(sums.remainder(), inches)));
    }

    private static String portion(CutPiece piece, int count, boolean inches) {
        double length = SawnLength.of(piece.length());
        String mm = Decimals.fixed(length, 3);
        return count + " × " + piece.id() + " "
                + (inches ? Decimals.fixed(length / 25.4, 3) + " in\n(" + mm + " mm)" : mm);
    }

    // Three decimals at most, so that a row adds up as it is printed.
    private static String shown(double length, boolean inches) {
        String mm = Decimals.trimmed(length, 3);
        return inches ? Decimals.fixed(length / 25.4, 3) + "\n" + mm : mm;
    }
}
