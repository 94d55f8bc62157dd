package collarwright.assembly;

/**
 * All struts that join the same holes of the same hub types, as far as putting them in is concerned.
 *
 * @param a the end a
 * @param b the end b
 * @param length between the cut ends
 */
record Joint(End a, End b, double length) {

    /** Travels that differ by less are the same. */
    static final double SAME = 1e-6;

    /**
     * A push into the collar at one end.
     *
     * @param hub the hub type there
     * @param hole the hole there
     * @param travel how far it has to go so that the other end can enter
     */
    record End(HubTravel hub, int hole, double travel) {

        // What is left of the travel with these holes filled; the strut's own does not count.
        double margin(int seated) {
            return hub.available(hole, seated & ~(1 << hole)) - travel;
        }

        boolean free(int seated) {
            return margin(seated) >= -SAME;
        }
    }

    static Joint of(HubTravel first, int firstHole, HubTravel second, int secondHole, double length) {
        return new Joint(
                new End(first, firstHole, second.holes().get(secondHole).needed()),
                new End(second, secondHole, first.holes().get(firstHole).needed()),
                length);
    }

    /** What is left of the travel at the better end with all neighbours seated. */
    double margin() {
        return StrictMath.max(a.margin(a.hub().all()), b.margin(b.hub().all()));
    }
}
