package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import collarwright.machining.ProgramUnits;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Holds bored holes against the planned ones, point by point: the end mill's circle is swept along the path that the text
 * makes, and what it takes away is looked at every two degrees round the hole.
 *
 * <p>Frame: X along the pipe, Y across, Z from the rotary axis, the hole's axis at Y0.
 */
final class BoreRules {

    /** How far the wall of a hole may be off, in radius. */
    private static final double OFF = 0.005;

    /** Steepest way down, two degrees: our choice, no source. */
    private static final double STEEPEST = StrictMath.tan(Angles.radians(2));

    /** Beside a disc the cutter only leaves the wall: our choice, no source. */
    private static final double RELIEF = 0.2;

    /** Places round the hole. */
    private static final int PLACES = 180;

    /** Points of a path between two of these places. */
    private static final int FINER = 4;

    /** One step of the program in a turn of the helix, and rounding. */
    private static final double SLACK = 1e-6;

    private final Proof proof;
    private final ProgramTask task;
    private final double tool;
    private final boolean air;
    private final double inner;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<List<Double>> swept = new HashSet<>();

    private BoreRules(Proof proof, ProgramTask task) {
        this.proof = proof;
        this.task = task;
        this.tool = task.cutter().size() / 2;
        this.air = proof.file().lift() > 0;
        this.inner = proof.settings().work().body().leastInnerRadius();
    }

    /** The holes of a task that bores; empty for a task that does not. */
    static List<Fault> check(Proof proof, ProgramTask task) {
        BoreRules rules = new BoreRules(proof, task);
        List<DrilledHole> holes = DrilledHole.from(proof);
        int planned = task.operations().size();
        rules.faults.addAll(DrilledHole.counted(proof, holes, planned, "bored holes"));
        rules.rapids();
        for (int i = 0; i < StrictMath.min(planned, holes.size()); i++) {
            if (task.operations().get(i) instanceof Operation.Bore bore) {
                rules.place(holes.get(i), bore);
                rules.moves(holes.get(i), bore);
                rules.sweep(holes.get(i), bore);
            } else {
                rules.fault(holes.get(i).line(), "an end mill that bores", "another operation");
            }
        }
        return List.copyOf(rules.faults);
    }

    private void place(DrilledHole hole, Operation.Bore bore) {
        Operation.Place place = bore.place();
        double slack = 2 * proof.tolerance();
        String name = name(bore);
        if (!(StrictMath.abs(hole.at().x() - place.x()) <= slack
                && StrictMath.abs(hole.at().y()) <= slack)) {
            fault(
                    hole.line(),
                    name + " about X " + proof.text(place.x()) + ", Y " + proof.text(0),
                    "X " + proof.text(hole.at().x()) + ", Y "
                            + proof.text(hole.at().y()));
        }
        double bottom = bore.bottom() + proof.file().lift();
        if (StrictMath.abs(hole.bottom() - bottom) > slack) {
            fault(hole.line(), name + " to Z " + proof.text(bottom), "Z " + proof.text(hole.bottom()));
        }
        Vec3 top = new Vec3(proof.machine().rotary().topTowardChuck() ? -1 : 1, 0, 0);
        Vec3 up = Wrap.drilled(hole.at().a(), proof.machine().rotary().positive());
        double off = Wrap.offDegrees(up, place.azimuth(), top);
        if (!(off <= 2 * proof.angleToleranceDegrees())) {
            fault(
                    hole.line(),
                    name + " at azimuth " + proof.degrees(Angles.degrees(place.azimuth())),
                    "A " + proof.degrees(hole.at().a()) + ", which is " + proof.degrees(off) + " off");
        }
    }

    /** From above only, down by arcs only, never too steep, the right way round, at the right feed. */
    private void moves(DrilledHole hole, Operation.Bore bore) {
        double crown = proof.highestCrown() + proof.file().lift();
        Event.Stroke first = hole.cuts().get(0);
        double retract = task.heights().retract() + proof.file().lift();
        if (StrictMath.abs(first.from().z() - retract) > 2 * proof.tolerance()) {
            fault(
                    first.line(),
                    "the first cut of a hole from Z " + proof.text(retract),
                    "from Z " + proof.text(first.from().z()));
        }
        if (!first.drive().feedStated()) {
            fault(first.line(), "F on the first cut of each hole", "none");
        }
        for (Event.Stroke stroke : hole.strokes()) {
            if (stroke.feed()) {
                feed(stroke, bore);
                down(stroke);
                path(stroke, bore, crown);
            }
        }
        end(hole, bore);
    }

