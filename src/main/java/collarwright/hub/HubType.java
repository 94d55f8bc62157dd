package collarwright.hub;

import java.util.List;

/**
 * All hubs that are equal up to a turn about their axis; a mirror image is another type.
 *
 * @param struts in the order of their hole numbers, the first on the 0° line
 * @param count how many hubs of the type the dome has
 * @param firstNode the first node of the type
 */
public record HubType(List<HubStrut> struts, int count, int firstNode) {
    /** Keeps the struts. */
    public HubType {
        struts = List.copyOf(struts);
    }

    /**
     * Returns the gap from a hole to the next one clockwise.
     *
     * @param hole index from 0
     * @return angle in (0, 2π]
     */
    public double gapAfter(int hole) {
        double from = struts.get(hole).azimuth();
        return hole + 1 < struts.size() ? struts.get(hole + 1).azimuth() - from : 2 * StrictMath.PI - from;
    }
}
