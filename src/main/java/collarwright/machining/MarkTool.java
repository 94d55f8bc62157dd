package collarwright.machining;

import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.List;

/**
 * The drill that sets the dimples of the 0° line and of TOP.
 *
 * <p>Collars that are drilled on the stick have no template to take these marks from.
 *
 * @param cutter a small twist drill or a centre drill
 * @param depth depth of a dimple below the nominal crown
 */
public record MarkTool(Cutter cutter, double depth) {
    /** The depth that is asked for; our choice, no source. */
    private static final double DEPTH = 1;

    /** Checks the depth. */
    public MarkTool {
        if (!(depth > 0)) {
            throw new IllegalArgumentException("a dimple has a depth");
        }
    }

    /**
     * A 3 mm twist drill with a 118° point, one millimetre deep.
     *
     * <p>Point length 0.3004 of the diameter: half the diameter over the tangent of half the point angle.
     *
     * @return the usual mark tool; our choice, no source
     */
    public static MarkTool standard() {
        Interval size = Interval.of(3);
        double lead = 1.5 / StrictMath.tan(59 * StrictMath.PI / 180);
        return new MarkTool(
                new Cutter("MARK-3", CutterKind.TWIST, "3 mm", 3, size, false, lead, 30, 100, 12000, "mark"), DEPTH);
    }

    /**
     * Takes the mark tool from the shop's own cutters.
     *
     * @param cutters the shop's cutters
     * @return the smallest twist drill of 2 to 6 mm, or the standard one if there is none
     */
    public static MarkTool from(List<Cutter> cutters) {
        Cutter best = standard().cutter();
        boolean own = false;
        for (Cutter c : cutters) {
            boolean fits = c.kind() == CutterKind.TWIST && c.size() >= 2 && c.size() <= 6;
            if (fits && (!own || c.size() < best.size())) {
                best = c;
                own = true;
            }
        }
        return new MarkTool(best, DEPTH);
    }
}
