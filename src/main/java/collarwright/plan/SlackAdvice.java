package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Direction;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.tooling.Cutter;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.Hole;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Says why a hole leaves a strut too much slack and what cures it: the steps of the rack, a limit on the number of cutters
 * that leaves a better one out, or the spread of strut and wall, which no cutter cures.
 */
final class SlackAdvice {

    private final CollarBody body;
    private final Interval strut;
    private final DrillingSettings drilling;
    private final double most;

    SlackAdvice(CollarBody body, Job job) {
        this.body = body;
        this.strut = job.strut().stock().od();
        this.drilling = job.drilling();
        this.most = job.limits().slackWarn();
    }

    /**
     * Advises.
     *
     * @param hole a hole with too much slack
     * @return what to do, the best first
     */
    List<String> of(Hole hole) {
        double easy = strut.max() + drilling.leastClearance();
        double least = drilling.fit() == Fit.REACH ? StrictMath.max(hole.required(), easy) : easy;
        List<String> hints = new ArrayList<>();
        double tightest = StrictMath.max(hole.required(), strut.max());
        if (slack(hole, tightest) > most) {
            hints.add("narrow the spread of strut (" + limits(strut) + ") and bearing wall (" + limits(body.bearing())
                    + "): even a hole of exactly " + mm(tightest) + ", the least for the thickest, leaves "
                    + degrees(slack(hole, tightest)) + ", so no cutter cures it; measure more closely, or sort the"
                    + " struts with bins");
        } else if (easy > tightest && slack(hole, easy) > most) {
            hints.add("make least-clearance smaller: even a hole of exactly " + mm(easy) + " leaves "
                    + degrees(slack(hole, easy)) + ", and the strut needs only " + mm(tightest));
        }
        leftOut(hole, least)
                .ifPresent(c -> hints.add("the rack has " + c.kind().title() + " " + c.marked() + ", which leaves "
                        + degrees(slack(hole, c.asDrilled().nominal()))
                        + ": write a larger most-cutters than "
                        + drilling.mostCutters().orElseThrow()));
        if (hints.isEmpty()) {
            hints.add("add a cutter nearer to " + mm(StrictMath.max(hole.required(), easy)) + " to the rack");
        }
        hints.add("or take a thicker collar wall: the same steps of the rack then mean fewer degrees");
        return hints;
    }

    // A cutter that would serve this hole better, but was not among the few.
    private Optional<Cutter> leftOut(Hole hole, double least) {
        return drilling.mostCutters().isEmpty()
                ? Optional.empty()
                : drilling.cutters().stream()
                        .filter(c -> c.asDrilled().min() >= least
                                && c.asDrilled().nominal() < hole.diameter()
                                && slack(hole, c.asDrilled().nominal()) >= 0)
                        .min(Comparator.comparingDouble(c -> c.asDrilled().nominal()));
    }

    // Of a nominal strut in a hole of another size.
    private double slack(Hole hole, double diameter) {
        double tilt =
                StrictMath.acos(StrictMath.min(1, StrictMath.cos(hole.neededLean()) / StrictMath.cos(hole.swing())));
        return body.tiltLimit(strut.nominal(), diameter, body.bearing().nominal(), new Direction(tilt, hole.swing()))
                - hole.neededLean();
    }

    private static String limits(Interval size) {
        return Decimals.fixed(size.min(), 2) + " to " + mm(size.max());
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 2) + " mm";
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
