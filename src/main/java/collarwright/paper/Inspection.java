package collarwright.paper;

import collarwright.collar.CollarBody;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
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
                    Cell.of(inches() ? inch(web(i), 3) : Decimals.fixed(web(i), 2)),
                    Cell.of(inches() ? Decimals.fixed(web(i), 2) : inch(web(i), 3)),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank()));
        }
        return new Grid(
                "Caliper check: web between hole edges, straight across the outside, "
                        + (HoleHeights.off(pattern) ? "each at its own height, jaws along the pipe" : "mid-height")
                        + "; " + (inches() ? "0.004 in (0.1 mm)" : "0.1 mm") + " is "
                        + Decimals.fixed(Angles.degrees(0.1 / body.outerRadius()), 2) + "°",
                List.of(
                        Column.words("holes"),
                        Column.numbers(inches() ? "web, in" : "web, mm"),
                        Column.numbers(inches() ? "web, mm" : "web, in"),
                        Column.marks("piece 1"),
                        Column.marks("piece __"),
                        Column.marks("last piece")),
                rows);
    }

    private boolean inches() {
        return UnitWords.inches(plan.job());
    }

    private static String inch(double length, int decimals) {
        return Decimals.fixed(length / 25.4, decimals);
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
                    Cell.strong(both(go(hole, steps()))),
                    Cell.strong(both(noGo(hole, steps()))),
                    Cell.of(slackAtNoGo(hole)),
                    Cell.tick()));
        }
        return new Grid(
                "Gauge pins in steps of " + (inches() ? "0.001 in" : "0.05 mm")
                        + " (our choice, no source); the slack is that of a no-go hole",
                List.of(
                        Column.words("holes"),
                        Column.words("cutter"),
                        Column.numbers("go, must pass"),
                        Column.numbers("no-go, must not pass"),
                        Column.numbers("slack"),
                        Column.marks("done")),
                rows);
    }

    private String both(double size) {
        String millimetres = Decimals.fixed(size, 2) + " mm";
        return inches() ? inch(size, 4) + " in, " + millimetres : millimetres + ", " + inch(size, 4) + " in";
    }

    private Steps steps() {
        return inches() ? Steps.INCH : Steps.MM;
    }

    /**
     * How finely pins are told: our choice, no source.
     *
     * @param pin from one pin to the next
     * @param need how finely a need is rounded up
     * @param tooWide how much wider than the largest hole the pin is that must not go in
     */
    record Steps(double pin, double need, double tooWide) {
        static final Steps MM = new Steps(0.05, 0.01, 0.25);

        /** A thousandth, a tenth of one, and ten of them. */
        static final Steps INCH = new Steps(0.0254, 0.00254, 0.254);
    }

    /** The smallest hole that will do: as drilled at the least, but never less than the strut needs. */
    static double go(Hole hole, Steps steps) {
        double least = hole.cutter().asDrilled().min();
        double down = StrictMath.floor(least / steps.pin() + 1e-9) * steps.pin();
        double needed = StrictMath.ceil(hole.required() / steps.need() - 1e-7) * steps.need();
        return needed <= least ? StrictMath.max(down, needed) : down;
    }

    /** Wider than any hole should come out. */
    static double noGo(Hole hole, Steps steps) {
        return StrictMath.ceil((hole.cutter().asDrilled().max() + steps.tooWide()) / steps.pin() - 1e-9) * steps.pin();
    }

    private String slackAtNoGo(Hole hole) {
        if (!(noGo(hole, steps()) < 2 * body.innerRadius())) {
            return "none left";
        }
        double strut = plan.job().strut().stock().od().nominal();
        double limit = body.tiltLimit(strut, noGo(hole, steps()), body.bearing().nominal());
        return Figures.degrees(limit - hole.neededLean());
    }

    /** The rule of the pins. */
    String pinRule() {
        return "Go: least as drilled, rounded down, but not below a need that it meets. No-go: largest + "
                + (inches() ? "0.010 in." : "0.25 mm.");
    }
}
