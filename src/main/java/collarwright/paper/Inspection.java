package collarwright.paper;

import collarwright.collar.CollarBody;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is measured on a drilled collar: webs by caliper, hole sizes by pin, and the first article. */
final class Inspection {

    /** How much wider than the largest hole the pin is that must not go in: our choice, no source. */
    private static final double TOO_WIDE = 0.25;

    private static final double STEP = 0.05;

    private final Plan plan;
    private final Pattern pattern;
    private final CollarBody body;
    private final Figures figures;

    Inspection(Plan plan, Pattern pattern) {
        this.plan = plan;
        this.pattern = pattern;
        this.body = plan.job().hub().body();
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    private Hole next(int index) {
        return pattern.holes().get((index + 1) % pattern.holes().size());
    }

    /**
     * The straight distance from the edge of a hole to the edge of the next one, on the outside at the mid-plane, as a
     * caliper's jaws find it.
     */
    double web(int index) {
        Hole first = pattern.holes().get(index);
        Hole second = next(index);
        double gap = second.azimuth() - first.azimuth();
        gap = gap <= 0 ? gap + 2 * StrictMath.PI : gap;
        double left = gap
                - StrictMath.asin(first.diameter() / 2 / body.outerRadius())
                - StrictMath.asin(second.diameter() / 2 / body.outerRadius());
        return 2 * body.outerRadius() * StrictMath.sin(left / 2);
    }

    Grid caliper() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < pattern.holes().size(); i++) {
            rows.add(List.of(
                    Cell.strong(between(i)),
                    Cell.of(Decimals.fixed(web(i), 2)),
                    Cell.of(Decimals.fixed(web(i) / 25.4, 3)),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank()));
        }
        return new Grid(
                "Caliper check: web between hole edges, straight across the outside, "
                        + (HoleHeights.off(pattern) ? "each at its own height, jaws along the pipe" : "mid-height")
                        + "; 0.1 mm is "
                        + Decimals.fixed(Angles.degrees(0.1 / body.outerRadius()), 2) + "°",
                List.of(
                        Column.words("holes"),
                        Column.numbers("web, mm"),
                        Column.numbers("web, in"),
                        Column.marks("piece 1"),
                        Column.marks("piece __"),
                        Column.marks("last piece")),
                rows);
    }

    private String between(int index) {
        String holes = (index + 1) + " to " + next(index).number();
        boolean last = index == pattern.holes().size() - 1;
        return holes + (index == 0 ? ", left of hole 1" : last ? ", right of hole 1" : "");
    }

    Grid firstArticle() {
        List<List<Cell>> rows = new ArrayList<>();
        var collar = plan.job().hub().collar();
        rows.add(article(
                "outside circumference",
                figures.length(2 * StrictMath.PI * body.outerRadius())
                        + (collar.odMeasured() ? "" : ", nominal, not measured")));
        rows.add(article("wall, thinnest and thickest", wall()));
        rows.add(article("width", figures.size(body.width())));
        Hole first = pattern.holes().get(0);
        rows.add(article("0° line to left edge of hole 1", figures.size(first.diameter() / 2)));
        rows.add(article("0° line to right edge of hole 1", figures.size(first.diameter() / 2)));
        rows.add(article(
                "edge of hole 1 to TOP edge", figures.size(body.width() / 2 - first.height() - first.diameter() / 2)));
        boolean reach = pattern.holes().stream().allMatch(hole -> hole.slack() >= 0);
        rows.add(
                reach
                        ? article("a strut leans far enough in every hole", "yes")
                        : article("a strut leans to each hole's tilt limit", "short of its need by choice: nearest"));
        rows.add(article("marked: TOP, 0° line, numbers, " + pattern.id() + ", revision", "yes"));
        return new Grid(
                "First article: measure before the run, seen from outside with TOP up",
                List.of(
                        Column.words("measure"),
                        Column.words("should be"),
                        Column.marks("measured"),
                        Column.marks("good")),
                rows);
    }

    private String wall() {
        var wall = body.wall();
        String sizes = wall.min() == wall.max()
                ? figures.size(wall.nominal())
                : figures.size(wall.min()) + " to " + figures.size(wall.max());
        return sizes + (plan.job().hub().collar().wallMeasured() ? "" : ", nominal, not measured");
    }

    private static List<Cell> article(String what, String planned) {
        return List.of(Cell.of(what), Cell.of(planned), Cell.blank(), Cell.tick());
    }

    Grid pins() {
        Map<String, List<Hole>> classes = pattern.holes().stream()
                .collect(Collectors.groupingBy(
                        h -> h.cutter().id() + "/" + h.required(), LinkedHashMap::new, Collectors.toList()));
        List<List<Cell>> rows = new ArrayList<>();
        for (List<Hole> alike : classes.values()) {
            Hole hole = alike.get(0);
            rows.add(List.of(
                    Cell.strong(PatternTables.numbers(alike)),
                    Cell.of(hole.cutter().marked()),
                    Cell.strong(both(go(hole))),
                    Cell.strong(both(noGo(hole))),
                    Cell.of(slackAtNoGo(hole)),
                    Cell.tick()));
        }
        return new Grid(
                "Gauge pins in steps of 0.05 mm (our choice, no source); the slack is that of a no-go hole",
                List.of(
                        Column.words("holes"),
                        Column.words("cutter"),
                        Column.numbers("go, must pass"),
                        Column.numbers("no-go, must not pass"),
                        Column.numbers("slack"),
                        Column.marks("done")),
                rows);
    }

    private static String both(double size) {
        return Decimals.fixed(size, 2) + " mm, " + Decimals.fixed(size / 25.4, 4) + " in";
    }

    /** The smallest hole that will do: as drilled at the least, but never less than the strut needs. */
    static double go(Hole hole) {
        double least = hole.cutter().asDrilled().min();
        double down = StrictMath.floor(least / STEP + 1e-9) * STEP;
        double needed = StrictMath.ceil(hole.required() * 100 - 1e-9) / 100;
        return needed <= least ? StrictMath.max(down, needed) : down;
    }

    /** Wider than any hole should come out. */
    static double noGo(Hole hole) {
        return StrictMath.ceil((hole.cutter().asDrilled().max() + TOO_WIDE) / STEP - 1e-9) * STEP;
    }

    private String slackAtNoGo(Hole hole) {
        if (!(noGo(hole) < 2 * body.innerRadius())) {
            return "none left";
        }
        double strut = plan.job().strut().stock().od().nominal();
        double limit = body.tiltLimit(strut, noGo(hole), body.bearing().nominal());
        return Figures.degrees(limit - hole.neededLean());
    }

    /** The rule of the pins. */
    static String pinRule() {
        return "Go: least as drilled, rounded down, but not below a need that it meets. No-go: largest + 0.25 mm.";
    }
}
