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
        rules.end();
        return List.copyOf(rules.faults);
    }

    /** Z, then Y, then A, then X; A may take two moves for its play. */
    private void firstMotions() {
        StringBuilder order = new StringBuilder();
        for (Event.Stroke s : proof.strokes()) {
            note(order, 'Z', s.from().z(), s.to().z());
            note(order, 'Y', s.from().y(), s.to().y());
            note(order, 'A', s.from().a(), s.to().a());
            note(order, 'X', s.from().x(), s.to().x());
        }
        boolean byY = proof.machine().rotary().form().byY();
        if (!order.toString().equals(byY ? "ZAX" : "ZYAX")) {
            int line = proof.strokes().isEmpty() ? 1 : proof.strokes().get(0).line();
            String expected =
                    byY ? "first motions Z, the pipe, X in this order" : "first motions Z, Y, A, X in this order";
            fault(line, expected, order.isEmpty() ? "none" : order.toString());
        }
        proof.strokes().stream()
                .findFirst()
                .filter(s -> !proof.atClear(s.to().z()))
                .ifPresent(s -> fault(
                        s.line(), "first of all Z up to " + proof.text(proof.clear()), "Z " + proof.text(s.to().z())));
    }

    private static void note(StringBuilder order, char axis, double from, double to) {
        if (Double.isNaN(from) && !Double.isNaN(to)) {
            order.append(axis);
        }
    }

    private void oneAxis(Event.Stroke stroke) {
        if (stroke.cycle() || stroke.kind() == Event.Kind.HAND) {
            return;
        }
        if (stroke.feed() && proof.bores()) {
            boring(stroke);
            return;
        }
        long axes = stroke.block().words().stream()
                .filter(w -> "XYZA".indexOf(w.letter()) >= 0)
                .count();
        if (axes != 1) {
            fault(stroke.line(), "one axis in a move", axes + " axes");
        }
        if (stroke.feed() && !stroke.block().has("Z")) {
            fault(stroke.line(), "cuts along Z only", "another axis");
        }
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
        Machine.Travel travel = proof.machine().travel();
        double slack = proof.tolerance();
        Swept.Reach reach = stroke.reach();
        boolean arc = stroke.path() instanceof Swept.Arc;
        double z = stroke.to().z();
        double least = arc ? reach.minX() : stroke.to().x();
        double most = arc ? reach.maxX() : stroke.to().x();
        if (least < travel.minX() - slack || most > travel.maxX() + slack) {
            fault(
                    stroke.line(),
                    "X between " + proof.text(travel.minX()) + " and " + proof.text(travel.maxX()),
                    "X " + proof.text(most > travel.maxX() + slack ? most : least));
        }
        across(stroke, reach);
        if (z < travel.minZ() - slack || z > travel.maxZ() + slack) {
            fault(
                    stroke.line(),
                    "Z between " + proof.text(travel.minZ()) + " and " + proof.text(travel.maxZ()),
                    "Z " + proof.text(z));
        }
        if (stroke.feed() && stroke.drive().feedMmPerMin() > travel.maxFeedMmPerMin() + 1e-6) {
            fault(
                    stroke.line(),
                    "F up to " + proof.text(travel.maxFeedMmPerMin()) + " a minute",
                    proof.text(stroke.drive().feedMmPerMin()) + " a minute");
        }
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

    private void end() {
        Optional<Event.Stroke> last = proof.strokes().stream().reduce((a, b) -> b);
        last.filter(s -> !proof.atClear(s.to().z()))
                .ifPresent(s -> fault(
                        s.line(), "at the end Z up to " + proof.text(proof.clear()), "Z " + proof.text(s.to().z())));
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
