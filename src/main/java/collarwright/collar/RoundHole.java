package collarwright.collar;

/**
 * A round strut in a round hole that is drilled radially through a collar's curved wall: where it binds, and how large
 * the hole must be. Lean in the plane of the collar's axis.
 *
 * <p>With r = d/2 and p = D/2, over 0 ≤ y ≤ r (y along the collar's circumference), the strut at lean θ keeps clear of the
 * inner rim above by {@code u = min [√(Ri² − y²)·sin θ + cos θ·√(p² − y²) − √(r² − y²)]} and of the outer rim below by
 * {@code l = −Ro·sin θ + cos θ·p − r} (its least is always at y = 0). The strut binds where u + l = 0: it can move up or
 * down by what one rim leaves until the other rim stops it.
 *
 * <p>While {@code cos θ/p + sin θ/Ri ≤ 1/r} the inner contact is at y = 0 too, and the answer is that of a rod through a
 * board, {@code D = d/cos θ + t·tan θ} (Mathematics Central, University of Regina, question QQ.09.18, for a flat board).
 * Otherwise the inner rim touches beside the mid-plane and the strut binds earlier. Sharp rims, rigid parts.
 *
 * <p>Inner and outer radius may be equal: a wall that bears on one edge only, as thin as can be. On a wide collar the limit
 * is then {@code arccos(d/D)}, the form that ignores the wall.
 *
 * <p>Accuracy: the returned angle is within 1e-12 rad of the root of the formula, as long as the strut is thicker than a
 * thousandth of the bore; within 1e-10 rad otherwise.
 */
public final class RoundHole {

    private static final int MOST_STEPS = 60;
    private static final double STEP_END = 1e-15;
    private static final double TOUCH_END = 1e-10;
    private static final double LEAST_SIZE = 1e-100;
    private static final double MOST_SIZE = 1e100;
    /** In a hole as wide as its strut the contact has no place to start from; in one this much wider it has. */
    private static final double WIDER = 1 + 4e-16;

    private RoundHole() {}

