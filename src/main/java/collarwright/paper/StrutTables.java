package collarwright.paper;

import collarwright.plan.Plan;
import collarwright.strut.StrutEnd;
import collarwright.strut.StrutType;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The struts: what is cut and drilled, the longest first. */
final class StrutTables {

    private final Plan plan;

    StrutTables(Plan plan) {
        this.plan = plan;
    }

    /** In the order in which the stop block moves: it comes nearer to the saw, and an offcut still does for the next. */
    private List<StrutType> longestFirst() {
        return plan.struts().types().stream()
                .sorted(Comparator.comparingDouble((StrutType t) -> -t.cut()).thenComparing(StrutType::id))
                .toList();
    }

    boolean drilled() {
        return plan.job().strut().tieHole().isPresent();
    }

    Grid cutting() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.numbers("stop"),
                Column.words("type"),
                Column.numbers("L, mm"),
                Column.numbers("L, in"),
                Column.words("nearest 1/32 in (error)"),
                Column.numbers("in one dome"),
                Column.numbers("to make"),
                Column.marks("cut"),
                Column.marks("marked")));
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            rows.add(List.of(
                    Cell.of(Integer.toString(rows.size() + 1)),
                    Cell.strong(type.id()),
                    Cell.strong(Decimals.fixed(type.cut(), 2)),
                    Cell.of(Decimals.fixed(type.cut() / 25.4, 3)),
                    Cell.of(InchFractions.nearest(type.cut(), 32).withError()),
                    Cell.of(Integer.toString(type.count())),
                    Cell.strong(Integer.toString(plan.job().order().made(type.count()))),
                    Cell.tick(),
                    Cell.tick()));
        }
        return new Grid("Cut list, the longest stop first", columns, rows);
    }

    Grid drilling() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            double first = drill(type.a());
            double second = drill(type.b());
            rows.add(List.of(
                    Cell.strong(type.id()),
                    Cell.of(Decimals.fixed(first, 2)),
                    Cell.of(Decimals.fixed(second, 2)),
                    Cell.strong(Decimals.fixed(first, 2) + "\n" + Decimals.fixed(first / 25.4, 3) + " in"),
                    Cell.strong(Decimals.fixed(type.cut() - second, 2) + "\n"
                            + Decimals.fixed((type.cut() - second) / 25.4, 3) + " in"),
                    Cell.of(Decimals.fixed(collarwright.units.Angles.degrees(type.twist()), 1) + "°"),
                    Cell.tick()));
        }
        return new Grid(
                "End drilling, mm from the cut ends",
                List.of(
                        Column.words("type"),
                        Column.numbers("E1"),
                        Column.numbers("E2"),
                        Column.numbers("from one end: first hole"),
                        Column.numbers("second hole"),
                        Column.numbers("twist"),
                        Column.marks("drilled")),
                rows);
    }

    private static double drill(StrutEnd end) {
        return end.drill().orElseThrow(() -> new IllegalStateException("this strut is not drilled"));
    }

    /** One table with what a person wants to know before reading the sheets. */
    Grid overview() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            rows.add(List.of(
                    Cell.strong(type.id()),
                    Cell.of(Sizes.exact(type.cut()) + "\n" + Sizes.inches(type.cut())),
                    Cell.of(InchFractions.nearest(type.cut(), 32).withError()),
                    Cell.of(type.a().drill().map(Sizes::both).orElse("not drilled")),
                    Cell.of(Integer.toString(type.count())),
                    Cell.strong(Integer.toString(plan.job().order().made(type.count())))));
        }
        return new Grid(
                "Struts, the longest first",
                List.of(
                        Column.words("type"),
                        Column.numbers("cut length"),
                        Column.words("nearest 1/32 in (error)"),
                        Column.numbers("tie hole from each end"),
                        Column.numbers("in one dome"),
                        Column.numbers("to make")),
                rows);
    }

    /** Whether some strut may not be turned end for end. */
    boolean ended() {
        return plan.struts().types().stream().anyMatch(type -> !type.alike());
    }

    /** The struts whose two ends differ: which end is which. */
    Grid ends() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            if (!type.alike()) {
                rows.add(List.of(
                        Cell.strong(type.id()),
                        Cell.of(degrees(type.a().axialAngle())),
                        Cell.of(Decimals.fixed(type.a().setback(), 2)),
                        Cell.of(degrees(type.b().axialAngle())),
                        Cell.of(Decimals.fixed(type.b().setback(), 2)),
                        Cell.tick()));
            }
        }
        return new Grid(
                "Two different ends: mark a (E1) and b (E2) on the strut",
                List.of(
                        Column.words("type"),
                        Column.numbers("a: axial angle"),
                        Column.numbers("a: from node, mm"),
                        Column.numbers("b: axial angle"),
                        Column.numbers("b: from node, mm"),
                        Column.marks("marked")),
                rows);
    }

    private static String degrees(double angle) {
        return Decimals.fixed(collarwright.units.Angles.degrees(angle), 2) + "°";
    }
}
