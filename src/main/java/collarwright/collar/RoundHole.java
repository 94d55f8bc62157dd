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
 * <p>Accuracy: the returned angle is within 1e-12 rad of the root of the formula.
 */
public final class RoundHole {

    private static final int MOST_STEPS = 60;
    private static final double STEP_END = 1e-15;

    private RoundHole() {}

    /**
     * Finds the tilt limit.
     *
     * @param strut strut diameter d, above 0
     * @param hole hole diameter D, at least d and below twice the inner radius
     * @param inner inner radius Ri of the collar
     * @param outer outer radius Ro of the collar, above Ri
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
        double tau = (hole - strut) / (wall + StrictMath.sqrt(wall * wall + hole * hole - strut * strut));
        if (tau <= 0 || onMidPlane(tau, r, p, inner)) {
            return 2 * StrictMath.atan(StrictMath.max(tau, 0));
        }
        return 2 * StrictMath.atan(bindOffMidPlane(tau, new double[] {r, p, inner, outer}));
    }

    /**
     * Finds the least hole that lets a strut lean as far as it needs to.
     *
     * @param strut strut diameter d, above 0
     * @param lean the lean that is needed, in [0, π/2)
     * @param inner inner radius Ri of the collar
     * @param outer outer radius Ro of the collar, above Ri
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
            p = growOffMidPlane(p, s, c, new double[] {r, inner, outer});
        }
        return p < inner ? 2 * p : Double.POSITIVE_INFINITY;
    }

    private static void check(double strut, double inner, double outer) {
        if (!(strut > 0 && inner > strut / 2 && outer > inner && outer < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("strut " + strut + " in a collar of radii " + inner + ", " + outer);
        }
    }

    private static boolean onMidPlane(double tau, double r, double p, double inner) {
        double k = 1 + tau * tau;
        return r * ((1 - tau * tau) * inner + 2 * tau * p) <= k * p * inner;
    }

    // Newton's rule on u + l over τ = tan(θ/2), from above; u + l falls and is concave in θ, so no step overshoots.
    private static double bindOffMidPlane(double start, double[] size) {
        double r = size[0];
        double p = size[1];
        double inner = size[2];
        double tau = start;
        double edge = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double k = 1 / (1 + tau * tau);
            double s = 2 * tau * k;
            double c = (1 - tau * tau) * k;
            edge = innerContact(edge, s, c, new double[] {inner * inner - r * r, p * p - r * r, r});
            double axial = StrictMath.sqrt(inner * inner - r * r + edge * edge);
            double rim = StrictMath.sqrt(p * p - r * r + edge * edge);
            double gap = (axial - size[3]) * s + (rim + p) * c - edge - r;
            double slope = ((axial - size[3]) * c - (rim + p) * s) * 2 * k;
            double next = tau - gap / slope;
            if (StrictMath.abs(next - tau) <= STEP_END) {
                return StrictMath.max(next, 0);
            }
            tau = next;
        }
        return StrictMath.max(tau, 0);
    }

    private static double growOffMidPlane(double start, double s, double c, double[] size) {
        double r = size[0];
        double inner = size[1];
        double p = start;
        double edge = 0;
        for (int step = 0; step < MOST_STEPS && p < inner; step++) {
            edge = innerContact(edge, s, c, new double[] {inner * inner - r * r, p * p - r * r, r});
            double axial = StrictMath.sqrt(inner * inner - r * r + edge * edge);
            double rim = StrictMath.sqrt(p * p - r * r + edge * edge);
            double gap = (axial - size[2]) * s + (rim + p) * c - edge - r;
            double next = p - gap / (c * (p / rim + 1));
            if (StrictMath.abs(next - p) <= STEP_END * p) {
                return next;
            }
            p = next;
        }
        return p;
    }

    /**
     * Where the strut touches the inner rim: e = √(r² − y²) with {@code 1/e = sin θ/√(Ri² − y²) + cos θ/√(p² − y²)}, or e =
     * r when that lies on the mid-plane. {@code 1 − e·(…)} falls and is convex in e, so Newton's rule from the left never
     * passes the root.
     */
    private static double innerContact(double guess, double s, double c, double[] squares) {
        double r = squares[2];
        double left = 1 / (s / StrictMath.sqrt(squares[0]) + c / StrictMath.sqrt(squares[1]));
        double e = guess > left ? guess : left;
        for (int step = 0; step < MOST_STEPS; step++) {
            double axial = squares[0] + e * e;
            double rim = squares[1] + e * e;
            double a = s / StrictMath.sqrt(axial);
            double b = c / StrictMath.sqrt(rim);
            double rest = 1 - e * (a + b);
            double slope = -(a * squares[0] / axial + b * squares[1] / rim);
            double next = StrictMath.max(left, e - rest / slope);
            if (next >= r && rest > 0) {
                return r;
            }
            if (StrictMath.abs(next - e) <= 1e-14 * r) {
                return StrictMath.min(next, r);
            }
            e = next;
        }
        return StrictMath.min(e, r);
    }
}
