package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;

/** Holds the holes that the text makes against the planned ones, and each against the pipe. */
final class HoleRules {

    private final Proof proof;
    private final List<Fault> faults = new ArrayList<>();

    private HoleRules(Proof proof) {
        this.proof = proof;
    }

    static List<Fault> check(Proof proof, ProgramTask task) {
        HoleRules rules = new HoleRules(proof);
        List<DrilledHole> holes = DrilledHole.from(proof);
        int planned = task.operations().size();
        rules.faults.addAll(DrilledHole.counted(proof, holes, planned, "holes or dimples"));
        for (int i = 0; i < StrictMath.min(planned, holes.size()); i++) {
            rules.place(holes.get(i), task.operations().get(i));
        }
        double lift = proof.file().lift();
        rules.faults.addAll(DrillRules.check(
                proof,
                holes,
                new DrillRules.Drilling(
                        task.cut(),
                        task.marks(),
                        proof.highestCrown() + lift,
                        task.heights().retract() + lift)));
        return List.copyOf(rules.faults);
    }

    private void place(DrilledHole hole, Operation operation) {
        Operation.Place place = operation.place();
        double slack = 2 * proof.tolerance();
        String name = "collar " + place.collar() + ", " + operation.title();
        if (StrictMath.abs(hole.at().x() - place.x()) > slack) {
            fault(
                    hole.line(),
                    name + " at X " + proof.text(place.x()),
                    "X " + proof.text(hole.at().x()));
        }
        double bottom = operation.bottom() + proof.file().lift();
        if (StrictMath.abs(hole.bottom() - bottom) > slack) {
            fault(hole.line(), name + " to Z " + proof.text(bottom), "Z " + proof.text(hole.bottom()));
        }
        double off = offAzimuth(hole, place.azimuth());
        if (Double.isNaN(off)) {
            fault(hole.line(), name + " after the pipe was turned to it", "A nowhere stated");
        } else if (!(off <= 2 * proof.angleToleranceDegrees())) {
            fault(
                    hole.line(),
                    name + " at azimuth " + proof.degrees(Angles.degrees(place.azimuth())),
                    "A " + proof.degrees(hole.at().a()) + ", which is " + proof.degrees(off) + " off");
        }
    }

    /** The angle in degrees between the hole turned back into the pipe's frame and the azimuth about TOP. */
    private double offAzimuth(DrilledHole hole, double azimuth) {
        return Wrap.offDegrees(
                Wrap.drilled(hole.at().a(), proof.machine().rotary().positive()), azimuth, top());
    }

    private Vec3 top() {
        return new Vec3(proof.machine().rotary().topTowardChuck() ? -1 : 1, 0, 0);
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
