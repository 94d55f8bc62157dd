package collarwright.collar;

/** How far a strut reaches through the inner rim of its hole. */
public final class Engagement {

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
     * A strut as far as its hole is concerned.
     *
     * @param axialAngle its axial angle
     * @param setback from the node to its cut end
     */
    public record Strut(double axialAngle, double setback) {}
}
