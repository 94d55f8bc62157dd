package collarwright.paper;

import collarwright.hub.Hubs;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.Uphill;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which way up the collar of every hub goes, and which type it is; hubs that go alike stand together. */
final class HubTables {

    /** Hubs in one row, so that a row stays a few lines high. */
    private static final int MOST = 24;

    private HubTables() {}

    /** What UP means. */
    static String rule(Plan plan) {
        String top = plan.book().flips()
                ? "TOP of the collar outside, unless the row says TOP inside: that collar goes on upside down, the TOP edge"
                        + " and the marks near it toward the inside of the dome; seen from outside its holes count counterclockwise."
                : "TOP of the collar outside.";
        return top + " UP is straight up as seen from outside the dome; at the apex it is the +x meridian,"
                + " the side of the first hub of the next tier. Holes count clockwise"
                + (plan.book().flips() ? ", seen with TOP toward you" : "") + ". struts/hubs.csv has one row for"
                + " each hub.";
    }

    static Grid grid(Plan plan) {
        PartNames names = PartNames.of(plan);
        List<List<Cell>> rows = new ArrayList<>();
        groups(plan).forEach((alike, nodes) -> {
            for (int from = 0; from < nodes.size(); from += MOST) {
                List<String> part = nodes.subList(from, StrictMath.min(nodes.size(), from + MOST));
                List<Cell> row = new ArrayList<>();
                row.add(Cell.strong(names.hubType(alike.type())));
                row.add(Cell.strong(alike.pattern()));
                row.add(Cell.of(alike.up()));
                row.add(Cell.of(String.join(", ", part)));
                rows.add(row);
            }
        });
        List<Column> columns = List.of(
                Column.words("hub type"), Column.words("pattern"), Column.words("on its node"), Column.words("hubs"));
        return new Grid("Which way up", columns, rows);
    }

    private record Alike(int type, String pattern, String up) implements Comparable<Alike> {
        @Override
        public int compareTo(Alike o) {
            return type == o.type ? up.compareTo(o.up) : Integer.compare(type, o.type);
        }
    }

    private static SortedMap<Alike, List<String>> groups(Plan plan) {
        PartNames names = PartNames.of(plan);
        Hubs hubs = plan.hubs();
        SortedMap<Alike, List<String>> groups = new TreeMap<>();
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            String top = plan.flipped(node) ? "TOP inside, " : "";
            Alike alike = new Alike(
                    type, names.pattern(type), top + Uphill.of(plan, node).words());
            groups.computeIfAbsent(alike, a -> new ArrayList<>()).add(names.node(node));
        }
        return groups;
    }
}
