package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.Load;
import collarwright.machining.ProgramUnits;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Where holes stand along the collar, where that is not the middle. */
final class HoleHeights {

    /** What a paper says where a hole is off the middle. */
    static final String WARNING = "The holes of this pattern are not on the middle line: mind the height of each.";

    /** Nearer to the middle than this is on it: finer than any caliper. */
    private static final double SAME = 0.005;

    private final boolean inches;
    private final double width;

    HoleHeights(Job job) {
        this.inches = job.shop().programUnits() == ProgramUnits.INCH;
        this.width = job.hub().body().width();
    }

    /** Whether any hole of a pattern is off the middle line. */
    static boolean off(Pattern pattern) {
        return pattern.holes().stream().anyMatch(h -> StrictMath.abs(h.height()) >= SAME);
    }

    List<Column> columns() {
        String unit = inches ? "in" : "mm";
        return List.of(Column.numbers(unit + " from middle, + to TOP"), Column.numbers(unit + " from TOP"));
    }

    /** How far the hole is from the collar's middle line, + toward TOP, and from its TOP edge. */
    List<Cell> cells(Hole hole) {
        String sign = hole.height() >= SAME ? "+" : "";
        return List.of(Cell.strong(sign + shown(hole.height())), Cell.of(shown(width / 2 - hole.height())));
    }

    private String shown(double length) {
        return inches ? Decimals.fixed(length / 25.4, 3) : Decimals.fixed(length, 2);
    }

    /** The heights of one pattern's holes. */
    Grid grid(Pattern pattern) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            List<Cell> row = new ArrayList<>(List.of(Cell.strong(Integer.toString(hole.number()))));
            row.addAll(cells(hole));
            rows.add(row);
        }
        List<Column> columns = new ArrayList<>(List.of(Column.numbers("hole")));
        columns.addAll(columns());
        return new Grid(
                "Heights of the holes of pattern " + pattern.id() + ": hole's middle from the middle line and from TOP",
                columns,
                rows);
    }

    /**
     * The heights on a stick, from each collar's own middle.
     *
     * @param patterns all patterns of the plan
     * @param load what lies on the stick
     * @return a row for every hole of a pattern with holes off the middle; no rows where all are on it
     */
    Grid onStick(List<Pattern> patterns, Load load) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Pattern pattern : patterns) {
            boolean lies = load.stretches().stream().anyMatch(s -> s.pattern().equals(pattern.id()));
            if (!lies || !off(pattern)) {
                continue;
            }
            for (Hole hole : pattern.holes()) {
                List<Cell> row =
                        new ArrayList<>(List.of(Cell.strong(pattern.id()), Cell.of(Integer.toString(hole.number()))));
                row.addAll(cells(hole));
                rows.add(row);
            }
        }
        List<Column> columns = new ArrayList<>(List.of(Column.words("pattern"), Column.numbers("hole")));
        columns.addAll(columns());
        return new Grid(
                "Holes that are not on the middle line of their collar: how far from it and from TOP, which faces the chuck",
                columns,
                rows);
    }
}
