package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.HoleDepth;
import collarwright.machining.ProgramUnits;
import collarwright.machining.SawPlugs;
import collarwright.machining.Workpiece;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.plan.StrutLean;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.Placement;
import collarwright.tooling.Tolerance;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import collarwright.units.InchFractions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The tables of one pattern: where its holes go, how they are drilled, and why they are as large as they are. */
final class PatternTables {

    /** What the column of {@link #sharing()} means where some collars are put on upside down. */
    static final String FLIPPED =
            "TOP inside: these collars go on upside down, their TOP edge and the marks near it toward the"
                    + " inside of the dome. They are drilled like the others; write the hub type on them before they are hung.";

    private static final String TURN =
            "Press table: turn clockwise from above, from the 0° line (1/32 in is up to 0.016 in or 0.4 mm off)";

    private final Plan plan;
    private final Job job;
    private final Pattern pattern;
    private final Figures figures;
    private final boolean off;

    PatternTables(Plan plan, Pattern pattern) {
        this.off = HoleHeights.off(pattern);
        this.plan = plan;
        this.job = plan.job();
        this.pattern = pattern;
        this.figures = new Figures(job.shop().programUnits());
    }

    private double outer() {
        return job.hub().body().outerRadius();
    }

    /** Where every hole goes and how it is drilled. */
    Grid press() {
        return off ? pressOffTheMiddle() : pressOnTheMiddle();
    }

