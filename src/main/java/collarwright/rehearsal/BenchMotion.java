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
        return List.copyOf(rules.faults);
    }

    private void firstMotions() {
        MotionLimits.Stated found = MotionLimits.firstStated(proof, "ZXYA");
        faults.addAll(MotionLimits.order(proof, found, ways.order(), ways.order()));
        faults.addAll(MotionLimits.ends(proof));
    }

    private void oneAxis(Event.Stroke stroke) {
        if (!stroke.cycle()) {
            faults.addAll(MotionLimits.oneAxis(stroke));
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
        double y = stroke.to().y();
        if (travel.across().filter(r -> !Double.isNaN(y) && !r.holds(y, slack)).isPresent()) {
            fault(stroke.line(), "Y within the travel of the machine", "Y " + proof.text(y));
        }
        faults.addAll(MotionLimits.travel(proof, stroke));
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

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
