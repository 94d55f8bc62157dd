package collarwright.plan;

/**
 * Where the strut ends of a hub stand against the centre ring.
 *
 * @param low lowest point of the end faces above the collar's mid-plane
 * @param high highest point
 */
public record RingSeat(double low, double high) {

    /**
     * Finds it.
     *
     * @param part the hub
     * @param strut largest strut diameter
     * @return the seat
     */
    static RingSeat of(HubPart part, double strut) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double mid = part.settings().body().midRadius();
        for (int hole = 0; hole < part.size(); hole++) {
            double angle = part.axialAngle(hole);
            double centre = mid * StrictMath.tan(angle) - part.setback(hole) * StrictMath.sin(angle);
            double half = strut / 2 * StrictMath.cos(angle);
            low = StrictMath.min(low, centre - half);
            high = StrictMath.max(high, centre + half);
        }
        return new RingSeat(low, high);
    }

    /**
     * Returns the width a ring needs to cover every end face.
     *
     * @return mm
     */
    public double width() {
        return high - low;
    }

    /**
     * Returns where the middle of the ring belongs.
     *
     * @return above the collar's mid-plane
     */
    public double middle() {
        return (low + high) / 2;
    }
}
