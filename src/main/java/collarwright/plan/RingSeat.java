package collarwright.plan;

import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.strut.StrutLayout;

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
     * @param type the hub
     * @param struts the struts with their setbacks
     * @param midRadius radius of the middle of the collar's wall
     * @param strut largest strut diameter
     * @return the seat
     */
    public static RingSeat of(HubType type, StrutLayout struts, double midRadius, double strut) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (HubStrut at : type.struts()) {
            double angle = at.axialAngle();
            double setback = struts.types().get(at.strutType()).end(at.tip()).setback();
            double centre = midRadius * StrictMath.tan(angle) - setback * StrictMath.sin(angle);
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
