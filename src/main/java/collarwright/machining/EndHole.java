package collarwright.machining;

import collarwright.hub.StrutTip;

/**
 * A tie hole as the machine drills it: through the strut's axis and all the way.
 *
 * @param tip which end of the strut it belongs to
 * @param x X from the stop
 * @param bottom Z of the drill's point at full depth
 * @param turn by how much the strut is turned before it, clockwise as seen from the stop; 0 for not at all
 */
public record EndHole(StrutTip tip, double x, double bottom, double turn) {

    /**
     * Returns its name for people.
     *
     * @return {@code hole at E1} or {@code hole at E2}
     */
    public String title() {
        return tip == StrutTip.A ? "hole at E1" : "hole at E2";
    }
}