    /**
     * Finds the tilt limit.
     *
     * @param strut strut diameter d, at least 1e-100
     * @param hole hole diameter D, at least d and below twice the inner radius
     * @param inner inner radius Ri of the collar
     * @param outer outer radius Ro of the collar, Ri or above, at most 1e100
     * @return the lean at which the strut binds, in [0, π/2)
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static double tiltLimit(double strut, double hole, double inner, double outer) {
        check(strut, inner, outer);
        if (!(hole >= strut && hole < 2 * inner)) {
            throw new IllegalArgumentException("hole " + hole + " for strut " + strut + " in bore " + 2 * inner);
        }
        double r = strut / 2;
        double p = hole / 2;
        double wall = outer - inner;
        // Half-angle tangent of the flat-board answer: exact while the contact is on the mid-plane, else an upper
        // bound.
        double tau = hole > strut ? (hole - strut) / (wall + StrictMath.sqrt(squares(wall, hole, strut))) : 0;
        if (tau <= 0 || onMidPlane(tau, r, p, inner)) {
            return 2 * StrictMath.atan(StrictMath.max(tau, 0));
        }
        return 2 * StrictMath.atan(bindOffMidPlane(tau, new Rims(r, p, inner, outer)));
    }

    /**
     * Finds the least hole that lets a strut lean as far as it needs to.
     *
     * @param strut strut diameter d, at least 1e-100
     * @param lean the lean that is needed, in [0, π/2)
     * @param inner inner radius Ri of the collar
     * @param outer outer radius Ro of the collar, Ri or above, at most 1e100
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static double required(double strut, double lean, double inner, double outer) {
        check(strut, inner, outer);
        if (!(lean >= 0 && lean < StrictMath.PI / 2)) {
            throw new IllegalArgumentException("lean " + lean);
        }
        double r = strut / 2;
        double s = StrictMath.sin(lean);
        double c = StrictMath.cos(lean);
        double p = (strut / c + (outer - inner) * s / c) / 2;
        if (p < inner && c / p + s / inner > 1 / r) {
            p = growOffMidPlane(new Rims(r, StrictMath.max(p, r * WIDER), inner, outer), s, c);
        }
        return p < inner ? 2 * p : Double.POSITIVE_INFINITY;
    }

    private static void check(double strut, double inner, double outer) {
        if (!(strut >= LEAST_SIZE && inner > strut / 2 && outer >= inner && outer <= MOST_SIZE)) {
            throw new IllegalArgumentException("strut " + strut + " in a collar of radii " + inner + ", " + outer);
        }
    }

    // Without a wall the difference of the squares stands alone and has to be exact.
    private static double squares(double wall, double hole, double strut) {
        return wall > 0 ? wall * wall + hole * hole - strut * strut : (hole - strut) * (hole + strut);
    }

    private static boolean onMidPlane(double tau, double r, double p, double inner) {
        double k = 1 + tau * tau;
        return r * ((1 - tau * tau) * inner + 2 * tau * p) <= k * p * inner;
    }

    // Newton's rule on u + l over τ = tan(θ/2), from above; u + l falls and is concave in θ, so no step overshoots.
    private static double bindOffMidPlane(double start, Rims rims) {
        double tau = start;
        double touch = rims.midPlane();
        for (int step = 0; step < MOST_STEPS; step++) {
            double k = 1 / (1 + tau * tau);
            double s = 2 * tau * k;
            double c = (1 - tau * tau) * k;
            touch = rims.touch(touch, s, c);
            double slope = ((rims.axial(touch) - rims.outer) * c - (rims.rim(touch) + rims.p) * s) * 2 * k;
            double next = tau - rims.gap(touch, s, c) / slope;
            if (StrictMath.abs(next - tau) <= STEP_END) {
                return StrictMath.max(next, 0);
            }
            tau = next;
        }
        return StrictMath.max(tau, 0);
    }

    // The same over p; what the rims leave grows with the hole.
    private static double growOffMidPlane(Rims start, double s, double c) {
        Rims rims = start;
        double touch = rims.midPlane();
        for (int step = 0; step < MOST_STEPS && rims.p < rims.inner; step++) {
            touch = rims.touch(touch, s, c);
            double next = rims.p - rims.gap(touch, s, c) / (c * (rims.p / rims.rim(touch) + 1));
            if (StrictMath.abs(next - rims.p) <= STEP_END * rims.p) {
                return next;
            }
            rims = new Rims(rims.r, next, rims.inner, rims.outer);
        }
        return rims.p;
    }

    /**
     * Both rims of a hole and the strut in it. A place on a rim is told by {@code x = 1/(r² − y²)}.
     *
     * @param r half the strut
     * @param p half the hole
     * @param inner inner radius of the collar
     * @param outer outer radius of the collar
     */
    private record Rims(double r, double p, double inner, double outer) {

        double midPlane() {
            return 1 / (r * r);
        }

        double wide() {
            return (inner - r) * (inner + r);
        }

        double narrow() {
            return (p - r) * (p + r);
        }

        double axial(double x) {
            return StrictMath.sqrt(wide() + 1 / x);
        }

        double rim(double x) {
            return StrictMath.sqrt(narrow() + 1 / x);
        }

        // u + l for a contact at x.
        double gap(double x, double s, double c) {
            return (axial(x) - outer) * s + (rim(x) + p) * c - 1 / StrictMath.sqrt(x) - r;
        }

        /**
         * Where the strut touches the inner rim: the root of {@code sin θ/√(1 + x·(Ri² − r²)) + cos θ/√(1 + x·(p² − r²)) = 1},
         * or the mid-plane where there is none beside it. The left side falls and is convex in x: Newton's rule climbs to
         * the root without passing it, and from beyond comes back before it in one step.
         */
        double touch(double guess, double s, double c) {
            double wide = wide();
            double narrow = narrow();
            double x = guess;
            for (int step = 0; step < MOST_STEPS; step++) {
                double a = s / StrictMath.sqrt(1 + x * wide);
                double b = c / StrictMath.sqrt(1 + x * narrow);
                double slope = (a * wide / (1 + x * wide) + b * narrow / (1 + x * narrow)) / 2;
                double next = StrictMath.max(midPlane(), x + (a + b - 1) / slope);
                // The least is flat there: the gap is exact to the square of what x is off.
                if (StrictMath.abs(next - x) <= TOUCH_END * x) {
                    return next;
                }
                x = next;
            }
            return x;
        }
    }
}
