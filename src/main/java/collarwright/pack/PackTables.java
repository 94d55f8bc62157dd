package collarwright.pack;

import collarwright.cutting.SawnLength;
import collarwright.hub.Hubs;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.RaisingLine;
import collarwright.strut.StrutEnd;
import collarwright.strut.StrutType;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.InchFractions;
import java.util.List;

/**
 * The tables of a pack for spreadsheets: the cut list, which strut goes where, and every hole. Each row ends with the job's
 * revision and title, so that a sheet cut in two still says what it belongs to. Units stand in the heads; inch fractions
 * carry their unit and are rounded to 1/32 in, with the rounded length less the true one beside them.
 */
public final class PackTables {

    /** Where the cut list stands in a pack. */
    public static final String CUT_LIST = "struts/cut-list.csv";

    /** Where the list of connections stands in a pack. */
    public static final String MEMBERS = "struts/members.csv";

    /** Where the table of holes stands in a pack. */
    public static final String HOLES = "templates/holes.csv";

    private static final int PARTS = 32;
    private static final int MM_DECIMALS = 3;
    private static final int DEGREE_DECIMALS = 4;

    private PackTables() {}

    /**
     * Lists the strut types with what to cut and where to drill.
     *
     * @param plan the plan
     * @return the table, one row for each strut type, shortest first
     */
    public static Table cutList(Plan plan) {
        EndColumns ends = new EndColumns(plan);
        TableBuilder table = new TableBuilder(ends.heads(
                "strut type",
                "per dome",
                "to make",
                "cut length (mm)",
                "cut length (in)",
                "cut length (to 1/32 in)",
                "error of the 1/32 (mm)",
                "tie hole from end a (mm)",
                "tie hole from end a (in)",
                "tie hole from end b (mm)",
                "tie hole from end b (in)",
                "twist of the tie holes from a to b (deg)",
                "node to node (mm)",
                "setback at end a (mm)",
                "setback at end b (mm)",
                "axial angle at end a (deg)",
                "axial angle at end b (deg)",
                "stock",
                "revision",
                "job"));
        for (StrutType type : plan.struts().types()) {
            table.text(type.id()).whole(type.count()).whole(plan.job().order().made(type.count()));
            double cut = SawnLength.of(type.cut());
            table.number(cut, MM_DECIMALS).number(cut / 25.4, MM_DECIMALS + 1);
            fraction(table, cut);
            drill(table, type.a());
            drill(table, type.b());
            degrees(table, type.twist());
            table.number(type.chord(), MM_DECIMALS);
            table.number(type.a().setback(), MM_DECIMALS).number(type.b().setback(), MM_DECIMALS);
            degrees(table, type.a().axialAngle());
            degrees(table, type.b().axialAngle());
            table.text(plan.job().strut().stock().name());
            end(table, plan, () -> ends.fill(table, type));
        }
        return table.table();
    }

    private static void drill(TableBuilder table, StrutEnd end) {
        if (end.drill().isEmpty()) {
            table.empty().empty();
        } else {
            table.number(end.drill().get(), MM_DECIMALS).number(end.drill().get() / 25.4, MM_DECIMALS + 1);
        }
    }

    private static void fraction(TableBuilder table, double length) {
        InchFractions.Shown shown = InchFractions.nearest(length, PARTS);
        table.text(shown.text()).number(shown.error(), MM_DECIMALS);
    }

    private static void degrees(TableBuilder table, double radians) {
        table.number(Angles.degrees(radians), DEGREE_DECIMALS);
    }

    /** Ends a row with what it belongs to. */
    static void end(TableBuilder table, Plan plan) {
        end(table, plan, () -> {});
    }

    private static void end(TableBuilder table, Plan plan, Runnable more) {
        table.text(plan.job().revision()).text(plan.job().title());
        more.run();
        table.endRow();
    }

    /**
     * Lists for every hole of every hub which strut goes in, where its other end goes and when it is put in: every strut
     * stands in it twice, once from each end.
     *
     * @param plan the plan
     * @return the table, by hub and hole
     */
    public static Table members(Plan plan) {
        TableBuilder table = new TableBuilder(
                "from node",
                "from hub type",
                "from pattern",
                "from hole",
                "from strut end",
                "to node",
                "to hub type",
                "to pattern",
                "to hole",
                "to strut end",
                "strut type",
                "cut length (mm)",
                "member",
                "order in raising",
                "revision",
                "job");
        PartNames names = PartNames.of(plan);
        Hubs hubs = plan.hubs();
        List<Integer> orders =
                plan.assembly().map(a -> RaisingLine.orders(plan, a)).orElse(List.of());
        int[][] endAt = endsByHole(hubs);
        for (int node = 0; node < endAt.length; node++) {
            for (int end : endAt[node]) {
                int member = end >> 1;
                boolean fromA = (end & 1) == 0;
                int type = hubs.strutTypeOf(member);
                boolean alike = plan.struts().types().get(type).alike();
                place(table, plan, names, new Place(member, fromA));
                table.text(alike ? "either" : fromA ? "a" : "b");
                place(table, plan, names, new Place(member, !fromA));
                table.text(alike ? "either" : fromA ? "b" : "a");
                table.text(names.strutType(type))
                        .number(SawnLength.of(plan.struts().types().get(type).cut()), MM_DECIMALS)
                        .text(names.member(member));
                if (orders.isEmpty()) {
                    table.empty();
                } else {
                    table.whole(orders.get(member));
                }
                end(table, plan);
            }
        }
        return table.table();
    }

