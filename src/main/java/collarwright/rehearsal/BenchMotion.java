package collarwright.rehearsal;

import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;

/** Where a cutter may go over work that lies still, and in which order; a stop is never met. */
final class BenchMotion {

    private final BenchProof proof;
    private final Ways ways;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * What differs between machines.
     *
     * @param order in which the axes move first
     * @param onAxis whether Y stays at 0
     * @param leastX where the cutter's side may come to below the clear height
     */
    record Ways(String order, boolean onAxis, double leastX) {}

    private BenchMotion(BenchProof proof, Ways ways) {
        this.proof = proof;
        this.ways = ways;
    }

    static List<Fault> check(BenchProof proof, Ways ways) {
        BenchMotion rules = new BenchMotion(proof, ways);
        rules.firstMotions();
        for (Event.Stroke stroke : proof.strokes()) {
            rules.oneAxis(stroke);
            rules.clear(stroke);
            rules.travel(stroke);
            rules.offTheStop(stroke);
        }
        rules.end();
        return List.copyOf(rules.faults);
    }

    private void firstMotions() {
        StringBuilder order = new StringBuilder();
        for (Event.Stroke s : proof.strokes()) {
            note(order, 'Z', s.from().z(), s.to().z());
            note(order, 'X', s.from().x(), s.to().x());
            note(order, 'Y', s.from().y(), s.to().y());
            note(order, 'A', s.from().a(), s.to().a());
        }
        int line = proof.strokes().isEmpty() ? 1 : proof.strokes().get(0).line();
        if (!order.toString().equals(ways.order())) {
            fault(
                    line,
                    "first motions " + ways.order() + " in this order",
                    order.isEmpty() ? "none" : order.toString());
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
        if (stroke.cycle()) {
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

    private void clear(Event.Stroke stroke) {
        if (stroke.travels() && !proof.atClear(stroke.lowest())) {
            fault(
                    stroke.line(),
                    "X and Y move only at Z " + proof.text(proof.clear()) + " or higher",
                    "Z " + proof.text(stroke.lowest()));
        }
        if (ways.onAxis() && stroke.to().y() != 0 && !Double.isNaN(stroke.to().y())) {
            fault(
                    stroke.line(),
                    "Y0 over the strut's axis",
                    "Y " + proof.text(stroke.to().y()));
        }
    }

    private void travel(Event.Stroke stroke) {
        Machine.Travel travel = proof.machine().travel();
        double slack = proof.tolerance();
        double x = stroke.to().x();
        double z = stroke.to().z();
        double y = stroke.to().y();
        if (travel.across().filter(r -> !Double.isNaN(y) && !r.holds(y, slack)).isPresent()) {
            fault(stroke.line(), "Y within the travel of the machine", "Y " + proof.text(y));
        }
        if (x < travel.minX() - slack || x > travel.maxX() + slack) {
            fault(
                    stroke.line(),
                    "X between " + proof.text(travel.minX()) + " and " + proof.text(travel.maxX()),
                    "X " + proof.text(x));
        }
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

    /** The side of the cutter keeps its distance from the stop whenever it is below the clear height. */
    private void offTheStop(Event.Stroke stroke) {
        double least = ways.leastX() + proof.tool().cutter().asDrilled().max() / 2;
        if (stroke.to().x() < least - proof.tolerance() && !proof.atClear(stroke.lowest())) {
            fault(
                    stroke.line(),
                    "X " + proof.text(least) + " or more below the clear height, off the stop",
                    "X " + proof.text(stroke.to().x()));
        }
    }

    private void end() {
        proof.strokes().stream()
                .reduce((a, b) -> b)
                .filter(s -> !proof.atClear(s.to().z()))
                .ifPresent(s -> fault(
                        s.line(), "at the end Z up to " + proof.text(proof.clear()), "Z " + proof.text(s.to().z())));
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
