package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import collarwright.geometry.Vec3;
import java.util.function.DoubleFunction;

/**
 * A way for a strut to lean further and further: toward one bearing, or in tilt while it keeps its swing.
 *
 * @param at where the strut points after leaning so far
 * @param start how far it leans where it passes best
 * @param most how far it may lean at most
 */
record LeanPath(DoubleFunction<Direction> at, double start, double most) {

    /**
     * Leans from the radial line toward a bearing.
     *
     * @param hole the hole
     * @param wall the collar's wall
     * @param bearing which way
     * @return the path; it starts where it comes nearest to the hole's own axis
     */
    static LeanPath toward(Aperture hole, Wall wall, double bearing) {
        Vec3 axis = hole.axis().line();
        double toward = axis.y() * StrictMath.sin(bearing) - axis.z() * StrictMath.cos(bearing);
        double start = StrictMath.max(0, StrictMath.atan2(toward, axis.x()));
        return new LeanPath(lean -> Direction.leaning(lean, bearing), start, hole.mostLean(wall));
    }

    /**
     * Leans from the hole's own axis.
     *
     * @param hole the hole
     * @param wall the collar's wall
     * @param bearing which way, about that axis
     * @return the path
     */
    static LeanPath away(Aperture hole, Wall wall, double bearing) {
        Direction axis = hole.axis();
        // Both ends of the path stay this far from where outlines fold over.
        double most = StrictMath.max(0, hole.mostLean(wall) - axis.lean());
        return new LeanPath(lean -> axis.away(lean, bearing), 0, most);
    }

    /**
     * Tilts while the swing stays.
     *
     * @param hole the hole
     * @param wall the collar's wall
     * @param swing the swing
     * @return the path
     */
    static LeanPath tilting(Aperture hole, Wall wall, double swing) {
        double most = StrictMath.acos(StrictMath.min(1, StrictMath.cos(hole.mostLean(wall)) / StrictMath.cos(swing)));
        double start = StrictMath.min(hole.axis().tilt(), most);
        return new LeanPath(tilt -> new Direction(tilt, swing), start, most);
    }
}