    /** Also where nothing is cut. */
    private void rapids() {
        double crown = proof.highestCrown() + proof.file().lift();
        for (Event.Stroke stroke : proof.strokes()) {
            if (!stroke.feed() && stroke.to().z() < crown - proof.tolerance()) {
                fault(
                        stroke.line(),
                        "no rapid that ends below the crown",
                        "Z " + proof.text(stroke.to().z()));
            }
        }
    }

    private void feed(Event.Stroke stroke, Operation.Bore bore) {
        double share = 1 - bore.cutter().size() / bore.diameter();
        double wanted = task.cut().feedMmPerMin() * share;
        double found = stroke.drive().feedMmPerMin();
        if (StrictMath.abs(found - wanted) > feedTolerance()) {
            fault(
                    stroke.line(),
                    "feed " + proof.text(wanted) + " a minute at the cutter's centre",
                    proof.text(found) + " a minute");
        }
    }

    /** Feeds are printed with one decimal of mm/min or two of in/min, rounded down. */
    private double feedTolerance() {
        return proof.settings().units() == ProgramUnits.INCH ? 0.0101 * 25.4 : 0.101;
    }

    private void down(Event.Stroke stroke) {
        double sinks = stroke.from().z() - stroke.to().z();
        if (stroke.path() instanceof Swept.Arc arc) {
            double round = StrictMath.abs(arc.turn())
                    * StrictMath.hypot(
                            stroke.from().x() - arc.centreX(), stroke.from().y() - arc.centreY());
            if (arc.turn() < 0) {
                fault(stroke.line(), "round counter-clockwise, so that the cutter climbs", "clockwise");
            }
            if (sinks < -proof.tolerance()) {
                fault(stroke.line(), "every turn goes deeper or stays", "up by " + proof.text(-sinks));
            }
            double turns = StrictMath.abs(arc.turn()) / (2 * StrictMath.PI);
            if (sinks > round * STEEPEST + SLACK || sinks > task.cut().peck() * turns + SLACK) {
                fault(
                        stroke.line(),
                        "a helix of 2 degrees or less, and turns of "
                                + proof.text(task.cut().peck()) + " or less",
                        Decimals.fixed(Angles.degrees(StrictMath.atan2(sinks, round)), 2) + " degrees, "
                                + proof.text(sinks / turns) + " a turn");
            }
        } else if (StrictMath.abs(sinks) > 0) {
            fault(
                    stroke.line(),
                    "down by a helix only",
                    "straight down to Z " + proof.text(stroke.to().z()));
        }
    }

    /** Every turn is about the hole's axis, and no straight cut in the hole goes further than off the wall. */
    private void path(Event.Stroke stroke, Operation.Bore bore, double crown) {
        double slack = 2 * proof.tolerance();
        if (stroke.path() instanceof Swept.Arc arc) {
            double off = StrictMath.hypot(arc.centreX() - bore.place().x(), arc.centreY());
            if (off > slack) {
                fault(stroke.line(), "every turn about the hole's axis", proof.text(off) + " beside it");
            }
        } else if (stroke.lowest() < crown - proof.tolerance()) {
            double way = StrictMath.hypot(
                    stroke.to().x() - stroke.from().x(),
                    stroke.to().y() - stroke.from().y());
            if (way > off(bore) + slack) {
                fault(
                        stroke.line(),
                        "a straight cut of " + proof.text(off(bore)) + " or less in the hole",
                        proof.text(way));
            }
        }
    }

    /** How far the cutter leaves the wall before it goes up: to the axis, or a little where a disc stands there. */
    private double off(Operation.Bore bore) {
        double radius = bore.diameter() / 2 - tool;
        return radius > tool ? RELIEF : radius;
    }

