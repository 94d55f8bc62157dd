package collarwright.rehearsal;

import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds the cutter at the bottom of each hole against the pipe, point by point round its edge: through the wall
 * everywhere, off the far wall everywhere, in front of the jaws; a dimple stays in the wall; an air cut stays off the pipe.
 */
final class PipeRules {

    /** Pilots of hole saws are 6 to 8 mm across: common practice, no source. */
    private static final double PILOT_RADIUS = 4;

    /** Once a degree round the cutter's edge: our choice, no source. */
    private static final int POINTS = 360;

    private final Proof proof;
    private final Cutter cutter;
    private final double inner;
    private final List<Fault> faults = new ArrayList<>();

    private PipeRules(Proof proof, Cutter cutter) {
        this.proof = proof;
        this.cutter = cutter;
        this.inner = proof.settings().work().body().leastInnerRadius();
    }

    static List<Fault> check(Proof proof, ProgramTask task) {
        PipeRules rules = new PipeRules(proof, task.cutter());
        if (proof.file().purpose() == ProgramFile.Purpose.AIR_CUT) {
            proof.strokes().forEach(rules::inTheAir);
            return List.copyOf(rules.faults);
        }
        for (DrilledHole hole : DrilledHole.from(proof)) {
            if (task.marks()) {
                rules.inTheWall(hole);
            } else {
                rules.through(hole);
                rules.offTheFarWall(hole);
            }
            rules.offTheJaws(hole);
        }
        return List.copyOf(rules.faults);
    }

    private void through(DrilledHole hole) {
        double edge = hole.bottom() + cutter.lead();
        double radius = cutter.asDrilled().max() / 2;
        // The wall falls away to the sides, and ends lowest at the ends of the widest line across.
        double deep = StrictMath.sqrt(StrictMath.max(0, inner * inner - radius * radius)) - cutter.lead();
        for (int i = 0; i < POINTS; i++) {
            double y = radius * StrictMath.sin(2 * StrictMath.PI * i / POINTS);
            if (StrictMath.hypot(y, edge) > inner + 2 * proof.tolerance()) {
                fault(
                        hole,
                        "the full diameter through the wall, Z " + proof.text(deep) + " or lower",
                        "Z " + proof.text(hole.bottom()) + ", its edge at Z " + proof.text(edge)
                                + " is still in the wall");
                return;
            }
        }
    }

    private void offTheFarWall(DrilledHole hole) {
        double radius = cutter.asDrilled().max() / 2;
        double pilot = StrictMath.min(PILOT_RADIUS, radius);
        for (int i = 0; i < POINTS; i++) {
            double sine = StrictMath.sin(2 * StrictMath.PI * i / POINTS);
            if (meets(radius * sine, hole.bottom() + cutter.lead()) || meets(pilot * sine, hole.bottom())) {
                fault(hole, "the cutter off the far wall", "Z " + proof.text(hole.bottom()) + " meets it");
                return;
            }
        }
    }

    private boolean meets(double y, double z) {
        return z < 0
                && StrictMath.hypot(y, z) >= inner - proof.settings().work().outOfRound() / 2;
    }

    /** In front of the jaw face with its whole width. */
    private void offTheJaws(DrilledHole hole) {
        double side = hole.at().x() - cutter.asDrilled().max() / 2;
        if (side < -2 * proof.tolerance()) {
            fault(hole, "the side of the cutter in front of the jaw face", "X " + proof.text(side));
        }
    }

    private void inTheWall(DrilledHole hole) {
        double crown = proof.settings().work().body().outerRadius();
        if (!(hole.bottom() < crown && hole.bottom() > inner)) {
            fault(hole, "a dimple in the wall", "Z " + proof.text(hole.bottom()));
        }
    }

    private void inTheAir(Event.Stroke stroke) {
        double least = proof.highestCrown() + proof.machine().travel().clearGap();
        if (stroke.to().z() < least - proof.tolerance()) {
            faults.add(new Fault(
                    stroke.line(),
                    "an air cut at Z " + proof.text(least) + " or higher",
                    "Z " + proof.text(stroke.to().z())));
        }
    }

    private void fault(DrilledHole hole, String expected, String found) {
        faults.add(new Fault(hole.line(), expected, found));
    }
}
