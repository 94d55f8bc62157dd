package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep a cutter goes to come through a curved wall at its full diameter.
 *
 * <p>Frame: Z0 on the rotary axis, the crown of the pipe at Z = outer radius. The cutting edge is through at Z = √(R² −
 * p²), R the least inner radius and p half the largest diameter it makes: lower than at the mid-plane, because the wall
 * falls away to the sides. Then overtravel. The cutter's lowest point is its lead below the edge. A far wall at Z =
 * −√(R² − y²) must not be met by the edge (y = p) nor by the point or pilot (y = its radius); between the two a conical
 * point is nearer to the axis than the straight line from one to the other, so both ends are enough.
 *
 * <p>Source: plane geometry of two crossing cylinders.
 *
 * @param edge Z of the cutting edge at full depth
 * @param bottom Z of the cutter's lowest point at full depth
 * @param cut how much cutting depth (flute or cup) the cutter needs, counted from the highest crown
 */
public record HoleDepth(double edge, double bottom, double cut) {

    /** Pilots of hole saws are 6 to 8 mm across: common practice, no source. */
    private static final double PILOT_RADIUS = 4;

    /**
     * Works out the depth of a cutter.
     *
     * @param work the pipe
     * @param cutter a cutter narrower than the pipe's bore
     * @param overtravel beyond the break-through
     * @return the depth
     * @throws IllegalArgumentException if the hole is as wide as the bore
     */
    public static HoleDepth of(Workpiece work, Cutter cutter, double overtravel) {
        double inner = work.body().leastInnerRadius();
        double radius = cutter.asDrilled().max() / 2;
        if (!(radius < inner)) {
            throw new IllegalArgumentException(cutter.id() + ": as wide as the bore");
        }
        double edge = StrictMath.sqrt(inner * inner - radius * radius) - overtravel;
        double crown = work.body().outerRadius() + work.outOfRound() / 2;
        return new HoleDepth(edge, edge - cutter.lead(), crown - edge);
    }

    /**
     * Checks that a cutter can make its hole.
     *
     * @param work the pipe
     * @param cutter the cutter
     * @param overtravel beyond the break-through
     * @return HOLE_TOO_WIDE, CUTTER_REACH and FAR_WALL stops; empty if all is well
     */
    public static List<Finding> check(Workpiece work, Cutter cutter, double overtravel) {
        Where where = new Where.Part("cutter " + cutter.id());
        double inner = work.body().leastInnerRadius();
        double radius = cutter.asDrilled().max() / 2;
        if (!(radius < inner)) {
            return List.of(Finding.stop(
                    Code.HOLE_TOO_WIDE,
                    where,
                    "a hole narrower than the pipe's bore, " + Sizes.both(2 * inner),
                    Sizes.both(2 * radius),
                    "use a larger pipe or a smaller hole"));
        }
        HoleDepth depth = of(work, cutter, overtravel);
        List<Finding> findings = new ArrayList<>();
        if (depth.cut() > cutter.depth()) {
            findings.add(Finding.stop(
                    Code.CUTTER_REACH,
                    where,
                    "a cutting depth of " + Sizes.both(depth.cut())
                            + " or more, from the crown to where the full diameter is through",
                    Sizes.both(cutter.depth()),
                    "use a deeper " + cutter.kind().title(),
                    "use a larger pipe, whose wall falls away less, or a thinner wall"));
        }
        double room = depth.room(inner, radius) - work.outOfRound() / 2;
        if (!(room > 0)) {
            findings.add(Finding.stop(
                    Code.FAR_WALL,
                    where,
                    "a cutter that ends above the far wall",
                    "it would reach " + Sizes.both(-room) + " into it",
                    "use a cutter with a shorter point or pilot",
                    "use a larger pipe or a smaller hole"));
        }
        return findings;
    }

    private double room(double inner, double radius) {
        double pilot = StrictMath.min(PILOT_RADIUS, radius);
        double atEdge = edge + StrictMath.sqrt(inner * inner - radius * radius);
        double atPoint = bottom + StrictMath.sqrt(inner * inner - pilot * pilot);
        return StrictMath.min(atEdge, atPoint);
    }
}