    /** One level turn at the bottom, as the last; then off the wall. */
    private void end(DrilledHole hole, Operation.Bore bore) {
        List<Event.Stroke> cuts = hole.cuts();
        List<Event.Stroke> turns =
                cuts.stream().filter(s -> s.path() instanceof Swept.Arc).toList();
        List<Event.Stroke> level = turns.stream()
                .filter(s -> StrictMath.abs(s.from().z() - s.to().z()) <= proof.tolerance())
                .toList();
        if (level.size() != 1 || !level.get(0).equals(turns.get(turns.size() - 1))) {
            int line = (level.isEmpty() ? cuts.get(cuts.size() - 1) : level.get(0)).line();
            fault(line, "one level turn, the last of the hole", level.size() + " level turns");
        }
        Event.Stroke last = cuts.get(cuts.size() - 1);
        double out =
                StrictMath.hypot(last.to().x() - bore.place().x(), last.to().y()) + tool;
        double wanted = bore.diameter() / 2 - off(bore);
        if (StrictMath.abs(out - wanted) > 2 * proof.tolerance() + OFF / 5 || last.path() instanceof Swept.Arc) {
            fault(
                    last.line(),
                    "the cutter " + proof.text(off(bore)) + " off the wall before it goes up",
                    proof.text(bore.diameter() / 2 - out));
        }
    }

    /** What the end mill takes away; told once for holes that are made alike. */
    private void sweep(DrilledHole hole, Operation.Bore bore) {
        double centreX = bore.place().x();
        List<Pose> path = path(hole, centreX);
        double[] lowest = new double[PLACES];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        List<Double> key = new ArrayList<>(List.of(bore.diameter()));
        double widest = 0;
        double far = Double.POSITIVE_INFINITY;
        double radius = bore.diameter() / 2;
        for (Pose p : path) {
            double out = StrictMath.hypot(p.x(), p.y()) + tool;
            widest = StrictMath.max(widest, out);
            far = StrictMath.min(far, farWall(p));
            key.addAll(List.of(StrictMath.rint(p.x() * 1e6), StrictMath.rint(p.y() * 1e6), p.z()));
            if (out >= radius - OFF) {
                int place = place(p);
                lowest[place] = StrictMath.min(lowest[place], p.z());
            }
        }
        if (!swept.add(key)) {
            return;
        }
        if (widest > radius + OFF) {
            fault(
                    hole.line(),
                    name(bore) + " bored to " + proof.text(bore.diameter()) + " and no wider",
                    proof.text(2 * widest));
        }
        if (!air) {
            through(hole, bore, lowest);
            if (far < 0) {
                fault(hole.line(), "the cutter off the far wall", "Z " + proof.text(hole.bottom()) + " meets it");
            }
        }
    }

    /** The points of all feeds from the hole's axis, close together. */
    private static List<Pose> path(DrilledHole hole, double centreX) {
        List<Pose> path = new ArrayList<>();
        for (Event.Stroke stroke : hole.cuts()) {
            int points = FINER;
            if (stroke.path() instanceof Swept.Arc arc) {
                points = (int) StrictMath.ceil(StrictMath.abs(arc.turn()) / (2 * StrictMath.PI) * PLACES * FINER);
            }
            for (int i = 0; i <= points; i++) {
                Pose p = stroke.path().at(stroke.from(), stroke.to(), (double) i / points);
                path.add(new Pose(p.x() - centreX, p.y(), p.z(), p.a()));
            }
        }
        return path;
    }

    private static int place(Pose p) {
        double turn = StrictMath.atan2(p.y(), p.x()) / (2 * StrictMath.PI);
        return StrictMath.floorMod((int) StrictMath.rint(turn * PLACES), PLACES);
    }

    /** Everywhere round the hole the wall is gone out to the planned diameter, down to the inside of the pipe. */
    private void through(DrilledHole hole, Operation.Bore bore, double[] lowest) {
        double radius = bore.diameter() / 2;
        for (int i = 0; i < PLACES; i++) {
            double y = radius * StrictMath.sin(2 * StrictMath.PI * i / PLACES);
            double wall = StrictMath.sqrt(StrictMath.max(0, inner * inner - y * y));
            if (!(lowest[i] <= wall + 2 * proof.tolerance())) {
                String found = Double.isFinite(lowest[i])
                        ? "cut down to Z " + proof.text(lowest[i]) + " there"
                        : "narrower there";
                fault(
                        hole.line(),
                        name(bore) + " " + proof.text(bore.diameter()) + " wide and through the wall everywhere, at "
                                + 360 * i / PLACES + " degrees to Z " + proof.text(wall),
                        found);
                return;
            }
        }
    }

    /** Room between the cutter's lowest edge and the wall on the far side; negative where it meets it. */
    private double farWall(Pose p) {
        double side = StrictMath.abs(p.y()) + tool;
        double least = inner - proof.settings().work().outOfRound() / 2;
        return p.z() < 0 ? least - StrictMath.hypot(side, p.z()) : least;
    }

    private static String name(Operation operation) {
        return "collar " + operation.place().collar() + ", " + operation.title();
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
