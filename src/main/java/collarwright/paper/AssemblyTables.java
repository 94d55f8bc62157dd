package collarwright.paper;

import collarwright.assembly.Assembly;
import collarwright.assembly.HoleReport;
import collarwright.assembly.Push;
import collarwright.assembly.RaisingOrder.Stage;
import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.picture.Figures;
import collarwright.plan.FlatEntry;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How a frame is put together: what room every collar leaves for a push, and the order in which it goes up. */
final class AssemblyTables {

    /** More goes than this are not printed: nobody follows them on paper. */
    private static final int MOST_STAGES = 60;

    private final Assembly assembly;
    private final Plan plan;
    private final Hubs hubs;
    private final Dome dome;
    private final PartNames names;
    private final Figures figures;

    AssemblyTables(Plan plan, Assembly assembly) {
        this.assembly = assembly;
        this.plan = plan;
        this.hubs = plan.hubs();
        this.dome = hubs.dome();
        this.names = PartNames.of(plan);
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    static List<String> rules(Plan plan) {
        boolean inside = FlatEntry.inside(plan);
        List<String> rules = new ArrayList<>(List.of(
                "Go by the table of goes: from the foot up, around each tier in the order of the places. All centre rings"
                        + " stay out until every strut is in.",
                "A hub comes with its first strut: slide its collar over the end of that strut.",
                "Every other strut goes between two hubs that stand. Put it into the collar that the table names, push it"
                        + " in beyond its seat until its other end is clear of the other collar, aim that end at its hole,"
                        + " and draw it back until both ends are seated.",
                inside
                        ? insideRule(plan)
                        : "When all struts are in, slide each centre ring in along the hub's axis, and tie.",
                "Prop what hangs free, keep clear of it, and do not climb on the frame. Local codes apply."));
        if (inside) {
            rules.add(0, INSIDE);
        }
        return List.copyOf(rules);
    }

    /** What comes before everything where ends are flattened inside the collars. */
    static final String INSIDE =
            "Struts go in cut only, their ends round and not drilled: a flattened end does not go through its hole.";

    /** What is done at each hub when all struts are in. */
    static String insideRule(Plan plan) {
        double fromEnd = plan.job().strut().tieHole().orElseThrow().fromEnd();
        return "When all struts are in, hub by hub: flatten each end inside the collar, drill the bolt hole through both"
                + " layers " + Decimals.trimmed(fromEnd, 3) + " mm from the cut end, marked with a stop block or a"
                + " template; then slide the centre ring in along the hub's axis, and put the bolts in and tie. Wear eye"
                + " protection; try it on a trial piece first.";
    }

    /** One row for all holes of a pattern that have the same figures. */
    Grid travel() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int type = 0; type < assembly.reports().size(); type++) {
            Map<List<String>, List<String>> alike = new LinkedHashMap<>();
            for (int hole : ascending(type)) {
                HoleReport report = assembly.reports().get(type).get(hole);
                String strut = names.strutType(
                        hubs.types().get(type).struts().get(hole).strutType());
                alike.computeIfAbsent(figures(type, strut, report), k -> new ArrayList<>())
                        .add(Integer.toString(number(type, hole)));
            }
            String pattern = (plan.book().hubsShare() ? names.hubType(type) + " on " : "") + names.pattern(type);
            alike.forEach((shown, holes) -> {
                List<Cell> row = new ArrayList<>();
                row.add(Cell.strong(pattern));
                row.add(Cell.of(String.join(", ", holes)));
                shown.forEach(text -> row.add(Cell.of(text)));
                rows.add(row);
            });
        }
        return new Grid(
                "How far a strut has to be pushed in beyond its seat, and how far it can be, all neighbours seated",
                List.of(
                        Column.words("pattern"),
                        Column.words("holes"),
                        Column.words("strut"),
                        Column.numbers("has to go in"),
                        Column.numbers("room, ring out"),
                        Column.words("then meets"),
                        Column.numbers("room, ring in"),
                        Column.words("or leave out first")),
                rows);
    }

    // The hub type's struts in the order of the holes that they sit in.
    private List<Integer> ascending(int type) {
        return IntStream.range(0, assembly.reports().get(type).size())
                .boxed()
                .sorted(Comparator.comparingInt(strut -> number(type, strut)))
                .toList();
    }

    private int number(int type, int strut) {
        return plan.placement(type).holes().get(strut) + 1;
    }

    private List<String> figures(int type, String strut, HoleReport report) {
        String waiting = report.waiting().stream()
                .map(hole -> number(type, hole))
                .sorted()
                .map(hole -> Integer.toString(hole))
                .collect(Collectors.joining(", "));
        return List.of(
                strut,
                figures.length(report.toEnter()),
                room(report.ringOut()),
                met(report.ringOut()),
                room(report.ringIn()),
                report.enough() ? "–" : waiting.isEmpty() ? "no help" : "hole " + waiting);
    }

    private String room(Push push) {
        return push.met() == Push.Met.NOTHING ? "no end" : figures.length(push.travel());
    }

    // Without the number of the hole: holes that look alike stay in one row.
    private static String met(Push push) {
        return switch (push.met()) {
            case NOTHING -> "nothing";
            case STRUT -> "a strut";
            case RING -> "the ring";
            case WALL -> "the wall";
        };
    }

    boolean printed() {
        return assembly.order().stages().size() <= MOST_STAGES;
    }

    /** One row for each strut type in each go. */
    Grid order() {
        List<List<Cell>> rows = new ArrayList<>();
        int go = 0;
        for (Stage stage : assembly.order().stages()) {
            go++;
            String head = Integer.toString(go);
            String stand = stand(stage);
            Map<Integer, List<RaisingStep>> byStrut = stage.steps().stream()
                    .collect(Collectors.groupingBy(
                            s -> hubs.strutTypeOf(s.member()), TreeMap::new, Collectors.toList()));
            for (Map.Entry<Integer, List<RaisingStep>> entry : byStrut.entrySet()) {
                List<RaisingStep> steps = entry.getValue();
                long join = steps.stream().filter(s -> s.way() == Way.JOIN).count();
                rows.add(List.of(
                        Cell.strong(head),
                        Cell.of(stand),
                        Cell.strong(names.strutType(entry.getKey())),
                        Cell.of(Long.toString(join)),
                        Cell.of(Long.toString(steps.size() - join)),
                        Cell.of(into(steps))));
                head = "";
                stand = "";
            }
        }
        return new Grid(
                "Goes, in turn",
                List.of(
                        Column.words("go"),
                        Column.words("hubs that come to stand"),
                        Column.words("strut"),
                        Column.numbers("come with a hub"),
                        Column.numbers("are pushed in"),
                        Column.words("pushed first into")),
                rows);
    }

    // Such as "CB holes 2, 6; CE hole 3".
    private String into(List<RaisingStep> steps) {
        Map<String, TreeSet<Integer>> places = new TreeMap<>();
        for (RaisingStep step : steps) {
            if (step.way() != Way.JOIN) {
                places.computeIfAbsent(collar(step), k -> new TreeSet<>()).add(hole(step));
            }
        }
        return places.entrySet().stream()
                .map(e -> e.getKey()
                        + (e.getValue().size() == 1 ? " hole " : " holes ")
                        + e.getValue().stream().map(h -> Integer.toString(h)).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private String collar(RaisingStep step) {
        int type = hubs.typeOf(step.hub());
        String pattern = (plan.book().hubsShare() ? names.hubType(type) + " on " : "") + names.pattern(type);
        return switch (step.way()) {
            case BOW -> "bowed: " + pattern;
            case STUCK -> "no room: " + pattern;
            default -> pattern;
        };
    }

    private int hole(RaisingStep step) {
        return hubs.nodeAtA(step.member()) == step.hub() ? plan.holeAtA(step.member()) : plan.holeAtB(step.member());
    }

    // Such as "T5-01 to T5-15" where they follow each other.
    private String stand(Stage stage) {
        List<String> parts = new ArrayList<>();
        List<Integer> nodes = stage.hubs();
        int from = 0;
        for (int i = 1; i <= nodes.size(); i++) {
            boolean follows = i < nodes.size()
                    && nodes.get(i) == nodes.get(i - 1) + 1
                    && dome.placeOf(nodes.get(i)) == dome.placeOf(nodes.get(i - 1)) + 1;
            if (!follows) {
                String first = names.node(nodes.get(from));
                String last = names.node(nodes.get(i - 1));
                parts.add(i - from > 2 ? first + " to " + last : i - from == 2 ? first + ", " + last : first);
                from = i;
            }
        }
        return String.join(", ", parts);
    }
}
