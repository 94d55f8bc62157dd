package collarwright.tooling;

import collarwright.collar.CollarBody;
import java.util.Comparator;
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
        return choose(need, need.required(), drilling);
    }

    /**
     * Chooses the cutter for a hole that several struts use.
     *
     * @param need of the strut that leans furthest
     * @param required least diameter that lets all of them reach their angles
     * @param drilling the cutters and the rule of choice
     * @return the size
     */
    static HoleSize choose(HoleNeed need, double required, DrillingSettings drilling) {
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
        Optional<Cutter> bored = bored(need, required, drilling);
        return new HoleSize(
                need,
                required,
                drilling.boring().rule() == Boring.Rule.ALWAYS ? bored.or(() -> cutter) : cutter.or(() -> bored));
    }

    /** The least hole under {@link Fit#REACH}: one that also lets a strut which hardly leans in by hand. */
    static double reaching(HoleNeed need, double required, DrillingSettings drilling) {
        return StrictMath.max(required, easy(need, drilling));
    }

    /** The least hole that the rule of choice takes, bored to a hundredth. */
    private static Optional<Cutter> bored(HoleNeed need, double required, DrillingSettings drilling) {
        if (!drilling.boring().possible() || required == Double.POSITIVE_INFINITY) {
            return Optional.empty();
        }
        CollarBody body = need.body();
        double exact = drilling.fit() == Fit.REACH
                ? reaching(need, required, drilling)
                : StrictMath.max(
                        easy(need, drilling),
                        body.required(
                                need.strut().nominal(),
                                need.toward(),
                                body.bearing().nominal()));
        double inner = body.leastInnerRadius();
        double half = StrictMath.min(exact / 2, inner);
        double depth = body.outerRadius() - StrictMath.sqrt(inner * inner - half * half);
        return drilling.boring().cutter(exact, depth).filter(c -> fits(need, required, c, drilling));
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
                        need.body().bearing().nominal(),
                        need.toward());
    }

    /**
     * Finds where the tightest case binds.
     *
     * @return the lean for the thickest strut, the smallest hole and the thickest wall
     */
    public double tightestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().max(), chosen().asDrilled().min(), body.bearing().max(), need.toward());
    }

    /**
     * Finds where the loosest case binds.
     *
     * @return the lean for the thinnest strut, the largest hole and the thinnest wall
     */
    public double loosestLimit() {
        CollarBody body = need.body();
        return body.tiltLimit(
                need.strut().min(), chosen().asDrilled().max(), body.bearing().min(), need.toward());
    }

    private Cutter chosen() {
        return cutter.orElseThrow(() -> new IllegalStateException("no cutter fits"));
    }

    /**
     * Finds how the tilt limit answers to the sizes.
     *
     * @return spread and slopes at nominal sizes
     */
    public Tolerance tolerance() {
        CollarBody body = need.body();
        Sizes nominal = new Sizes(
                need.strut().nominal(),
                chosen().asDrilled().nominal(),
                body.bearing().nominal());
        double strut = limit(nominal.strut(need.strut().min()))
                - limit(nominal.strut(need.strut().max()));
        double hole = limit(nominal.hole(chosen().asDrilled().max()))
                - limit(nominal.hole(chosen().asDrilled().min()));
        double wall = limit(nominal.wall(body.bearing().min()))
                - limit(nominal.wall(body.bearing().max()));
        double spread = StrictMath.sqrt(strut * strut + hole * hole + wall * wall) / 2;
        return new Tolerance(
                spread,
                slope(nominal, nominal.hole(nominal.hole() + Tolerance.STEP)),
                slope(nominal, nominal.strut(nominal.strut() + Tolerance.STEP)),
                slope(nominal, nominal.wall(nominal.wall() + Tolerance.STEP)));
    }

    private record Sizes(double strut, double hole, double wall) {
        Sizes strut(double other) {
            return new Sizes(other, hole, wall);
        }

        Sizes hole(double other) {
            return new Sizes(strut, other, wall);
        }

        Sizes wall(double other) {
            return new Sizes(strut, hole, other);
        }

        // Half way to other sizes, or the other way where the whole way leads out of what can be.
        Sizes toward(Sizes other, double share) {
            return new Sizes(
                    strut + share * (other.strut - strut),
                    hole + share * (other.hole - hole),
                    wall + share * (other.wall - wall));
        }
    }

    // Over the step centred on the nominal sizes, or as much of it as the strut still passes and the hole lies in the
    // bore.
    private double slope(Sizes nominal, Sizes stepped) {
        double above = possible(nominal, stepped, 0.5);
        double below = possible(nominal, stepped, -0.5);
        double span = above - below;
        return span > 0 ? (limit(nominal.toward(stepped, above)) - limit(nominal.toward(stepped, below))) / span : 0;
    }

    private double possible(Sizes nominal, Sizes stepped, double whole) {
        double share = whole;
        for (int halving = 0; halving < 20; halving++) {
            Sizes at = nominal.toward(stepped, share);
            if (at.strut > 0
                    && at.strut <= at.hole
                    && at.wall >= 0
                    && (need.body().rims() == 0 || at.wall > 2 * need.body().rims())
                    && at.hole < 2 * need.body().leastInnerRadius()) {
                return share;
            }
            share /= 2;
        }
        return 0;
    }

    private double limit(Sizes sizes) {
        return need.body().tiltLimit(sizes.strut, sizes.hole, sizes.wall, need.toward());
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
                need.toward().swing(),
                limit(need, chosen()),
                tightestLimit(),
                loosestLimit(),
                tolerance());
    }
}
