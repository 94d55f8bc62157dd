package collarwright.assembly;

import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Some struts of a frame, as the hub types and holes that they join, to try them in hubs of other sizes.
 *
 * @param joins each different one once
 */
public record RoomFor(List<Join> joins) {

    /** Keeps the list. */
    public RoomFor {
        joins = List.copyOf(joins);
    }

    /**
     * Two holes that a strut joins.
     *
     * @param typeA hub type at its end a
     * @param holeA hole there, from 0
     * @param typeB hub type at its end b
     * @param holeB hole there, from 0
     */
    public record Join(int typeA, int holeA, int typeB, int holeB) implements Comparable<Join> {
        @Override
        public int compareTo(Join o) {
            int first = Integer.compare(typeA * 16 + holeA, o.typeA * 16 + o.holeA);
            return first == 0 ? Integer.compare(typeB * 16 + holeB, o.typeB * 16 + o.holeB) : first;
        }
    }

    /**
     * Collects the joins of some members.
     *
     * @param hubs the frame
     * @param members member indexes
     * @return their joins
     */
    public static RoomFor of(Hubs hubs, List<Integer> members) {
        TreeSet<Join> joins = new TreeSet<>();
        for (int m : members) {
            joins.add(new Join(
                    hubs.typeOf(hubs.nodeAtA(m)),
                    hubs.holeAtA(m) - 1,
                    hubs.typeOf(hubs.nodeAtB(m)),
                    hubs.holeAtB(m) - 1));
        }
        return new RoomFor(new ArrayList<>(joins));
    }

    /**
     * Tells whether all these struts can be pushed in at one end with all their neighbours seated and the rings out.
     *
     * @param fittings by hub type
     * @return true if they can
     */
    public boolean enough(List<Fitting> fittings) {
        Map<Integer, HubTravel> known = new HashMap<>();
        for (Join join : joins) {
            HubTravel a =
                    known.computeIfAbsent(join.typeA(), t -> fittings.get(t).travel());
            HubTravel b =
                    known.computeIfAbsent(join.typeB(), t -> fittings.get(t).travel());
            if (Joint.of(a, join.holeA(), b, join.holeB(), 1).margin() < -Joint.SAME) {
                return false;
            }
        }
        return true;
    }
}
