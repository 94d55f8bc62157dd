package collarwright.rehearsal;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every move of the text, whether it belongs to a hole or not: below the R plane nothing moves but the cuts of a planned
 * hole at its place, and rapids down what has been cut there already.
 *
 * <p>Other rules look at holes, which begin with a cut; a rapid that goes down where nothing is cut belongs to none of them.
 * What was cut counts until the cutter is changed or the program waits, since the work may then be another or be turned.
 */
final class RapidRules {

    /** Closest that a rapid may come to uncut material: a peck's 0.254 less rounding; our choice, no source. */
    private static final double LEAST_GAP = 0.2;

    static final String ABOVE = "a rapid ends above uncut material";

    private final Replayed program;
    private final Ground ground;
    private final double slack;
    private final Map<Integer, Double> reached = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private RapidRules(Replayed program, Ground ground) {
        this.program = program;
        this.ground = ground;
        this.slack = 2 * program.tolerance();
    }

    static List<Fault> check(Replayed program, Ground ground) {
        RapidRules rules = new RapidRules(program, ground);
        program.events().forEach(rules::event);
        return List.copyOf(rules.faults);
    }

    private void event(Event event) {
        if (event instanceof Event.Stop || event instanceof Event.Tool) {
            reached.clear();
        } else if (event instanceof Event.Stroke stroke && !(stroke.lowest() >= ground.floor() - slack)) {
            low(stroke);
        }
    }

    private void low(Event.Stroke stroke) {
        int place = ground.at(stroke.to(), slack);
        boolean boring = stroke.feed() && place >= 0 && ground.place(place).bored();
        if (!boring) {
            sideways(stroke);
        }
        if (stroke.feed()) {
            cut(stroke, place);
        } else if (stroke.kind() != Event.Kind.HAND && !stroke.travels() && !stroke.turns()) {
            rapid(stroke, place);
        }
    }

    /** In the words of the rules of motion, which hold it to the clear height. */
    private void sideways(Event.Stroke stroke) {
        String found = "Z " + program.text(stroke.lowest());
        if (stroke.turns()) {
            fault(stroke, "the pipe turns only at Z " + program.text(program.clear()) + " or higher", found);
        }
        if (stroke.travels()) {
            fault(stroke, "X and Y move only at Z " + program.text(program.clear()) + " or higher", found);
        }
    }

    private void cut(Event.Stroke stroke, int place) {
        if (place < 0) {
            fault(stroke, "cuts only where a hole is planned", "cut" + into(stroke));
        } else if (strays(stroke, ground.place(place))) {
            fault(stroke, "a cutter that stays within its hole", "cut beside it" + at(stroke));
        } else if (!ground.place(place).bored()) {
            reached.merge(place, stroke.to().z(), StrictMath::min);
        }
    }

    /** Of an arc, how far its circle reaches from the hole's axis. */
    private boolean strays(Event.Stroke stroke, Ground.Place place) {
        double out = away(stroke.from(), place);
        if (stroke.path() instanceof Swept.Arc arc) {
            Pose centre = new Pose(
                    arc.centreX(), arc.centreY(), stroke.to().z(), stroke.to().a());
            out = away(centre, place)
                    + StrictMath.hypot(
                            stroke.from().x() - arc.centreX(), stroke.from().y() - arc.centreY());
        }
        return place.bored() && out > place.way() + 2 * slack;
    }

    private static double away(Pose pose, Ground.Place place) {
        return StrictMath.hypot(pose.x() - place.x(), pose.y() - place.y());
    }

    private void rapid(Event.Stroke stroke, int place) {
        double z = stroke.to().z();
        double lowest =
                StrictMath.min(ground.floor(), reached.getOrDefault(place, Double.POSITIVE_INFINITY) + LEAST_GAP);
        if (!(z >= lowest - slack)) {
            fault(stroke, ABOVE, "rapid" + into(stroke));
        }
    }

    private String into(Event.Stroke stroke) {
        return " to Z " + program.text(stroke.to().z()) + " into " + ground.work() + at(stroke);
    }

    private String at(Event.Stroke stroke) {
        Pose to = stroke.to();
        boolean across = !ground.turns() && !Double.isNaN(to.y()) && to.y() != 0;
        return " at X " + program.text(to.x())
                + (across ? ", Y " + program.text(to.y()) : "")
                + (ground.turns() && !Double.isNaN(to.a()) ? ", A " + Decimals.fixed(to.a(), 3) : "");
    }

    private void fault(Event.Stroke stroke, String expected, String found) {
        faults.add(new Fault(stroke.line(), expected, found));
    }
}
