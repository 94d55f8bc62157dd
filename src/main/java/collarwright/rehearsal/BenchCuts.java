package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;

/** Holds each hole against its plan and against work that lies still: through all of it, with room below. */
final class BenchCuts {

    private final BenchProof proof;
    private final List<Fault> faults = new ArrayList<>();

    private BenchCuts(BenchProof proof) {
        this.proof = proof;
    }

    static List<Fault> check(BenchProof proof) {
        BenchCuts rules = new BenchCuts(proof);
        List<DrilledHole> holes = proof.holes();
        int planned = proof.points().size();
        rules.faults.addAll(DrilledHole.counted(proof, holes, planned, "holes or dimples"));
        for (int i = 0; i < StrictMath.min(planned, holes.size()); i++) {
            rules.place(holes.get(i), proof.points().get(i));
        }
        if (!proof.air()) {
            holes.forEach(rules::through);
        }
        BenchProof.Levels levels = proof.levels();
        rules.faults.addAll(DrillRules.check(
                proof,
                holes,
                new DrillRules.Drilling(
                        proof.tool().cut(),
                        proof.tool().dimples(),
                        levels.top() + levels.lift(),
                        levels.retract() + levels.lift())));
        if (proof.air()) {
            proof.strokes().forEach(rules::inTheAir);
        }
        return List.copyOf(rules.faults);
    }

    private void place(DrilledHole hole, BenchProof.Point point) {
        double slack = 2 * proof.tolerance();
        double y = hole.at().y();
        boolean across = Double.isNaN(y) || StrictMath.abs(y - point.y()) <= slack;
        if (!(StrictMath.abs(hole.at().x() - point.x()) <= slack && across)) {
            fault(
                    hole.line(),
                    point.title() + " at X " + proof.text(point.x()) + ", Y " + proof.text(point.y()),
                    "X " + proof.text(hole.at().x()) + ", Y " + proof.text(y));
        }
        double bottom = point.bottom() + proof.levels().lift();
        if (StrictMath.abs(hole.bottom() - bottom) > slack) {
            fault(hole.line(), point.title() + " to Z " + proof.text(bottom), "Z " + proof.text(hole.bottom()));
        }
    }

    private void through(DrilledHole hole) {
        BenchProof.Levels levels = proof.levels();
        double lead = proof.tool().dimples() ? 0 : proof.tool().cutter().lead();
        double edge = hole.bottom() + lead;
        if (edge > levels.through() + 2 * proof.tolerance()) {
            fault(
                    hole.line(),
                    proof.tool().dimples()
                            ? "a dimple in the work"
                            : "the full diameter through the whole work, Z " + proof.text(levels.through()),
                    "its edge at Z " + proof.text(edge));
        }
        if (hole.bottom() < levels.floor() - 2 * proof.tolerance()) {
            fault(
                    hole.line(),
                    "the cutter off the bed, Z " + proof.text(levels.floor()) + " or higher",
                    "Z " + proof.text(hole.bottom()));
        }
    }

    private void inTheAir(Event.Stroke stroke) {
        double least = proof.levels().top() + proof.machine().travel().clearGap();
        if (stroke.to().z() < least - proof.tolerance()) {
            fault(
                    stroke.line(),
                    "an air cut at Z " + proof.text(least) + " or higher",
                    "Z " + proof.text(stroke.to().z()));
        }
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
