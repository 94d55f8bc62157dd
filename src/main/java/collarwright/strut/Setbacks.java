package collarwright.strut;

/** How far from its node a strut has to end. */
public final class Setbacks {

    private Setbacks() {}

    /**
     * The setback that keeps an end face clear of the centre ring: {@code s = (ρ + gap + (d/2)·sin|θ|) / cos θ}, so that
     * the nearest point of the square end face keeps the gap.
     *
     * @param ringRadius outside radius ρ of the centre ring
     * @param gap least distance from the ring
     * @param strut largest strut diameter d
     * @param axialAngle θ
     * @return along the strut, from the node to the cut end
     */
    public static double clearOfRing(double ringRadius, double gap, double strut, double axialAngle) {
        double sine = StrictMath.abs(StrictMath.sin(axialAngle));
        return (ringRadius + gap + strut / 2 * sine) / StrictMath.cos(axialAngle);
    }

    /**
     * The setback at which two neighbouring ends touch: {@code (d/2) / tan β} with {@code cos 2β = sin θi·sin θj + cos θi·cos
     * θj·cos δ}. Exact for equal angles, up to 0.6 mm on the safe side otherwise.
     *
     * @param strut largest strut diameter d
     * @param first axial angle θi
     * @param second axial angle θj
     * @param gap azimuth from one to the other, δ
     * @return the least setback of the nearer of the two ends; 0 where they point apart
     */
    public static double clearOfNeighbour(double strut, double first, double second, double gap) {
        double cosine = StrictMath.sin(first) * StrictMath.sin(second)
                + StrictMath.cos(first) * StrictMath.cos(second) * StrictMath.cos(gap);
        double half = StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, cosine))) / 2;
        return strut / 2 / StrictMath.tan(half);
    }
}
