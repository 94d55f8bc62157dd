package collarwright.paper;

import collarwright.cutting.MergedLengths;
import collarwright.cutting.SawnLength;
import collarwright.machining.StrutBar;
import collarwright.machining.StrutTurn;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.strut.FlatEnds;
import collarwright.strut.StrutEnd;
import collarwright.strut.StrutType;
import collarwright.strut.TieHole;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

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

    private boolean flattened() {
        return plan.job().strut().endWork().flat().isPresent();
    }

    boolean drilled() {
        return plan.job().strut().tieHole().isPresent();
    }

    private boolean inches() {
        return UnitWords.inches(plan.job());
    }

    Grid cutting() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.numbers("stop"),
                Column.words("type"),
                Column.numbers(inches() ? "L, in" : "L, mm"),
                Column.numbers(inches() ? "L, mm" : "L, in"),
                Column.words("nearest 1/32 in (error)"),
                Column.numbers("in one dome"),
                Column.numbers("to make"),
                Column.marks("cut"),
                Column.marks("marked")));
        if (flattened()) {
            columns.add(5, Column.numbers("hole to hole" + (inches() ? "" : ", mm")));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            double cut = SawnLength.of(type.cut());
            String mm = Decimals.fixed(cut, 2);
            String in = Decimals.fixed(cut / 25.4, 3);
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.of(Integer.toString(rows.size() + 1)),
                    Cell.strong(type.id()),
                    Cell.strong(inches() ? in : mm),
                    Cell.of(inches() ? mm : in),
                    Cell.of(InchFractions.nearest(cut, 32).withError()),
                    Cell.of(Integer.toString(type.count())),
                    Cell.strong(Integer.toString(plan.job().order().made(type.count()))),
                    Cell.tick(),
                    Cell.tick()));
            if (flattened()) {
                row.add(5, Cell.strong(size(type.holeToHole().orElseThrow())));
            }
            rows.add(row);
        }
        return new Grid("Cut list, the longest stop first", columns, rows);
    }

    /** Where the saw gives several types one length between theirs; empty where every type has its own. */
    Optional<String> merged() {
        List<StrutType> types = plan.struts().types();
        double merge = plan.job().cutting().merge();
        List<Double> sawn = MergedLengths.of(types.stream().map(StrutType::cut).toList(), merge);
        SortedMap<Double, List<String>> others = new TreeMap<>(Comparator.reverseOrder());
        for (int i = 0; i < types.size(); i++) {
            if (StrictMath.abs(sawn.get(i) - types.get(i).cut()) > 0) {
                others.computeIfAbsent(sawn.get(i), l -> new ArrayList<>())
                        .add(types.get(i).id());
            }
        }
        String stops = others.entrySet().stream()
                .map(e ->
                        String.join(", ", e.getValue()) + " at " + Decimals.fixed(SawnLength.of(e.getKey()), 3) + " mm")
                .collect(Collectors.joining("; "));
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of("Sawn at one stop, since lengths that differ by " + Decimals.trimmed(merge, 3)
                        + " mm or less are merged: " + stops
                        + ". So the saw's papers have it; the lengths above are those before merging.");
    }

    /** Stops of a press: end a against the stop for both holes, or either end for the hole beside it. */
    Grid drilling() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            double first = drill(type.a());
            double second = drill(type.b());
            rows.add(List.of(
                    Cell.strong(type.id()),
                    Cell.of(Integer.toString(plan.job().order().made(type.count()))),
                    stop(first),
                    stop(type.cut() - second),
                    Cell.of(size(second)),
                    Cell.of(StrutTurn.shown(StrutTurn.counts(type.twist()) ? -type.twist() : 0)),
                    Cell.tick()));
        }
        return new Grid(
                "Tie-hole stops, end E1 against the stop, to the middle of the hole",
                List.of(
                        Column.words("type"),
                        Column.numbers("to make"),
                        Column.numbers("stop 1"),
                        Column.numbers("stop 2"),
                        Column.numbers(inches() ? "E2" : "E2, mm"),
                        Column.words("turn between"),
                        Column.marks("drilled")),
                rows);
    }

    /** A length in a column of mm, or told in inches with mm below. */
    private String size(double length) {
        String mm = Decimals.fixed(length, 2);
        return inches() ? Decimals.fixed(length / 25.4, 3) + " in\n" + mm + " mm" : mm;
    }

    private Cell stop(double at) {
        String mm = Decimals.fixed(at, 2) + " mm\n";
        String in = Decimals.fixed(at / 25.4, 3) + " in\n";
        return Cell.strong(
                (inches() ? in + mm : mm + in) + InchFractions.nearest(at, 32).withError());
    }

    /** Where bolt holes come when the strut is in: from each cut end, since nothing is set on a press. */
    Grid drilledInside() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            rows.add(List.of(
                    Cell.strong(type.id()),
                    Cell.of(Integer.toString(plan.job().order().made(type.count()))),
                    Cell.strong(size(drill(type.a()))),
                    Cell.strong(size(drill(type.b())))));
        }
        return new Grid(
                "Bolt holes, drilled inside the collars: from the cut end to the middle of the hole",
                List.of(
                        Column.words("type"),
                        Column.numbers("to make"),
                        Column.numbers(inches() ? "from E1" : "from E1, mm"),
                        Column.numbers(inches() ? "from E2" : "from E2, mm")),
                rows);
    }

    /** How bolt holes are drilled when the strut is in. */
    String insideRule() {
        TieHole tie = plan.job().strut().tieHole().orElseThrow();
        double through = FlatEnds.thickness(plan.job().strut().stock())
                + plan.job().limits().overtravel();
        return UnitWords.of(
                plan.job(),
                "Bolt hole Ø " + Sizes.exact(tie.diameter())
                        + ", square through both layers of the flat, in its middle:"
                        + " flutes " + Sizes.exact(through)
                        + " or longer. No stops on a press: both holes are drilled when"
                        + " the strut is in.");
    }

    /** How the tie holes are drilled. */
    String drillingRule() {
        TieHole tie = plan.job().strut().tieHole().orElseThrow();
        StrutBar bar = new StrutBar(plan.job().strut().stock());
        double thick = flattened() ? FlatEnds.thickness(bar.stock()) : bar.highest() - bar.lowest();
        double through = thick + plan.job().limits().overtravel();
        boolean tube = bar.stock().wall().isPresent();
        return "Tie hole Ø " + both(tie.diameter()) + ", through the strut's axis, from one side through "
                + (flattened() ? "the flat" : tube ? "both walls" : "the whole bar") + ": flutes " + both(through)
                + " or longer, far side backed up. The fraction's error: the fraction less the true distance."
                + (turned()
                        ? " Turn between: after the first hole turn the strut so far about its length, as seen from the"
                                + " stop. If the strut is turned end for end instead (E2 against the stop, distance E2, a"
                                + " line marked along its top up), turn it so far the other way."
                        : " Or turn the strut end for end, a line marked along its top up, and drill the second hole at"
                                + " the distance E2 from the same stop.");
    }

    private String both(double length) {
        return UnitWords.of(plan.job(), Sizes.both(length));
    }

    private boolean turned() {
        return plan.struts().types().stream().anyMatch(t -> StrutTurn.counts(t.twist()));
    }

    private static double drill(StrutEnd end) {
        return end.drill().orElseThrow(() -> new IllegalStateException("this strut is not drilled"));
    }

    /** One table with what a person wants to know before reading the sheets. */
    Grid overview() {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst()) {
            double cut = SawnLength.of(type.cut());
            rows.add(List.of(
                    Cell.strong(type.id()),
                    Cell.of(
                            inches()
                                    ? Sizes.inches(cut) + "\n" + Sizes.exact(cut)
                                    : Sizes.exact(cut) + "\n" + Sizes.inches(cut)),
                    Cell.of(InchFractions.nearest(cut, 32).withError()),
                    Cell.of(type.a().drill().map(this::both).orElse("not drilled")),
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
                        Cell.of(size(type.a().setback())),
                        Cell.of(degrees(type.b().axialAngle())),
                        Cell.of(size(type.b().setback())),
                        Cell.tick()));
            }
        }
        return new Grid(
                "Two different ends: mark a (E1) and b (E2) on the strut",
                List.of(
                        Column.words("type"),
                        Column.numbers("a: axial angle"),
                        Column.numbers(inches() ? "a: from node" : "a: from node, mm"),
                        Column.numbers("b: axial angle"),
                        Column.numbers(inches() ? "b: from node" : "b: from node, mm"),
                        Column.marks("marked")),
                rows);
    }

    private static String degrees(double angle) {
        return Decimals.fixed(collarwright.units.Angles.degrees(angle), 2) + "°";
    }
}
