package collarwright.paper;

import collarwright.hub.Hubs;
import collarwright.kit.Bundle;
import collarwright.kit.CardWords;
import collarwright.kit.Connection;
import collarwright.kit.Connections;
import collarwright.kit.Kit;
import collarwright.kit.PackUp;
import collarwright.kit.SiteLabels;
import collarwright.kit.SiteWork;
import collarwright.kit.WeightWords;
import collarwright.plan.OrderTotals;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.RaisingLine;
import collarwright.plan.Uphill;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The tables of the site pack: bundles, taking down, connections both ways. */
final class SiteTables {

    private final Plan plan;
    private final SiteWork work;
    private final PartNames names;

    SiteTables(Plan plan, SiteWork work) {
        this.plan = plan;
        this.work = work;
        this.names = PartNames.of(plan);
    }

    Grid bundles(String caption, List<Bundle> bundles) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Bundle bundle : bundles) {
            rows.add(List.of(
                    Cell.strong(bundle.id()),
                    Cell.of(SiteLabels.contents(plan, bundle)),
                    Cell.of(weight(bundle.pieceKg(), 2)),
                    Cell.strong(weight(bundle.kg(), bundle.kg().orElse(1) < 1 ? 2 : 1)),
                    Cell.tick()));
        }
        return new Grid(
                caption,
                List.of(
                        Column.words("bundle"),
                        Column.words("what is in it"),
                        Column.numbers("each"),
                        Column.numbers("bundle"),
                        Column.marks("there")),
                rows);
    }

    /** Such as {@code 12.3 kg}, with pounds in an inch job. */
    String weight(OptionalDouble kg, int decimals) {
        return kg.isEmpty() ? "not known" : WeightWords.words(plan, kg.getAsDouble(), decimals);
    }

    /** All bundles and what they come to, beside what is made. */
    Grid totals() {
        Kit kit = work.kit();
        List<List<Cell>> rows = new ArrayList<>();
        for (Bundle.Kind kind : Bundle.Kind.values()) {
            if (kit.made(kind) == 0) {
                continue;
            }
            rows.add(List.of(
                    Cell.of(title(kind)),
                    Cell.of(count(kit.perDome(), kind)),
                    Cell.of(count(kit.spares(), kind)),
                    Cell.strong(Integer.toString(kit.made(kind)))));
        }
        if (plan.job().strut().endWork().plugs().isPresent()) {
            int each = 2 * plan.hubs().dome().memberCount();
            int made = OrderTotals.of(plan).endParts();
            rows.add(List.of(
                    Cell.of("plugs, in the ends of the struts"),
                    Cell.of(Integer.toString(each)),
                    Cell.of(Integer.toString(made - kit.domes() * each)),
                    Cell.strong(Integer.toString(made))));
        }
        return new Grid(
                "Bundles hold all that is made",
                List.of(
                        Column.words("parts"),
                        Column.numbers("in one dome"),
                        Column.numbers("spares"),
                        Column.numbers(kit.domes() == 1 ? "1 dome and spares" : kit.domes() + " domes and spares")),
                rows);
    }

    private static String title(Bundle.Kind kind) {
        return switch (kind) {
            case STRUTS -> "struts";
            case COLLARS -> "collars";
            case RINGS -> "centre rings";
            case TIES -> "ties or pins";
            case CAPS -> "end caps";
        };
    }

    private static String count(List<Bundle> bundles, Bundle.Kind kind) {
        return Integer.toString(bundles.stream()
                .filter(b -> b.kind() == kind)
                .mapToInt(Bundle::pieces)
                .sum());
    }

    Grid takingDown() {
        CardWords words = new CardWords(plan);
        List<List<Cell>> rows = new ArrayList<>();
        for (PackUp step : work.packUp()) {
            String off = step.card().rings()
                    ? "all centre rings, all ties or pins"
                            + (plan.job().strut().endWork().caps() ? ", all end caps" : "")
                    : told(words.struts(step.card()))
                            + (step.card().hubs().isEmpty() ? "" : "; " + told(words.collars(step.card())));
            String orders = step.card().rings()
                    ? ""
                    : step.card().lastOrder() + " to " + step.card().firstOrder();
            rows.add(List.of(
                    Cell.strong(Integer.toString(step.card().number())),
                    Cell.of(off),
                    Cell.of(orders),
                    Cell.of(step.full().isEmpty() ? "–" : String.join(", ", step.full()))));
        }
        return new Grid(
                "Taking down, and which bundles are full then",
                List.of(
                        Column.numbers("card"),
                        Column.words("comes off"),
                        Column.words("order numbers"),
                        Column.words("bundles full")),
                rows);
    }

    private static String told(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(e -> e.getValue() + "×" + e.getKey())
                .collect(Collectors.joining(" "));
    }

    /** Two struts on a row. */
    Grid byStrut() {
        List<Column> columns = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            columns.addAll(List.of(
                    Column.words("strut"),
                    Column.words("type"),
                    Column.numbers("order"),
                    Column.words("end a: hub, hole"),
                    Column.words("end b")));
        }
        List<Integer> orders =
                plan.assembly().map(a -> RaisingLine.orders(plan, a)).orElse(List.of());
        List<Connection> ends = work.connections().byStrut();
        int struts = ends.size() / 2;
        int half = (struts + 1) / 2;
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            List<Cell> row = new ArrayList<>(strut(ends, i, orders));
            row.addAll(
                    i + half < struts
                            ? strut(ends, i + half, orders)
                            : List.of(Cell.of(""), Cell.of(""), Cell.of(""), Cell.of(""), Cell.of("")));
            rows.add(row);
        }
        return new Grid("From strut to hub and hole", columns, rows);
    }

    private List<Cell> strut(List<Connection> ends, int strut, List<Integer> orders) {
        Connection a = ends.get(2 * strut);
        Connection b = ends.get(2 * strut + 1);
        return List.of(
                Cell.strong(names.member(a.member())),
                Cell.of(names.strutType(plan.hubs().strutTypeOf(a.member()))),
                Cell.of(orders.isEmpty() ? "–" : Integer.toString(orders.get(a.member()))),
                Cell.of(hole(a)),
                Cell.of(hole(b)));
    }

    private String hole(Connection end) {
        return names.node(end.node()) + "  " + end.hole();
    }

    /** One hub on a row, one column for each hole. */
    Grid byHub() {
        int most = plan.book().patterns().stream()
                .mapToInt(p -> p.holes().size())
                .max()
                .orElseThrow();
        List<Column> columns = new ArrayList<>(List.of(Column.words("hub"), Column.words("UP")));
        for (int hole = 1; hole <= most; hole++) {
            columns.add(Column.words("hole " + hole));
        }
        List<List<Cell>> rows = new ArrayList<>();
        List<Connection> ends = work.connections().byHub();
        int next = 0;
        Hubs hubs = plan.hubs();
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            Uphill up = Uphill.of(plan, node);
            List<Cell> row = new ArrayList<>();
            row.add(Cell.strong(names.node(node) + "\n" + names.pattern(type)));
            row.add(Cell.of((up.at() ? "at " + up.hole() : up.hole() + "–" + up.next())
                    + (plan.flipped(node) ? "\nTOP in" : "")));
            for (int hole = 1; hole <= most; hole++) {
                boolean taken = next < ends.size()
                        && ends.get(next).node() == node
                        && ends.get(next).hole() == hole;
                row.add(Cell.of(taken ? end(ends.get(next)) : "–"));
                next += taken ? 1 : 0;
            }
            rows.add(row);
        }
        return new Grid("From hub and hole to strut end", columns, rows);
    }

    private String end(Connection end) {
        return SiteLabels.id(names, end) + "\n" + names.strutType(plan.hubs().strutTypeOf(end.member()));
    }

    /** What was proven of the two tables. */
    static String proof(Connections connections) {
        return connections.byStrut().size() + " strut ends, "
                + connections.byHub().size() + " holes with a strut: every end has its hole, and every hole its end.";
    }
}
