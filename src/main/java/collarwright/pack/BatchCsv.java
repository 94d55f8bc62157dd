package collarwright.pack;

import collarwright.machining.Load;
import collarwright.machining.SetupSheet;
import collarwright.plan.Box;
import collarwright.plan.Plan;
import java.util.List;

/** The tables of a batch for spreadsheets: what lies where on each stick, and how many collars go in each box. */
final class BatchCsv {

    /** Where the table of boxes stands in a pack. */
    static final String BOXES = "boxes.csv";

    /** Where the table of sticks stands in a pack. */
    static final String STICKS = "machine/sticks.csv";

    private static final int MM_DECIMALS = 3;

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

    /** One row for each place of each layout. */
    static Table sticks(Plan plan, List<SetupSheet> setups) {
        TableBuilder table = new TableBuilder(
                "stick",
                "sticks to run",
                "place from the chuck",
                "pattern",
                "edge at X (mm)",
                "mid-plane at X (mm)",
                "revision",
                "job");
        for (SetupSheet setup : setups) {
            Load load = setup.load();
            double half = setup.stick().firstMiddle() - setup.stick().firstEdge();
            for (int collar = 1; collar <= load.collars(); collar++) {
                table.text(load.id())
                        .whole(load.runs())
                        .whole(collar)
                        .text(load.pattern(collar))
                        .number(load.edge(collar), MM_DECIMALS)
                        .number(load.edge(collar) + half, MM_DECIMALS);
                PackTables.end(table, plan);
            }
        }
        return table.table();
    }
}
