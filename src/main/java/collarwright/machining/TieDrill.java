package collarwright.machining;

import collarwright.geometry.Interval;
import collarwright.strut.TieHole;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.units.Decimals;
import java.util.Comparator;
import java.util.List;

/** Finds the drill for the tie holes. */
public final class TieDrill {

    /** A drill this near to the hole's size is that size: our choice, no source. */
    private static final double SAME = 0.05;

    private TieDrill() {}

    /**
     * Takes the drill from the shop's own cutters.
     *
     * @param hole the tie hole
     * @param cutters the shop's cutters
     * @return its twist drill of the hole's size, the deepest if there are several; else a drill of just this size with a
     *     118° point and no stated length, which the shop has to find
     */
    public static Cutter from(TieHole hole, List<Cutter> cutters) {
        return cutters.stream()
                .filter(c -> c.kind() == CutterKind.TWIST)
                .filter(c -> StrictMath.abs(c.size() - hole.diameter()) <= SAME)
                .max(Comparator.comparingDouble(Cutter::depth).thenComparing(Cutter::id))
                .orElseGet(() -> wanted(hole.diameter()));
    }

    /** The point's length is half the diameter over the tangent of half the point angle. */
    private static Cutter wanted(double size) {
        double lead = size / 2 / StrictMath.tan(59 * StrictMath.PI / 180);
        String marked = Decimals.trimmed(size, 2);
        return new Cutter(
                "TW-" + marked,
                CutterKind.TWIST,
                marked + " mm",
                size,
                Interval.of(size),
                false,
                lead,
                Double.MAX_VALUE,
                30,
                12000,
                "wanted");
    }
}
