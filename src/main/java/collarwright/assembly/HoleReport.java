package collarwright.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a person has to know of one hole to put its strut in.
 *
 * @param needed how far the other end of its strut has to be pushed into the other collar so that this end can enter here
 * @param toEnter how far its strut has to be pushed in here so that the other end can enter there; the most over all hubs of
 *     the type
 * @param ringOut how far it can be, with all neighbours seated and the centre ring out
 * @param ringIn the same with the ring in
 * @param waiting the fewest neighbours that have to wait until the strut is in, if it is to be pushed in here: holes from 0
 * @param bow how it would have to bow to be pushed in here with all neighbours seated; empty if it need not
 */
public record HoleReport(
        double needed, double toEnter, Push ringOut, Push ringIn, List<Integer> waiting, Optional<Bow> bow) {

    /** Keeps the list. */
    public HoleReport {
        waiting = List.copyOf(waiting);
    }

    /**
     * Works it out.
     *
     * @param hub the hub
     * @param hole the hole, from 0
     * @param toEnter how far its strut has to be pushed in
     * @param strut the shortest of its struts, not yet shortened
     * @return the report
     */
    static HoleReport of(HubTravel hub, int hole, double toEnter, Bow strut) {
        HubTravel.HoleTravel at = hub.holes().get(hole);
        double least = toEnter - Joint.SAME;
        List<Integer> waiting = new ArrayList<>();
        for (int other = 0; other < hub.holes().size(); other++) {
            // Each neighbour limits the push alone, so those that do are the fewest that have to wait.
            if (at.past().get(other) < least) {
                waiting.add(other);
            }
        }
        Push out = Push.ringOut(hub, hole);
        Optional<Bow> bow = out.travel() < least
                ? Optional.of(new Bow(strut.diameter(), strut.length(), toEnter - out.travel()))
                : Optional.empty();
        return new HoleReport(at.needed(), toEnter, out, Push.ringIn(hub, hole), waiting, bow);
    }

    /**
     * Tells whether the strut can be pushed in here with all its neighbours seated.
     *
     * @return true if the ring is all that has to wait
     */
    public boolean enough() {
        return bow.isEmpty();
    }
}
