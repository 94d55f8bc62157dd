package collarwright.collar;

/** How far a strut reaches through the inner rim of its hole. */
public final class Engagement {

    /** Places on the rim from which the nearest is searched. */
    private static final int STEPS = 48;

    private static final int THIRDS = 60;

    private Engagement() {}

    /**
     * Finds the least engagement: over the inner rim, the least of {@code x·cos θ − (z − H)·sin θ}, less the setback. H is
     * where the strut's axis meets the hub's axis, above the mid-plane. The rim's least point is neither its top nor its
     * side; it has a closed form, {@code p·sin φ = tan θ·√((Ri² − p²)/(1 − tan²θ))}, or the top where that lies beyond it.
     *
     * @param inner inner radius Ri
     * @param mid radius of the middle of the wall
     * @param hole hole diameter 2p, below 2·Ri
     * @param strut the strut's axial angle θ (only its size counts) and its setback
     * @return how far the strut's end stands inside the nearest point of the rim, negative if it does not reach it
     */
    public static double least(double inner, double mid, double hole, Strut strut) {
        double p = hole / 2;
        double lean = StrictMath.abs(strut.axialAngle());
        double s = StrictMath.sin(lean);
        double c = StrictMath.cos(lean);
        double k = s / c;
        double height = k >= 1 ? p : StrictMath.min(p, k * StrictMath.sqrt((inner * inner - p * p) / (1 - k * k)));
        double across = p * p - height * height;
        double x = StrictMath.sqrt(inner * inner - across);
        return x * c - (height - mid * k) * s - strut.setback();
    }

    /**
     * Finds the least engagement of a strut that points to the side as well: over the inner rim, the least of its distance
     * along the strut, from the strut's end.
     *
     * @param inner inner radius Ri
     * @param mid radius of the middle of the wall, where the strut's axis passes the hole's centre
     * @param hole hole diameter 2p, below 2·Ri
     * @param direction where the strut points
     * @param inside how far the strut's end stands back from the hole's centre
     * @return how far the strut's end stands inside the nearest point of the rim, negative if it does not reach it
     */
    public static double least(double inner, double mid, double hole, Direction direction, double inside) {
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        double step = 2 * StrictMath.PI / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double along = along(inner, mid, hole, direction, i * step);
            if (along < least) {
                least = along;
                at = i * step;
            }
        }
        double low = at - step;
        double high = at + step;
        for (int i = 0; i < THIRDS; i++) {
            double one = low + (high - low) / 3;
            double two = high - (high - low) / 3;
            if (along(inner, mid, hole, direction, one) < along(inner, mid, hole, direction, two)) {
                high = two;
            } else {
                low = one;
            }
        }
        return along(inner, mid, hole, direction, (low + high) / 2) + inside;
    }

    private static double along(double inner, double mid, double hole, Direction direction, double round) {
        double y = hole / 2 * StrictMath.sin(round);
        double z = hole / 2 * StrictMath.cos(round);
        double x = StrictMath.sqrt(inner * inner - y * y) - mid;
        double flat = x * StrictMath.cos(direction.swing()) + y * StrictMath.sin(direction.swing());
        return flat * StrictMath.cos(direction.tilt()) - z * StrictMath.sin(direction.tilt());
    }

    /**
     * A strut as far as its hole is concerned.
     *
     * @param axialAngle its axial angle
     * @param setback from the node to its cut end
     */
    public record Strut(double axialAngle, double setback) {}
}
