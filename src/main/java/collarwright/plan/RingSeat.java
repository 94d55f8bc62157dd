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
     * @param hub the hub on its pattern
     * @param strut largest strut diameter
     * @return the seat
     */
    static RingSeat of(HubPart hub, double strut) {
        double midRadius = hub.settings().body().midRadius();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < hub.size(); i++) {
            double angle = hub.axialAngle(i);
            double centre =
                    hub.heights().get(i) + midRadius * StrictMath.tan(angle) - hub.setback(i) * StrictMath.sin(angle);
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
