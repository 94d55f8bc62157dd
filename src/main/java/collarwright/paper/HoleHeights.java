package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.Load;
import collarwright.picture.Figures;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;

/** Where holes stand along the collar, where that is not the middle. */
final class HoleHeights {

    /** What a paper says where a hole is off the middle. */
    static final String WARNING = "The holes of this pattern are not on the middle line: mind the height of each.";

    /** Nearer to the middle than this is on it: finer than any caliper. */
    private static final double SAME = 0.005;

    private final Figures figures;
    private final double width;

    HoleHeights(Job job) {
        this.figures = new Figures(job.shop().programUnits());
        this.width = job.hub().body().width();
    }

    /** Whether any hole of a pattern is off the middle line. */
    static boolean off(Pattern pattern) {
        return pattern.holes().stream().anyMatch(h -> StrictMath.abs(h.height()) >= SAME);
    }

    /** Such as {@code +2.51 mm}: + toward TOP. */
    String fromMiddle(Hole hole) {
        return (hole.height() >= SAME ? "+" : "") + figures.size(hole.height());
    }

    /** From the collar's TOP edge to the middle of the hole. */
    String fromTop(Hole hole) {
        return figures.size(width / 2 - hole.height());
    }

    static List<Column> columns() {
        return List.of(Column.numbers("from the middle, + to TOP"), Column.numbers("from TOP edge"));
    }

    List<Cell> cells(Hole hole) {
        return List.of(Cell.strong(fromMiddle(hole)), Cell.of(fromTop(hole)));
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
        return new Grid("Heights of the holes of pattern " + pattern.id(), columns, rows);
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
        return new Grid("Holes that are not on the middle line of their collar; TOP faces the chuck", columns, rows);
    }
}
