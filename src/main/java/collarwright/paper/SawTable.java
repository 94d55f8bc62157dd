package collarwright.paper;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
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

    static List<Grid> grids(StockWork work) {
        List<Grid> grids = new ArrayList<>();
        List<List<String>> names = work.layoutNames();
        for (int i = 0; i < names.size(); i++) {
            StockNeed need = work.needs().get(i);
            List<String> layouts = names.get(i);
            need.plan().filter(p -> !p.layouts().isEmpty()).ifPresent(p -> grids.add(grid(need, p, layouts)));
        }
        return grids;
    }

    private static Grid grid(StockNeed need, CutPlan plan, List<String> names) {
        String what = switch (need.role()) {
            case STRUT -> "Struts";
            case COLLAR -> need.forMachine() ? "Machine sticks" : "Collars";
            case RING -> "Centre rings";
        };
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            rows.add(row(plan, plan.layouts().get(i), names.get(i)));
        }
        return new Grid(
                what + " from sticks: cut long pieces first; mm, for one stick",
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

    private static List<Cell> row(CutPlan plan, StickLayout layout, String name) {
        StickLayout.Sums sums = layout.sums();
        return List.of(
                Cell.strong(name),
                Cell.strong(Integer.toString(layout.runs())),
                Cell.of((layout.stock().offcut() ? "offcut " + layout.stock().id() + "\n" : "") + mm(sums.length())),
                Cell.of(layout.portions().stream()
                        .map(p -> portion(plan.task().pieces().get(p.piece()), p.count()))
                        .collect(Collectors.joining("\n"))),
                Cell.of(mm(sums.trim())),
                Cell.of(mm(sums.pieces())),
                Cell.of(Integer.toString(sums.cuts())),
                Cell.of(mm(sums.kerf())),
                Cell.of(mm(sums.remainder())));
    }

    private static String portion(CutPiece piece, int count) {
        return count + " × " + piece.id() + " " + Decimals.fixed(StopBlocks.rounded(piece.length()), 3);
    }

    // Three decimals at most, so that a row adds up as it is printed.
    private static String mm(double length) {
        return Decimals.trimmed(length, 3);
    }
}
