package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.HoleDepth;
import collarwright.machining.Workpiece;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The tables of one pattern: where its holes go, how they are drilled, and why they are as large as they are. */
final class PatternTables {

    private final Plan plan;
    private final Job job;
    private final Pattern pattern;
    private final Figures figures;

    PatternTables(Plan plan, Pattern pattern) {
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
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            double arc = hole.azimuth() * outer();
            rows.add(List.of(
                    Cell.strong(Integer.toString(hole.number())),
                    Cell.of(Decimals.fixed(Angles.degrees(hole.azimuth()), 2) + "°"),
                    Cell.of(Angles.degreesMinutes(hole.azimuth())),
                    Cell.of(Decimals.fixed(arc, 2)),
                    Cell.of(InchFractions.nearest(arc, 32).text()),
                    Cell.of(pilot(hole.cutter().kind())),
                    Cell.strong(
                            hole.cutter().marked() + (hole.cutter().kind() == CutterKind.HOLE_SAW ? " saw" : " twist")),
                    Cell.of(figures.size(hole.diameter())),
                    Cell.of(figures.length(travel(hole))),
                    Cell.tick()));
        }
        return new Grid(
                "Press table: turn clockwise from above, from the 0° line (1/32 in is up to 0.4 mm off)",
                List.of(
                        Column.numbers("hole"),
                        Column.numbers("degrees"),
                        Column.numbers("deg, min"),
                        Column.numbers("arc, mm"),
                        Column.numbers("arc, 1/32 in"),
                        Column.words("pilot"),
                        Column.words("cutter"),
                        Column.numbers("as drilled"),
                        Column.numbers("depth"),
                        Column.marks("done")),
                rows);
    }

    private static String pilot(CutterKind kind) {
        return kind == CutterKind.HOLE_SAW ? "in saw" : "spot first";
    }

    private HoleDepth depth(Hole hole) {
        Workpiece work = Workpiece.of(job.hub().collar(), job.hub().body());
        return HoleDepth.of(work, hole.cutter(), job.limits().overtravel());
    }

    /** From touching the crown with the cutter's lowest point to the end of the cut. */
    private double travel(Hole hole) {
        return outer() - depth(hole).bottom();
    }

    /** How the depths of the press table come about, one line for each cutter. */
    List<String> depths() {
        List<String> lines = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            double overtravel = job.limits().overtravel();
            double through = outer() - depth(hole).edge() - overtravel;
            String line = hole.cutter().marked() + ": through at its full diameter "
                    + figures.length(through) + " below the crown, + "
                    + figures.length(hole.cutter().lead())
                    + (hole.cutter().kind() == CutterKind.HOLE_SAW ? " pilot" : " point") + ", + "
                    + figures.length(overtravel) + " overtravel.";
            if (!lines.contains(line)) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** Why the holes are as large as they are; holes for one strut type with one cutter stand in one row. */
    Grid why() {
        Map<String, List<Hole>> classes = pattern.holes().stream()
                .collect(Collectors.groupingBy(
                        h -> strutOf(h) + "/" + h.cutter().id(), LinkedHashMap::new, Collectors.toList()));
        return new Grid(
                "Why this size: where the strut binds",
                List.of(
                        Column.words("holes"),
                        Column.words("strut"),
                        Column.numbers("needed lean"),
                        Column.numbers("hole at least"),
                        Column.numbers("tilt limit"),
                        Column.numbers("worst cases"),
                        Column.numbers("slack")),
                classes.values().stream().map(this::why).toList());
    }

    private List<Cell> why(List<Hole> alike) {
        Hole hole = alike.get(0);
        return List.of(
                Cell.strong(numbers(alike)),
                Cell.of(strutOf(hole)),
                Cell.of(Figures.degrees(hole.neededLean())),
                Cell.of(figures.size(hole.required())),
                Cell.of(Figures.degrees(hole.tiltLimit())),
                Cell.of(Figures.degrees(hole.tiltMin()) + " to " + Figures.degrees(hole.tiltMax())),
                Cell.strong(Figures.degrees(hole.slack())));
    }

    /** The numbers of some holes, such as {@code 1, 3, 5}. */
    static String numbers(List<Hole> holes) {
        return holes.stream().map(h -> Integer.toString(h.number())).collect(Collectors.joining(", "));
    }

    // A pattern serves the hub type of its own place in the book.
    private String strutOf(Hole hole) {
        int index = plan.book().patterns().indexOf(pattern);
        var strut = plan.hubs().types().get(index).struts().get(hole.number() - 1);
        return plan.struts().types().get(strut.strutType()).idAt(strut.tip());
    }
}
