package collarwright.tooling;

import collarwright.collar.CollarBody;
import java.util.Comparator;
import java.util.Optional;

/**
 * The size of a hole and the reason for it.
 *
 * @param need what it has to fit
 * @param required least diameter for the thickest strut and wall, sharp rims; infinite if no hole does
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
        double required = required(need);
        Comparator<Cutter> order = Comparator.comparingDouble(
                        (Cutter c) -> c.asDrilled().nominal())
                .thenComparing(Cutter::id);
        Optional<Cutter> cutter = drilling.cutters().stream()
                .filter(c -> fits(need, required, c, drilling))
                .min(
                        drilling.fit() == Fit.REACH
                                ? order
                                : Comparator.comparingDouble((Cutter c) -> StrictMath.abs(limit(need, c) - need.lean()))
                                        .thenComparing(order));
        return new HoleSize(need, required, cutter);
    }

    /** Least diameter for the thickest strut and wall, sharp rims; infinite if no hole does. */
    static double required(HoleNeed need) {
        CollarBody body = need.body();
        return body.required(need.strut().max(), need.lean(), body.wall().max());
    }

    /** The least hole under {@link Fit#REACH}: one that also lets a strut which hardly leans in by hand. */
    static double reaching(HoleNeed need, double required, DrillingSettings drilling) {
        return StrictMath.max(required, easy(need, drilling));
    }

    private static double easy(HoleNeed need, DrillingSettings drilling) {
        return need.strut().max() + drilling.leastClearance();
    }

    // Narrower than the bore, and under reach wide enough for the worst case; under nearest wide enough for the
    // thickest
    // strut to go in, and short of the need by no more than the band.
    static boolean fits(HoleNeed need, double required, Cutter cutter, DrillingSettings drilling) {
        if (required == Double.POSITIVE_INFINITY
                || cutter.asDrilled().max() >= 2 * need.body().leastInnerRadius()) {
            return false;
        }
        double least = cutter.asDrilled().min();
        return drilling.fit() == Fit.REACH
                ? least >= reaching(need, required, drilling)
                : least >= easy(need, drilling) && limit(need, cutter) >= need.lean() - drilling.nearestBand();
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
                        need.body().wall().nominal());
    }

    /**
     * Finds where the tightest case binds.
     *
     * @return the lean for the thickest strut, the smallest hole and the thickest wall
     */
    public double tightestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().max(), chosen().asDrilled().min(), body.wall().max());
    }

    /**
     * Finds where the loosest case binds.
     *
     * @return the lean for the thinnest strut, the largest hole and the thinnest wall
     */
    public double loosestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().min(), chosen().asDrilled().max(), body.wall().min());
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