    private record Place(int member, boolean atA) {}

    private static void place(TableBuilder table, Plan plan, PartNames names, Place place) {
        Hubs hubs = plan.hubs();
        int node = place.atA() ? hubs.nodeAtA(place.member()) : hubs.nodeAtB(place.member());
        int type = hubs.typeOf(node);
        table.text(names.node(node))
                .text(names.hubType(type))
                .text(names.pattern(type))
                .whole(place.atA() ? plan.holeAtA(place.member()) : plan.holeAtB(place.member()));
    }

    // For every node the strut ends in the order of its holes; an end is 2 · member + (0 at its node a, 1 at its node
    // b).
    private static int[][] endsByHole(Hubs hubs) {
        int[][] ends = new int[hubs.dome().nodeCount()][];
        for (int node = 0; node < ends.length; node++) {
            ends[node] = new int[hubs.types().get(hubs.typeOf(node)).struts().size()];
        }
        for (int member = 0; member < hubs.dome().memberCount(); member++) {
            ends[hubs.nodeAtA(member)][hubs.holeAtA(member) - 1] = 2 * member;
            ends[hubs.nodeAtB(member)][hubs.holeAtB(member) - 1] = 2 * member + 1;
        }
        return ends;
    }

    /**
     * Lists the holes of every pattern: where each is, what makes it and why it has its size.
     *
     * @param plan the plan
     * @return the table, by pattern and hole; only the heads where the plan has no patterns
     */
    public static Table holes(Plan plan) {
        TableBuilder table = new TableBuilder(
                "pattern",
                "collars per dome",
                "collars to make",
                "hole",
                "azimuth from the 0 line (deg)",
                "azimuth (deg and min)",
                "arc on the outside (mm)",
                "arc on the outside (to 1/32 in)",
                "error of the 1/32 (mm)",
                "height above the mid-plane (mm)",
                "pilot",
                "cutter",
                "kind",
                "marked size",
                "as drilled (mm)",
                "least that would do (mm)",
                "needed lean (deg)",
                "tilt limit (deg)",
                "least tilt limit (deg)",
                "largest tilt limit (deg)",
                "slack (deg)",
                "fingerprint",
                "revision",
                "job");
        for (Pattern pattern : plan.book().patterns()) {
            for (Hole hole : pattern.holes()) {
                table.text(pattern.id())
                        .whole(pattern.count())
                        .whole(plan.job().order().made(pattern.count()))
                        .whole(hole.number());
                position(table, hole, plan.job().hub().body().outerRadius());
                size(table, hole);
                table.text(pattern.fingerprint());
                end(table, plan);
            }
        }
        return table.table();
    }

    private static void position(TableBuilder table, Hole hole, double outerRadius) {
        double arc = hole.azimuth() * outerRadius;
        degrees(table, hole.azimuth());
        // In letters: a file without a byte-order mark keeps its heads and figures plain in every spreadsheet.
        table.text(Angles.degreesMinutes(hole.azimuth()).replace("°", " deg").replace("'", " min"))
                .number(arc, MM_DECIMALS);
        fraction(table, arc);
        table.number(hole.height(), MM_DECIMALS);
    }

    private static String pilot(CutterKind kind) {
        return switch (kind) {
            case TWIST -> "centre punch";
            case HOLE_SAW -> "the saw's own pilot drill";
            case END_MILL, TUBE_CUTTER -> "none";
        };
    }

    private static void size(TableBuilder table, Hole hole) {
        table.text(pilot(hole.cutter().kind()))
                .text(hole.cutter().id())
                .text(hole.cutter().kind().title())
                .text(hole.cutter().marked())
                .number(hole.diameter(), MM_DECIMALS);
        if (Double.isFinite(hole.required())) {
            table.number(hole.required(), MM_DECIMALS);
        } else {
            table.empty();
        }
        degrees(table, hole.neededLean());
        degrees(table, hole.tiltLimit());
        degrees(table, hole.tiltMin());
        degrees(table, hole.tiltMax());
        degrees(table, hole.slack());
    }
}
