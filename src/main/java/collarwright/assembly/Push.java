package collarwright.assembly;

/**
 * How far a strut can be pushed into its collar beyond its seat, and what it meets first.
 *
 * @param travel along the strut; positive infinity where it meets nothing
 * @param met what it meets
 * @param hole the hole of the strut that it meets, from 0; −1 if it meets something else
 */
public record Push(double travel, Met met, int hole) {

    /** What a strut meets. */
    public enum Met {
        /** Nothing: it comes out above or below the collar. */
        NOTHING,
        /** Another strut. */
        STRUT,
        /** The centre ring. */
        RING,
        /** The collar's wall across from its hole. */
        WALL
    }

    static Push ringOut(HubTravel hub, int hole) {
        HubTravel.HoleTravel at = hub.holes().get(hole);
        Push first = at.wall() < Double.POSITIVE_INFINITY
                ? new Push(at.wall(), Met.WALL, -1)
                : new Push(Double.POSITIVE_INFINITY, Met.NOTHING, -1);
        for (int other = 0; other < hub.holes().size(); other++) {
            // Two neighbours as near as each other: the one with the lower number, whatever rounding says.
            if (at.past().get(other) < first.travel() - Joint.SAME) {
                first = new Push(at.past().get(other), Met.STRUT, other);
            }
        }
        return first;
    }

    static Push ringIn(HubTravel hub, int hole) {
        Push out = ringOut(hub, hole);
        double ring = hub.holes().get(hole).ring();
        return ring <= out.travel() ? new Push(ring, Met.RING, -1) : out;
    }
}
