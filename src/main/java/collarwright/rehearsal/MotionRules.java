package collarwright.rehearsal;

import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the tool may go, in which order, and where the pipe may turn. */
final class MotionRules {

    private final Proof proof;
    private final List<Fault> faults = new ArrayList<>();

    private MotionRules(Proof proof) {
        this.proof = proof;
    }

    static List<Fault> check(Proof proof) {
        MotionRules rules = new MotionRules(proof);
        rules.firstMotions();
        for (Event.Stroke stroke : proof.strokes()) {
            rules.oneAxis(stroke);
            rules.clear(stroke);
            rules.travel(stroke);
            rules.overJaws(stroke);
        }
        rules.turns();
        return List.copyOf(rules.faults);
    }

    /** Z, then Y, then A, then X; A may take two moves for its play. */
    private void firstMotions() {
        boolean byY = proof.machine().rotary().form().byY();
        MotionLimits.Stated found = MotionLimits.firstStated(proof, "ZYAX");
        faults.addAll(MotionLimits.order(proof, found, byY ? "ZAX" : "ZYAX", byY ? "Z, the pipe, X" : "Z, Y, A, X"));
        faults.addAll(MotionLimits.ends(proof));
    }

    private void oneAxis(Event.Stroke stroke) {
        if (stroke.cycle() || stroke.kind() == Event.Kind.HAND) {
            return;
        }
        if (stroke.feed() && proof.bores()) {
            boring(stroke);
            return;
        }
        faults.addAll(MotionLimits.oneAxis(stroke));
    }

    /** Round in the hole, or straight along X and Y. */
    private void boring(Event.Stroke stroke) {
        boolean arc = stroke.path() instanceof Swept.Arc;
        if (stroke.block().has("A") || (!arc && stroke.block().has("Z"))) {
            fault(stroke.line(), "cuts by arcs, or along X and Y", "another axis");
        }
    }

    private void clear(Event.Stroke stroke) {
        if (stroke.turns() && !proof.atClear(stroke.lowest())) {
            fault(
                    stroke.line(),
                    "the pipe turns only at Z " + proof.text(proof.clear()) + " or higher",
                    "Z " + proof.text(stroke.lowest()));
        }
        boolean bores = stroke.feed() && proof.bores();
        if (!bores && stroke.travels() && !proof.atClear(stroke.lowest())) {
            fault(
                    stroke.line(),
                    "X and Y move only at Z " + proof.text(proof.clear()) + " or higher",
                    "Z " + proof.text(stroke.lowest()));
        }
        if (stroke.to().y() != 0 && !Double.isNaN(stroke.to().y())) {
            fault(
                    stroke.line(),
                    "Y0 over the axis",
                    "Y " + proof.text(stroke.to().y()));
        }
    }

    private void travel(Event.Stroke stroke) {
        faults.addAll(MotionLimits.travel(proof, stroke));
        across(stroke, stroke.reach());
    }

    /** Y goes no further than the machine, all round an arc. */
    private void across(Event.Stroke stroke, Swept.Reach reach) {
        Optional<Machine.Reach> across = proof.machine().travel().across();
        double slack = proof.tolerance();
        if (stroke.path() instanceof Swept.Arc
                && !across.filter(r -> r.holds(reach.minY(), slack) && r.holds(reach.maxY(), slack))
                        .isPresent()) {
            String range = across.map(r -> "Y between " + proof.text(r.least()) + " and " + proof.text(r.most()))
                    .orElse("no arc without a linear Y");
            fault(stroke.line(), range, "Y " + proof.text(reach.minY()) + " to " + proof.text(reach.maxY()));
        }
    }

    /** The whole cutter stays off the chuck whenever it is below the clear height. */
    private void overJaws(Event.Stroke stroke) {
        double radius =
                proof.file().task().map(t -> t.cutter().asDrilled().max() / 2).orElse(0.0);
        boolean arc = stroke.path() instanceof Swept.Arc;
        double least = arc ? stroke.reach().minX() : stroke.to().x();
        boolean over = least - radius < 0;
        if (over && !proof.atClear(stroke.lowest())) {
            fault(
                    stroke.line(),
                    "nothing below Z " + proof.text(proof.clear()) + " over the jaws (X 0 and less)",
                    "X " + proof.text(least) + ", Z " + proof.text(stroke.lowest()));
        }
    }

    /** A starts its take-up below the first angle, then only rises, in [0, 360). */
    private void turns() {
        List<Event.Stroke> turns =
                proof.strokes().stream().filter(Event.Stroke::turns).toList();
        double takeUp = proof.machine().rotary().form().byHand()
                ? 0
                : proof.machine().rotary().takeUpDegrees();
        double slack = 2 * proof.angleToleranceDegrees();
        double last = Double.NaN;
        for (int i = 0; i < turns.size(); i++) {
            Event.Stroke turn = turns.get(i);
            double a = turn.to().a();
            double least = i == 0 ? -takeUp - slack : 0;
            if (a < least || a >= 360) {
                fault(turn.line(), "A from 0 to less than 360 degrees", proof.degrees(a));
            }
            if (i > 0 && !(a > last)) {
                fault(turn.line(), "A rising", proof.degrees(a) + " after " + proof.degrees(last));
            }
            last = a;
        }
        approach(takeUp, slack);
    }

    /** The first hole's angle is come to from below, by the take-up. */
    private void approach(double takeUp, double slack) {
        double last = Double.NaN;
        double step = Double.NaN;
        for (Event.Stroke stroke : proof.strokes()) {
            if (stroke.turns()) {
                step = stroke.to().a() - last;
                last = stroke.to().a();
                if (!Double.isNaN(stroke.to().x())) {
                    fault(stroke.line(), "A turned to the first hole before X moves", "X before A");
                }
            } else if (stroke.feed()) {
                if (takeUp > 0 && !(StrictMath.abs(step - takeUp) <= slack)) {
                    String found = Double.isNaN(step) ? "none" : proof.degrees(step);
                    fault(stroke.line(), "an approach from " + proof.degrees(takeUp) + " below", found);
                }
                return;
            }
        }
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
