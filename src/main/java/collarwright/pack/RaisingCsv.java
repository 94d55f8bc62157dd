package collarwright.pack;

import collarwright.assembly.Assembly;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.RaisingLine;
import collarwright.plan.RaisingLine.Seat;
import java.util.stream.Collectors;

/** The raising order for spreadsheets and phones: one row for every strut, in the order in which they go in. */
final class RaisingCsv {

    /** Where the table stands in a pack. */
    static final String FILE = "struts/raising.csv";

    private RaisingCsv() {}

    /** One row for each strut, in raising order. */
    static Table print(Plan plan, Assembly assembly) {
        TableBuilder table = new TableBuilder(
                "order",
                "go",
                "member",
                "strut type",
                "how",
                "hub that comes or is pushed into",
                "hub type",
                "pattern",
                "hole",
                "strut end",
                "its holes still empty",
                "other hub",
                "other hub type",
                "other pattern",
                "other hole",
                "other strut end",
                "other hub's holes still empty",
                "hold it up",
                "revision",
                "job");
        PartNames names = PartNames.of(plan);
        for (RaisingLine line : RaisingLine.all(plan, assembly)) {
            int member = line.step().member();
            int type = plan.hubs().strutTypeOf(member);
            boolean alike = plan.struts().types().get(type).alike();
            table.whole(line.order())
                    .whole(line.go())
                    .text(names.member(member))
                    .text(names.strutType(type))
                    .text(how(line));
            seat(table, plan, names, new End(line.at(), alike));
            seat(table, plan, names, new End(line.other(), alike));
            table.text(line.step().held() ? "yes" : "no");
            PackTables.end(table, plan);
        }
        return table.table();
    }

    private static String how(RaisingLine line) {
        return line.joins() ? "the hub comes with it" : line.way();
    }

    private record End(Seat seat, boolean alike) {}

    private static void seat(TableBuilder table, Plan plan, PartNames names, End end) {
        Seat seat = end.seat();
        int type = plan.hubs().typeOf(seat.node());
        table.text(names.node(seat.node()))
                .text(names.hubType(type))
                .text(names.pattern(type))
                .whole(seat.hole())
                .text(end.alike() ? "either" : seat.atA() ? "a" : "b")
                .text(seat.empty().stream().map(h -> Integer.toString(h)).collect(Collectors.joining(" ")));
    }
}
