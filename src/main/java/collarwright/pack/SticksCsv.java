package collarwright.pack;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.SawnLength;
import collarwright.cutting.StickLayout;
import collarwright.job.CuttingSettings;
import collarwright.job.OffcutRows;
import collarwright.plan.Plan;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import collarwright.units.InchFractions;
import java.util.List;
import java.util.Locale;

/**
 * The cutting plan as a table, and the inventory of offcuts that the next job reads.
 *
 * <p>Of each stick every part of its length has a row, in the order in which the saw comes to it; the column of what is
 * together adds up to the stick's length, to the last digit: pieces are rounded up to 0.001 mm and sticks down.
 */
public final class SticksCsv {

    /** Where the cutting plan stands in a pack. */
    public static final String STICKS = "struts/sticks.csv";

    /** Where the next inventory of offcuts stands in a pack. */
    public static final String OFFCUTS = "struts/offcuts.csv";

    static final String PURPOSE = "what is cut from which stick, in which order, and what is left";

    static final String OFFCUTS_PURPOSE =
            "offcuts that are left when all is cut; name it in the next job: [saw] offcuts";

    private static final int PARTS = 32;
    private static final int MM_DECIMALS = 3;

    private SticksCsv() {}

    /**
     * Lists the sticks.
     *
     * @param plan the plan
     * @param work its cutting plans
     * @return the table
     */
    public static Table sticks(Plan plan, StockWork work) {
        TableBuilder table = new TableBuilder(
                "layout",
                "sticks cut like this",
                "for",
                "stock",
                "stick",
                "stick length (mm)",
                "step",
                "what",
                "how many",
                "each (mm)",
                "each (to 1/32 in)",
                "error of the 1/32 (mm)",
                "together (mm)",
                "revision",
                "job");
        List<List<String>> names = work.layoutNames();
        for (int i = 0; i < names.size(); i++) {
            StockNeed need = work.needs().get(i);
            if (need.plan().isPresent()) {
                CutPlan cut = need.plan().get();
                for (int k = 0; k < cut.layouts().size(); k++) {
                    new Stick(table, plan, need, cut, names.get(i).get(k))
                            .print(cut.layouts().get(k));
                }
            }
        }
        return table.table();
    }

    /**
     * Lists what is left over.
     *
     * @param work the cutting plans
     * @return the table
     */
    public static Table offcuts(StockWork work) {
        TableBuilder table = new TableBuilder(OffcutRows.COLUMNS.toArray(String[]::new));
        for (CuttingSettings.Offcut offcut : work.offcuts()) {
            table.text(offcut.id())
                    .text(offcut.stock())
                    .number(offcut.length(), MM_DECIMALS)
                    .text(OffcutRows.check(offcut))
                    .endRow();
        }
        return table.table();
    }

    private static final class Stick {
        private final TableBuilder table;
        private final Plan plan;
        private final StockNeed need;
        private final CutPlan cut;
        private final String name;
        private int step;

        Stick(TableBuilder table, Plan plan, StockNeed need, CutPlan cut, String name) {
            this.table = table;
            this.plan = plan;
            this.need = need;
            this.cut = cut;
            this.name = name;
        }

        void print(StickLayout layout) {
            StickLayout.Sums sums = layout.sums();
            if (sums.trim() > 0) {
                sum(layout, "trim of the first end", 1, sums.trim());
            }
            for (StickLayout.Portion portion : layout.portions()) {
                CutPiece piece = cut.task().pieces().get(portion.piece());
                double each = SawnLength.of(piece.length());
                head(layout, piece.id(), portion.count());
                InchFractions.Shown shown = InchFractions.nearest(each, PARTS);
                table.number(each, MM_DECIMALS).text(shown.text()).number(shown.error(), MM_DECIMALS);
                table.number(portion.count() * each, MM_DECIMALS);
                PackTables.end(table, plan);
            }
            if (layout.wholeCuts() > 0) {
                sum(
                        layout,
                        "saw cuts",
                        layout.wholeCuts(),
                        sums.kerf() - layout.sums().lastCut());
            }
            if (layout.sums().lastCut() > 0) {
                sum(layout, "last cut, with the stick's end", 1, layout.sums().lastCut());
            }
            sum(layout, "rest", 1, sums.remainder());
        }

        private void sum(StickLayout layout, String what, int count, double together) {
            head(layout, what, count);
            table.empty().empty().empty().number(together, MM_DECIMALS);
            PackTables.end(table, plan);
        }

        private void head(StickLayout layout, String what, int count) {
            step++;
            table.text(name)
                    .whole(layout.runs())
                    .text(
                            need.forMachine()
                                    ? "machine stick"
                                    : need.role().name().toLowerCase(Locale.ROOT))
                    .text(need.stock().inventoryName())
                    .text(
                            layout.stock().offcut()
                                    ? "offcut " + layout.stock().id()
                                    : layout.stock().id())
                    .number(layout.sums().length(), MM_DECIMALS)
                    .whole(step)
                    .text(what)
                    .whole(count);
        }
    }
}
