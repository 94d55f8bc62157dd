package collarwright.dome;

import java.util.List;
import java.util.Optional;

/**
 * A place where the frame is left open.
 *
 * @param nodes ids of hubs that are left out with their struts
 * @param struts struts that are left out, by the ids of their hubs
 * @param box a doorway; every strut that comes into it is left out
 * @param added struts that close the rim, by the ids of their hubs
 * @param corners ids of hubs that may have fewer than three struts
 */
public record Opening(
        List<String> nodes, List<Between> struts, Optional<Box> box, List<Between> added, List<String> corners) {

    /** Keeps the lists. */
    public Opening {
        nodes = List.copyOf(nodes);
        struts = List.copyOf(struts);
        added = List.copyOf(added);
        corners = List.copyOf(corners);
    }

    /**
     * A strut by its two hubs.
     *
     * @param first a node's id
     * @param second the other node's id
     */
    public record Between(String first, String second) {
        /**
         * Names it.
         *
         * @return such as {@code T3-02/T4-03}
         */
        public String text() {
            return first + "/" + second;
        }
    }

    /**
     * A doorway: upright walls, from the dome's axis outward, from the lowest node up.
     *
     * @param width clear width, above 0
     * @param height above the lowest node, above 0
     * @param azimuth of its middle, clockwise from above, from the +x meridian
     */
    public record Box(double width, double height, double azimuth) {}
}
