package collarwright.pack;

import collarwright.cutting.SawnLength;
import collarwright.machining.EndStops;
import collarwright.plan.Plan;
import collarwright.plan.Production;
import collarwright.units.Angles;
import collarwright.units.InchFractions;
import java.util.List;
import java.util.Optional;

/** The stops for the tie holes of struts, as a table for spreadsheets: both holes from one stop, end a (E1) against it. */
public final class StopTable {

    /** Where it stands in a pack. */
    public static final String FILE = "struts/stops.csv";

    /** What it is for. */
    static final String PURPOSE = "where to set the stop for the tie holes of each strut type";

    private static final int PARTS = 32;

    private StopTable() {}

    /**
     * Lists the stops.
     *
     * @param plan the plan
     * @return the table, one row for each strut type; empty where no tie holes are drilled
     */
    public static Optional<Table> of(Plan plan) {
        List<EndStops> all = Production.stops(plan);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        TableBuilder table = new TableBuilder(
                "strut type",
                "to make",
                "cut length (mm)",
                "stop 1 (mm)",
                "stop 1 (to 1/32 in)",
                "error of the 1/32 at stop 1 (mm)",
                "stop 2 (mm)",
                "stop 2 (to 1/32 in)",
                "error of the 1/32 at stop 2 (mm)",
                "turn between, clockwise from the stop (deg)",
                "stop with E2 against it (mm)",
                "turn then, clockwise from the stop (deg)",
                "tie hole (mm)",
                "revision",
                "job");
        for (EndStops stops : all) {
            table.text(stops.type()).whole(stops.made()).number(SawnLength.of(stops.cut()), 3);
            stop(table, stops.first());
            stop(table, stops.secondInLine());
            table.number(Angles.degrees(stops.turnInLine()), 1)
                    .number(stops.second(), 3)
                    .number(Angles.degrees(stops.turnEndForEnd()), 1)
                    .number(plan.job().strut().tieHole().orElseThrow().diameter(), 3);
            PackTables.end(table, plan);
        }
        return Optional.of(table.table());
    }

    private static void stop(TableBuilder table, double at) {
        InchFractions.Shown shown = InchFractions.nearest(at, PARTS);
        table.number(at, 3).text(shown.text()).number(shown.error(), 3);
    }
}
