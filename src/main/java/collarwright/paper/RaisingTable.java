package collarwright.paper;

import collarwright.assembly.Assembly;
import collarwright.dome.Dome;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.RaisingLine;
import collarwright.plan.RaisingLine.Seat;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Who stands at a hub finds it here: in raising order, what goes into it now, how, and what still waits. */
final class RaisingTable {

    /** Where every strut of the order stands, for domes of any size. */
    static final String FILE = "struts/raising.csv";

    /** More hubs than this are not printed: nobody leafs through them on a site. Our choice, no source. */
    static final int MOST = 120;

    private final Plan plan;
    private final PartNames names;
    private final List<RaisingLine> lines;

    RaisingTable(Plan plan, Assembly assembly) {
        this.plan = plan;
        this.names = PartNames.of(plan);
        this.lines = RaisingLine.all(plan, assembly);
    }

    boolean printed() {
        return plan.hubs().dome().nodeCount() <= MOST;
    }

    static String rule() {
        return "Order numbers are those of " + FILE
                + " and of struts/members.csv. Comes: the hub is slid over the end of"
                + " this strut, which sits in the other hub. Push: first into the hub named, beyond its seat, then back"
                + " into the other one. Still empty: the holes of this hub whose struts come later; their neighbours are"
                + " loose until then.";
    }

    /** One row for every hub as it comes to stand; a hub that takes struts again later has another row then. */
    Grid grid() {
        List<List<Cell>> rows = new ArrayList<>();
        Set<Integer> stand = new TreeSet<>();
        List<RaisingLine> own = new ArrayList<>();
        int hub = -1;
        for (RaisingLine line : lines) {
            int next = line.joins() || hub < 0 || !touches(line, hub) ? later(line, stand) : hub;
            if (next != hub && !own.isEmpty()) {
                rows.add(row(hub, own));
                own.clear();
            }
            hub = next;
            own.add(line);
            stand.add(line.at().node());
            stand.add(line.other().node());
        }
        rows.add(row(hub, own));
        return new Grid(
                "Hub by hub, in raising order",
                List.of(
                        Column.numbers("order"),
                        Column.words("hub"),
                        Column.words(plan.book().hubsShare() ? "type, pattern" : "pattern"),
                        Column.words("what goes in now, and how"),
                        Column.words("still empty")),
                rows);
    }

    private static boolean touches(RaisingLine line, int hub) {
        return line.at().node() == hub || line.other().node() == hub;
    }

    // The hub that a strut is told at: the one that comes with it, else the one that is not pushed into.
    private static int later(RaisingLine line, Set<Integer> stand) {
        if (line.joins()) {
            return line.at().node();
        }
        return stand.contains(line.other().node())
                ? line.at().node()
                : line.other().node();
    }

    private List<Cell> row(int hub, List<RaisingLine> own) {
        int type = plan.hubs().typeOf(hub);
        RaisingLine first = own.get(0);
        RaisingLine last = own.get(own.size() - 1);
        String flipped = plan.flipped(hub) ? ", TOP inside" : "";
        return List.of(
                Cell.strong(
                        first.order() == last.order()
                                ? Integer.toString(first.order())
                                : first.order() + "-" + last.order()),
                Cell.strong(names.node(hub)),
                Cell.of((plan.book().hubsShare() ? names.hubType(type) + ", " : "") + names.pattern(type) + flipped),
                Cell.of(own.stream().map(line -> told(line, hub)).collect(Collectors.joining("\n"))),
                Cell.of(numbers(seat(last, hub).empty())));
    }

    private static Seat seat(RaisingLine line, int hub) {
        return line.at().node() == hub ? line.at() : line.other();
    }

    // Such as "hole 3: SB from T4-02 hole 1, push into T4-02".
    private String told(RaisingLine line, int hub) {
        Seat here = seat(line, hub);
        Seat there = line.at().node() == hub ? line.other() : line.at();
        int type = plan.hubs().strutTypeOf(line.step().member());
        boolean alike = plan.struts().types().get(type).alike();
        String strut = names.strutType(type) + (alike ? "" : here.atA() ? "a" : "b");
        String place =
                "hole " + here.hole() + ": " + strut + " from " + names.node(there.node()) + " hole " + there.hole();
        String how = line.joins()
                ? ", comes with it"
                : ", " + line.way() + " into " + names.node(line.at().node());
        return place + how + (line.step().held() ? ", hold it up" : "");
    }

    private static String numbers(List<Integer> holes) {
        return holes.isEmpty()
                ? "none"
                : holes.stream().map(h -> Integer.toString(h)).collect(Collectors.joining(", "));
    }

    /** How many hubs and struts the dome has, where they are too many for paper. */
    String tooMany() {
        Dome dome = plan.hubs().dome();
        return dome.nodeCount() + " hubs are too many for a table on paper (" + MOST + " at most): " + FILE
                + " has a row for each of the " + dome.memberCount() + " struts, in raising order.";
    }
}
