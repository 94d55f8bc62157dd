package collarwright.pack;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.Uphill;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;

/** The table of hubs for spreadsheets: where each stands, which collar it takes, and which way up the collar goes. */
public final class HubTable {

    /** Where the table stands in a pack. */
    public static final String FILE = "struts/hubs.csv";

    private HubTable() {}

    /**
     * Lists every hub of a dome.
     *
     * @param plan the plan
     * @return the table, one row for each hub, by tier and place
     */
    public static Table print(Plan plan) {
        boolean flip = plan.job().drilling().flip();
        List<String> heads = new ArrayList<>(List.of(
                "hub",
                "tier",
                "place",
                "hub type",
                "pattern",
                "x from the centre (mm)",
                "y (mm)",
                "z (mm)",
                "moved to level the foot (mm)",
                "UP clockwise from the 0 line (deg)",
                "UP: straight up as seen from outside; at the apex the +x meridian"));
        if (flip) {
            heads.add("TOP of the collar");
        }
        heads.addAll(List.of("revision", "job"));
        TableBuilder table = new TableBuilder(heads.toArray(String[]::new));
        PartNames names = PartNames.of(plan);
        Hubs hubs = plan.hubs();
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            place(table.text(names.node(node)), hubs.dome(), node);
            table.text(names.hubType(type)).text(names.pattern(type));
            position(table, plan, node);
            table.number(Angles.degrees(plan.turn(node)), 4);
            table.text(Uphill.of(plan, node).words());
            if (flip) {
                table.text(plan.flipped(node) ? "inside" : "outside");
            }
            PackTables.end(table, plan);
        }
        return table.table();
    }

    private static void place(TableBuilder table, Dome dome, int node) {
        if (dome.hasTiers()) {
            table.whole(dome.countedTier(node)).whole(dome.placeOf(node));
        } else {
            table.text("").text("");
        }
    }

    private static void position(TableBuilder table, Plan plan, int node) {
        double radius = plan.struts().radius();
        Dome dome = plan.hubs().dome();
        table.number(radius * dome.x(node), 3).number(radius * dome.y(node), 3).number(radius * dome.z(node), 3);
        table.number(radius * dome.moved(node), 3);
    }
}
