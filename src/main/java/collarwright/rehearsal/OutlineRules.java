package collarwright.rehearsal;

import collarwright.machining.Operation;
import collarwright.machining.TubeCutter;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds the outline of a hole, as the text cuts it, against the round cylinder that has to pass.
 *
 * <p>Other than where the outline is made, points are laid on the cylinder in space, all through the wall; each is seen from
 * the axis, which gives a place on the unrolled outside. What the cut takes away is the inside of the track and half a kerf
 * on either side of it. Every point has to lie in it, and no point of its edge further out than {@value #WIDE} mm beyond
 * those on the bore.
 */
final class OutlineRules {

    /** What a hole may be too small: rounding only. */
    private static final double SMALL = 0.001;

    /** What it may be too wide. Our choice, no source. */
    static final double WIDE = 0.05;

    private static final int ROUND = 180;
    private static final int DEEP = 3;

    private final Proof proof;
    private final TubeCutter tube;
    private final TubeStay stay;
    private final Operation.Contour hole;
    private final double outer;
    private final List<Fault> faults = new ArrayList<>();

    private OutlineRules(Proof proof, TubeStay stay, Operation.Contour hole) {
        this.proof = proof;
        this.tube = proof.machine().tube().orElseThrow();
        this.stay = stay;
        this.hole = hole;
        this.outer = proof.settings().work().body().outerRadius();
    }

    static List<Fault> check(Proof proof, TubeStay stay, Operation.Contour hole) {
        OutlineRules rules = new OutlineRules(proof, stay, hole);
        rules.check();
        return List.copyOf(rules.faults);
    }

    private void check() {
        List<Track.Spot> spots =
                stay.track().stream().map(p -> spot(p.x(), p.a())).toList();
        int end = closes(spots);
        if (end < 4) {
            fault("an outline that closes", "it ends where it did not begin");
            return;
        }
        Track loop = new Track(spots.subList(1, end + 1));
        leadIn(spots.get(0), loop);
        overcut(spots.subList(end, spots.size()), loop);
        passes(loop);
    }

    /** From the hole's planned axis: along X, and round the outside. */
    private Track.Spot spot(double x, double angleDegrees) {
        double turn = angleDegrees - hole.place().angleDegrees();
        return new Track.Spot(x - hole.place().x(), Angles.radians(turn) * outer);
    }

    /** The first point after the lead-in that is where the outline began; 0 if none is. */
    private int closes(List<Track.Spot> spots) {
        double slack = 2 * proof.tolerance() + Angles.radians(proof.angleStepDegrees()) * outer;
        for (int i = 4; i < spots.size(); i++) {
            if (spots.get(i).to(spots.get(1)) <= slack) {
                return i;
            }
        }
        return 0;
    }

    private void leadIn(Track.Spot pierce, Track loop) {
        double least = StrictMath.min(tube.start().leadIn(), (hole.diameter() - 2 * tube.kerf()) / 2) / 2;
        double found = -loop.outside(pierce);
        if (!(found >= least)) {
            fault(
                    "it pierces in the waste, " + mm(least) + " or more from the outline",
                    found < 0 ? mm(-found) + " outside" : mm(found));
        }
    }

    private void overcut(List<Track.Spot> rest, Track loop) {
        double way = 0;
        double off = 0;
        for (int i = 1; i < rest.size(); i++) {
            way += rest.get(i - 1).to(rest.get(i));
            off = StrictMath.max(off, loop.near(rest.get(i)));
        }
        if (!(off <= WIDE)) {
            fault("the overcut along the outline", mm(off) + " off it");
        }
        if (!(StrictMath.abs(way - tube.start().overcut()) <= WIDE)) {
            fault("an overcut of " + mm(tube.start().overcut()), mm(way));
        }
    }

    private void passes(Track loop) {
        double bore = proof.settings().work().body().leastInnerRadius();
        double narrow = 0;
        double wide = 0;
        List<Track.Spot> inner = new ArrayList<>();
        for (int layer = 0; layer < DEEP; layer++) {
            double radius = bore + (outer - bore) * layer / (DEEP - 1);
            for (int i = 0; i < ROUND; i++) {
                Track.Spot seen = seen(radius, 2 * StrictMath.PI * i / ROUND);
                narrow = StrictMath.max(narrow, loop.outside(seen) - tube.kerf() / 2);
                if (layer == 0) {
                    inner.add(seen);
                }
            }
        }
        Track trace = new Track(inner);
        for (Track.Spot spot : loop.spots()) {
            wide = StrictMath.max(wide, trace.outside(spot) + tube.kerf() / 2);
        }
        if (!(narrow <= SMALL)) {
            fault(
                    "hole " + hole.hole() + " wide enough for " + mm(hole.diameter()) + " all through the wall",
                    mm(narrow) + " too narrow somewhere");
        }
        if (!(wide <= WIDE)) {
            fault(
                    "hole " + hole.hole() + " of " + mm(hole.diameter()) + " inside, no more than " + mm(WIDE)
                            + " wider",
                    mm(wide) + " too wide somewhere");
        }
    }

    /** A point of the cylinder on the pipe's radius r, seen from the axis on the unrolled outside. */
    private Track.Spot seen(double radius, double round) {
        double across = hole.diameter() / 2 * StrictMath.sin(round);
        double up = StrictMath.sqrt(radius * radius - across * across);
        return new Track.Spot(hole.diameter() / 2 * StrictMath.cos(round), StrictMath.atan2(across, up) * outer);
    }

    private static String mm(double length) {
        return Double.isFinite(length) ? Decimals.fixed(length, 3) + " mm" : "nowhere stated";
    }

    private void fault(String expected, String found) {
        faults.add(new Fault(
                stay.line(), "collar " + hole.place().collar() + ", hole " + hole.hole() + ": " + expected, found));
    }
}
