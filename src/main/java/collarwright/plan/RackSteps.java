package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import java.util.List;
import java.util.OptionalDouble;

/** What the steps between the cutters of a rack come to as angles in one collar. */
final class RackSteps {

    private RackSteps() {}

    /**
     * Finds the widest step from a hole of a plan to the next larger cutter that there is.
     *
     * @param plan a plan whose holes have cutters
     * @return an angle; 0 where no hole has a larger cutter
     */
    static double widest(Plan plan) {
        CollarBody body = plan.job().hub().body();
        Interval strut = plan.job().strut().stock().od();
        List<Cutter> rack = plan.job().drilling().cutters();
        return plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .distinct()
                .mapToDouble(hole -> step(hole, body, strut, rack).orElse(0))
                .max()
                .orElse(0);
    }

    private static OptionalDouble step(Hole hole, CollarBody body, Interval strut, List<Cutter> rack) {
        HoleNeed need = new HoleNeed(body, strut, hole.neededLean());
        double now = HoleSize.limit(need, hole.cutter());
        return rack.stream()
                .filter(c -> c.asDrilled().nominal() > hole.diameter()
                        && c.asDrilled().max() < 2 * body.leastInnerRadius())
                .mapToDouble(c -> HoleSize.limit(need, c) - now)
                .min();
    }
}
