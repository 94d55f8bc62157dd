package collarwright.pack;

import collarwright.machining.Load;
import collarwright.machining.SetupSheet;
import collarwright.plan.Box;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import java.util.List;

/** The tables of a batch for spreadsheets: what lies where on each stick, and how many collars go in each box. */
final class BatchCsv {

    /** Where the table of boxes stands in a pack. */
    static final String BOXES = "boxes.csv";

    /** Where the table of sticks stands in a pack. */
    static final String STICKS = "machine/sticks.csv";

    private static final int MM_DECIMALS = 3;
    private static final int INCH_DECIMALS = 4;

    private BatchCsv() {}

    /** One row for each pattern. */
    static Table boxes(Plan plan) {
        TableBuilder table = new TableBuilder("box", "pattern", "pieces", "spares among them", "revision", "job");
        for (Box box : Box.of(plan)) {
            table.whole(box.number()).text(box.pattern()).whole(box.pieces()).whole(box.spares());
            PackTables.end(table, plan);
        }
        return table.table();
    }

    /** One row for each place of each layout; lengths in both units, that of the programs first. */
    static Table sticks(Plan plan, List<SetupSheet> setups) {
        boolean inches = UnitWords.inches(plan.job());
        String first = inches ? "in" : "mm";
        String second = inches ? "mm" : "in";
        TableBuilder table = new TableBuilder(
                "stick",
                "sticks to run",
                "place from the chuck",
                "pattern",
                "edge at X (" + first + ")",
                "mid-plane at X (" + first + ")",
                "edge at X (" + second + ")",
                "mid-plane at X (" + second + ")",
                "revision",
                "job");
        for (SetupSheet setup : setups) {
            Load load = setup.load();
            double half = setup.stick().firstMiddle() - setup.stick().firstEdge();
            for (int collar = 1; collar <= load.collars(); collar++) {
                table.text(load.id()).whole(load.runs()).whole(collar).text(load.pattern(collar));
                double edge = load.edge(collar);
                for (boolean inch : new boolean[] {inches, !inches}) {
                    double unit = inch ? 25.4 : 1;
                    int decimals = inch ? INCH_DECIMALS : MM_DECIMALS;
                    table.number(edge / unit, decimals).number((edge + half) / unit, decimals);
                }
                PackTables.end(table, plan);
            }
        }
        return table.table();
    }
}
