package collarwright.tooling;

import collarwright.collar.CollarBody;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A collar's wall opened out flat, to be cut and drilled before it is rolled.
 *
 * <p>Frame: origin at the lower left corner, outer face toward the reader, TOP up; x along the strip, y toward TOP. Azimuth
 * (clockwise from above) grows to the left. The strip keeps its length in the middle of the wall: girth π (OD − wall),
 * holes at their azimuths on that line. The ends meet in the middle of the widest web; a gap or a lap is shared by both.
 *
 * <p>Accuracy: that the middle keeps its length holds for bends whose radius is some ten walls or more; for tighter ones the
 * line that does moves inward by a few hundredths of the wall (common practice, no source): roll one strip and measure it.
 *
 * @param pattern the pattern's id
 * @param made strips of the whole order with spares
 * @param body the collar when it is rolled
 * @param joint how the ends meet
 * @param seam azimuth of the joint, clockwise from above, from the 0° line, in [0, 2π)
 * @param holes in the order of their numbers
 */
public record FlatStrip(
        String pattern, int made, CollarBody body, StripJoint joint, double seam, List<FlatHole> holes) {

    private static final double TURN = 2 * StrictMath.PI;

    /** Keeps the list and checks the count. */
    public FlatStrip {
        holes = List.copyOf(holes);
        if (made < 1 || holes.isEmpty()) {
            throw new IllegalArgumentException(pattern + ": a strip is made and has holes");
        }
    }

    /**
     * A hole on the strip.
     *
     * @param hole the hole of the pattern
     * @param x along the strip
     * @param y across it
     */
    public record FlatHole(Hole hole, double x, double y) {

        /**
         * Returns its radius as it is cut.
         *
         * @return half the as-drilled diameter
         */
        public double radius() {
            return hole.diameter() / 2;
        }
    }

    /**
     * Opens a pattern out.
     *
     * @param pattern the holes
     * @param made strips to make
     * @param body the collar
     * @param joint how the ends meet
     * @return the strip
     */
    public static FlatStrip of(Pattern pattern, int made, CollarBody body, StripJoint joint) {
        double seam = seam(pattern, body.midRadius());
        List<FlatHole> holes = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            double turn = (seam - hole.azimuth() + TURN) % TURN;
            holes.add(
                    new FlatHole(hole, turn * body.midRadius() + joint.added() / 2, body.width() / 2 + hole.height()));
        }
        return new FlatStrip(pattern.id(), made, body, joint, seam, holes);
    }

    /** The middle of the widest web on the neutral line; of alike ones the first clockwise from the 0° line. */
    private static double seam(Pattern pattern, double radius) {
        List<Hole> holes = pattern.holes().stream()
                .sorted(Comparator.comparingDouble(Hole::azimuth))
                .toList();
        double best = 0;
        double widest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < holes.size(); i++) {
            Hole a = holes.get(i);
            Hole b = holes.get((i + 1) % holes.size());
            double to = b.azimuth() > a.azimuth() ? b.azimuth() : b.azimuth() + TURN;
            double low = a.azimuth() + a.diameter() / 2 / radius;
            double high = to - b.diameter() / 2 / radius;
            if (high - low > widest + 1e-9) {
                widest = high - low;
                best = (low + high) / 2 % TURN;
            }
        }
        return best;
    }

    /**
     * Returns the length to cut.
     *
     * @return girth on the neutral line with the joint
     */
    public double length() {
        return TURN * body.midRadius() + joint.added();
    }

    /**
     * Returns where an azimuth lies.
     *
     * @param azimuth clockwise from above, from the 0° line
     * @return x from the left end
     */
    public double at(double azimuth) {
        return (((seam - azimuth) % TURN + TURN) % TURN) * body.midRadius() + joint.added() / 2;
    }

    /**
     * Returns the least distance of a hole's edge from an end of the strip, or from the end of the other layer where the
     * ends lap.
     *
     * @return below 0 if a hole is cut by the end or covered by the lap
     */
    public double endWeb() {
        double least = Double.POSITIVE_INFINITY;
        for (FlatHole h : holes) {
            double end = StrictMath.min(h.x(), length() - h.x());
            least = StrictMath.min(least, end - h.radius() - joint.covered());
        }
        return least;
    }
}
