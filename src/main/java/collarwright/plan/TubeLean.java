package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Direction;
import collarwright.collar.HoleContact;
import collarwright.collar.RadialCut;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a hole whose walls lie toward the collar's axis lets its strut lean as far as it needs, by the solver for holes of
 * any shape; its size was chosen for a drilled hole.
 */
final class TubeLean {

    /** What the two solvers may differ by: 0.001°. */
    private static final double SAME = 1.8e-5;

    private TubeLean() {}

    /** One finding for each kind of hole that comes short. */
    static List<Finding> check(Job job, List<Pattern> patterns) {
        List<Finding> findings = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        for (Pattern pattern : patterns) {
            for (Hole hole : pattern.holes()) {
                if (seen.add(List.of(hole.diameter(), hole.neededLean(), hole.swing()))) {
                    check(job, pattern, hole).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    private static Optional<Finding> check(Job job, Pattern pattern, Hole hole) {
        double wanted = StrictMath.min(hole.neededLean(), hole.tiltLimit());
        double limit = limit(job, hole);
        if (limit >= wanted - SAME) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                limit > 0 ? Level.WARN : Level.STOP,
                Code.HOLE_SHORT_OF_REACH,
                new Where.Part("pattern " + pattern.id() + " / hole " + hole.number()),
                "a lean of " + degrees(wanted) + ", as in a drilled hole, where the hole is cut toward the axis",
                limit > 0 ? degrees(limit) + " for a nominal strut" : "the strut does not pass",
                List.of("raise least-clearance under [drilling]: every hole is then cut wider", "or drill it")));
    }

    /** The lean at which a nominal strut binds in the needed direction; 0 where it does not pass. */
    static double limit(Job job, Hole hole) {
        CollarBody body = job.hub().body();
        double bearing = body.bearing().nominal();
        SwungContact.Wall wall = new SwungContact.Wall(body.innerRim(bearing), body.outerRim(bearing));
        RadialCut cut = new RadialCut(hole.diameter(), body.leastInnerRadius());
        double strut = job.strut().stock().od().nominal();
        if (strut >= hole.diameter() || !cut.goesThrough(wall)) {
            return 0;
        }
        return new HoleContact(cut, wall, StrutSection.round(strut), 0)
                .toward(bearing(hole))
                .map(HoleContact.Range::most)
                .orElse(0.0);
    }

    /** The way that the hole's strut leans, round the hole's axis: cos lean = cos tilt · cos swing. */
    private static double bearing(Hole hole) {
        double cosine = StrictMath.cos(hole.neededLean()) / StrictMath.cos(hole.swing());
        Direction needed = new Direction(StrictMath.acos(StrictMath.min(1, cosine)), hole.swing());
        return StrictMath.atan2(
                StrictMath.cos(needed.tilt()) * StrictMath.sin(needed.swing()), StrictMath.sin(needed.tilt()));
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
