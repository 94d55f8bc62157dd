package collarwright.tooling;

import collarwright.collar.CollarBody;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The size of a hole and the reason for it.
 *
 * @param need what it has to fit
 * @param required least diameter for the thickest strut and bearing wall; infinite if no hole does
 * @param cutter the chosen cutter; empty if none fits
 */
public record HoleSize(HoleNeed need, double required, Optional<Cutter> cutter) {

    /**
     * Chooses the cutter for a hole.
     *
     * @param need what the hole has to fit
     * @param drilling the cutters and the rule of choice
     * @return the size, with no cutter if none fits, or if no hole at all lets the thickest strut reach its angle
     */
    public static HoleSize choose(HoleNeed need, DrillingSettings drilling) {
        CollarBody body = need.body();
        double required =
                body.required(need.strut().max(), need.lean(), body.bearing().max());
        if (required == Double.POSITIVE_INFINITY) {
            return new HoleSize(need, required, Optional.empty());
        }
        double easy = need.strut().max() + drilling.leastClearance();
        Optional<Cutter> cutter = drilling.fit() == Fit.REACH
                ? reach(StrictMath.max(required, easy), body, drilling.cutters())
                : nearest(need, drilling);
        return new HoleSize(need, required, cutter);
    }

    private static Optional<Cutter> reach(double required, CollarBody body, List<Cutter> cutters) {
        return cutters.stream()
                .filter(c -> c.asDrilled().min() >= required && passes(c, body))
                .min(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id));
    }

    private static boolean passes(Cutter cutter, CollarBody body) {
        return cutter.asDrilled().max() < 2 * body.leastInnerRadius();
    }

    // Nearest in angle; short of the need by no more than the band, and wide enough for the thickest
    // strut to go in.
    private static Optional<Cutter> nearest(HoleNeed need, DrillingSettings drilling) {
        return drilling.cutters().stream()
                .filter(c ->
                        c.asDrilled().min() >= need.strut().max() + drilling.leastClearance() && passes(c, need.body()))
                .filter(c -> limit(need, c) >= need.lean() - drilling.nearestBand())
                .min(Comparator.comparingDouble((Cutter c) -> StrictMath.abs(limit(need, c) - need.lean()))
                        .thenComparing(c -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id));
    }

    /**
     * Finds the tilt limit of a hole with nominal sizes.
     *
     * @param need what the hole has to fit
     * @param cutter its cutter, at least as wide as the strut and narrower than the bore
     * @return the lean at which a nominal strut binds in the nominal hole and wall
     */
    public static double limit(HoleNeed need, Cutter cutter) {
        return need.body()
                .tiltLimit(
                        need.strut().nominal(),
                        cutter.asDrilled().nominal(),
                        need.body().bearing().nominal());
    }

    /**
     * Finds where the tightest case binds.
     *
     * @return the lean for the thickest strut, the smallest hole and the thickest wall
     */
    public double tightestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().max(), chosen().asDrilled().min(), body.bearing().max());
    }

    /**
     * Finds where the loosest case binds.
     *
     * @return the lean for the thinnest strut, the largest hole and the thinnest wall
     */
    public double loosestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().min(), chosen().asDrilled().max(), body.bearing().min());
    }

    private Cutter chosen() {
        return cutter.orElseThrow(() -> new IllegalStateException("no cutter fits"));
    }

    /**
     * Makes the hole.
     *
     * @param number hole number, from 1
     * @param azimuth from the 0° line, clockwise from above
     * @return the hole, on the mid-plane
     */
    public Hole at(int number, double azimuth) {
        return new Hole(
                number,
                azimuth,
                0,
                need.lean(),
                required,
                chosen(),
                limit(need, chosen()),
                tightestLimit(),
                loosestLimit());
    }
}