    private Grid pressOnTheMiddle() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            rows.add(List.of(
                    Cell.strong(Integer.toString(hole.number())),
                    Cell.of(Decimals.fixed(Angles.degrees(hole.azimuth()), 2) + "°"),
                    Cell.of(Angles.degreesMinutes(hole.azimuth())),
                    Cell.of(arc(hole)),
                    Cell.of(InchFractions.nearest(hole.azimuth() * outer(), 32).text()),
                    Cell.of(pilot(hole.cutter().kind())),
                    Cell.strong(cutter(hole.cutter())),
                    Cell.of(figures.size(hole.diameter())),
                    Cell.of(depthText(hole)),
                    Cell.tick()));
        }
        return new Grid(
                TURN,
                List.of(
                        Column.numbers("hole"),
                        Column.numbers("degrees"),
                        Column.numbers("deg, min"),
                        Column.numbers(arcTitle()),
                        Column.numbers("arc, 1/32 in"),
                        Column.words("pilot"),
                        Column.words("cutter"),
                        Column.numbers("as drilled"),
                        Column.numbers("depth"),
                        Column.marks("done")),
                rows);
    }

    // With the heights there is no room for minutes and pilots; these are told below.
    private Grid pressOffTheMiddle() {
        HoleHeights heights = new HoleHeights(job);
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.strong(Integer.toString(hole.number())),
                    Cell.of(Decimals.fixed(Angles.degrees(hole.azimuth()), 2) + "°"),
                    Cell.of(arc(hole)),
                    Cell.of(InchFractions.nearest(hole.azimuth() * outer(), 32).text())));
            row.addAll(heights.cells(hole));
            row.addAll(List.of(
                    Cell.strong(cutter(hole.cutter())),
                    Cell.of(figures.size(hole.diameter())),
                    Cell.of(depthText(hole)),
                    Cell.tick()));
            rows.add(row);
        }
        List<Column> columns = new ArrayList<>(List.of(
                Column.numbers("hole"),
                Column.numbers("degrees"),
                Column.numbers(arcTitle()),
                Column.numbers("arc, 1/32 in")));
        columns.addAll(heights.columns());
        columns.addAll(List.of(
                Column.words("cutter"), Column.numbers("as drilled"), Column.numbers("depth"), Column.marks("done")));
        return new Grid(TURN, columns, rows);
    }

    private String arc(Hole hole) {
        double arc = hole.azimuth() * outer();
        return inches() ? Decimals.fixed(arc / 25.4, 3) : Decimals.fixed(arc, 2);
    }

    private String arcTitle() {
        return inches() ? "arc, in" : "arc, mm";
    }

    private boolean inches() {
        return figures.units() == ProgramUnits.INCH;
    }

    private static String pilot(CutterKind kind) {
        return switch (kind) {
            case TWIST -> "spot first";
            case HOLE_SAW -> "in saw";
            case END_MILL, TUBE_CUTTER -> "none";
        };
    }

    private static String cutter(Cutter cutter) {
        return switch (cutter.kind()) {
            case TWIST -> cutter.marked() + " twist";
            case HOLE_SAW -> cutter.marked() + " saw";
            case END_MILL -> cutter.title();
            case TUBE_CUTTER -> cutter.marked();
        };
    }

    private HoleDepth depth(Hole hole) {
        Workpiece work = Workpiece.of(job.hub().collar(), job.hub().body());
        return HoleDepth.of(work, hole.cutter(), job.limits().overtravel());
    }

    /** From touching the crown with the cutter's lowest point to the end of the cut. */
    private double travel(Hole hole) {
        return outer() - depth(hole).bottom();
    }

    private String depthText(Hole hole) {
        return hole.cutter().kind() == CutterKind.TUBE_CUTTER ? "through" : figures.length(travel(hole));
    }

    /** What the depths of the press table are; holes that are cut along their outline have none. */
    String howDeep() {
        boolean cut = pattern.holes().stream().allMatch(h -> h.cutter().kind() == CutterKind.TUBE_CUTTER);
        if (cut) {
            return "Holes are cut through the wall along their outlines: widths are those at the inside, seen from outside"
                    + " a hole is wider round the pipe. Let the pipe cool, take the dross off both rims, then measure.";
        }
        return "Depth: touch the crown with the cutter's lowest point, set zero, go down so far. "
                + String.join(" ", depths()) + " " + Cautions.atTheDrill();
    }

    /** How the depths of the press table come about, one line for each cutter. */
    private List<String> depths() {
        List<String> lines = new ArrayList<>();
        boolean twist = pattern.holes().stream().anyMatch(h -> h.cutter().kind() == CutterKind.TWIST);
        if (off && twist) {
            lines.add("Spot every hole for a twist drill first.");
        }
        for (Hole hole : pattern.holes()) {
            if (hole.cutter().kind() == CutterKind.TUBE_CUTTER) {
                continue; // cut through along its outline
            }
            double overtravel = job.limits().overtravel();
            double through = outer() - depth(hole).edge() - overtravel;
            String lead = hole.cutter().bores()
                    ? ""
                    : figures.length(hole.cutter().lead())
                            + (hole.cutter().kind() == CutterKind.HOLE_SAW ? " pilot" : " point") + ", + ";
            String line = (hole.cutter().bores()
                            ? hole.cutter().title()
                            : hole.cutter().marked())
                    + ": through at its full diameter " + figures.length(through) + " below the crown, + " + lead
                    + figures.length(overtravel) + " overtravel." + plugs(hole.cutter());
            if (!lines.contains(line)) {
                lines.add(line);
            }
        }
        return lines;
    }

    private String plugs(Cutter cutter) {
        Workpiece work = Workpiece.of(job.hub().collar(), job.hub().body());
        int most = SawPlugs.most(work, cutter, job.limits().overtravel());
        String words = most > 0 ? SawPlugs.words(most) : "";
        return words.isEmpty() ? "" : " " + Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** Why the holes are as large as they are; holes for the same struts with one cutter stand in one row. */
    Grid why() {
        Map<String, List<Hole>> classes = pattern.holes().stream()
                .collect(Collectors.groupingBy(
                        h -> strutsOf(h) + "/" + h.cutter().id() + "/" + h.neededLean(),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return new Grid(
                "Why this size: the least hole is for the thickest strut and wall, tilt limit and slack are nominal",
                List.of(
                        Column.words("holes"),
                        Column.words("strut"),
                        Column.numbers("needed lean"),
                        Column.numbers("hole at least"),
                        Column.numbers("tilt limit"),
                        Column.numbers("slack"),
                        Column.numbers("worst cases"),
                        Column.numbers("by chance"),
                        Column.numbers((inches() ? "0.004 in (0.1 mm)" : "0.1 mm") + " more hole, strut, wall")),
                classes.values().stream().map(this::why).toList());
    }

    private List<Cell> why(List<Hole> alike) {
        Hole hole = alike.get(0);
        Tolerance tolerance = hole.tolerance();
        return List.of(
                Cell.strong(numbers(alike)),
                Cell.of(strutsOf(hole)),
                Cell.of(Figures.degrees(hole.neededLean())),
                Cell.of(figures.size(hole.required())),
                Cell.of(Figures.degrees(hole.tiltLimit())),
                Cell.strong(Figures.degrees(hole.slack())),
                Cell.of(Figures.degrees(hole.tiltMin()) + " to " + Figures.degrees(hole.tiltMax())),
                Cell.of("± " + Figures.degrees(tolerance.spread())),
                Cell.of(signed(tolerance.perHole()) + ", " + signed(tolerance.perStrut()) + ", "
                        + signed(tolerance.perWall())));
    }

    /** How the figures of {@link #why()} come about. */
    static String whyRule() {
        return "Slack: tilt limit less needed lean. Worst cases: thickest strut and wall with the smallest hole, and the"
                + " other way round. By chance: where 9 of 10 holes or more lie, see Holes at risk.";
    }

    private static String signed(double angle) {
        return (angle < 0 ? "" : "+") + Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }

    /** The numbers of some holes, such as {@code 1, 3, 5}. */
    static String numbers(List<Hole> holes) {
        return holes.stream().map(h -> Integer.toString(h.number())).collect(Collectors.joining(", "));
    }

    // The struts that go into a hole, of all hub types that the pattern serves.
    private String strutsOf(Hole hole) {
        return served().stream()
                .flatMap(type -> strutIn(type, hole).stream())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private List<Integer> served() {
        return plan.served(plan.book().patterns().indexOf(pattern));
    }

    private Optional<String> strutIn(int type, Hole hole) {
        int strut = plan.placement(type).holes().indexOf(hole.number() - 1);
        if (strut < 0) {
            return Optional.empty();
        }
        var in = plan.hubs().types().get(type).struts().get(strut);
        return Optional.of(plan.struts().types().get(in.strutType()).idAt(in.tip()));
    }

    /** Whether a hub type takes the pattern upside down. */
    boolean flips() {
        return served().stream().anyMatch(type -> plan.placement(type).flipped());
    }

    /** Whether more than one hub type uses the pattern. */
    boolean shared() {
        return served().size() > 1;
    }

    /** Which hub types share the pattern, which way up, and what it costs them. */
    Grid sharing() {
        boolean costs = plan.book().sharing().isPresent();
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("hub type"), Column.numbers("in one dome"), Column.words("holes used")));
        if (flips()) {
            columns.add(Column.words("TOP"));
        }
        if (costs) {
            columns.add(Column.numbers("extra lean, at most"));
            columns.add(Column.numbers("strut passes the hub's axis, at most"));
        }
        List<List<StrutLean>> leans = StrutLean.all(plan);
        List<List<Cell>> rows = new ArrayList<>();
        for (int type : served()) {
            List<Cell> row = new ArrayList<>(sits(type));
            if (costs) {
                List<StrutLean> own = leans.get(type);
                row.add(Cell.of(Figures.degrees(
                        own.stream().mapToDouble(StrutLean::extra).max().orElseThrow())));
                row.add(Cell.of(figures.length(
                        own.stream().mapToDouble(StrutLean::miss).max().orElseThrow())));
            }
            rows.add(row);
        }
        return new Grid(shared() ? "Hub types that share this pattern" : "The hub type of this pattern", columns, rows);
    }

    private List<Cell> sits(int type) {
        Placement placement = plan.placement(type);
        String holes = placement.holes().stream()
                .sorted()
                .map(h -> Integer.toString(h + 1))
                .collect(Collectors.joining(", "));
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.strong(Ids.letters('H', type)),
                Cell.of(Integer.toString(plan.hubs().types().get(type).count())),
                Cell.of(holes)));
        if (flips()) {
            cells.add(placement.flipped() ? Cell.strong("inside") : Cell.of("outside"));
        }
        return cells;
    }
}
