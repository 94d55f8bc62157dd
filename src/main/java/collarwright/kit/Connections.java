package collarwright.kit;

import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import collarwright.hub.StrutTip;
import collarwright.plan.Plan;
import collarwright.tooling.Placement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which strut end goes into which hole, listed twice: by strut and by hub. The list by hub starts from the holes that each
 * hub type has struts for, so that it does not merely sort the other; both are held against each other.
 *
 * @param byStrut by member, end a first
 * @param byHub by node and hole
 */
public record Connections(List<Connection> byStrut, List<Connection> byHub) {

    /** Keeps the lists. */
    public Connections {
        byStrut = List.copyOf(byStrut);
        byHub = List.copyOf(byHub);
    }

    /**
     * Lists the connections of one dome.
     *
     * @param plan a plan with patterns
     * @return both lists, equal in what they hold
     * @throws IllegalStateException if they do not agree, which is a fault of the program
     */
    public static Connections of(Plan plan) {
        Hubs hubs = plan.hubs();
        List<Connection> byStrut = new ArrayList<>();
        for (int m = 0; m < hubs.dome().memberCount(); m++) {
            byStrut.add(new Connection(m, StrutTip.A, hubs.nodeAtA(m), plan.holeAtA(m)));
            byStrut.add(new Connection(m, StrutTip.B, hubs.nodeAtB(m), plan.holeAtB(m)));
        }
        return new Connections(byStrut, byHub(plan, byStrut));
    }

    private record Slot(int node, int hole) {}

    private static List<Connection> byHub(Plan plan, List<Connection> byStrut) {
        Map<Slot, Connection> taken = new HashMap<>();
        for (Connection end : byStrut) {
            if (taken.put(new Slot(end.node(), end.hole()), end) != null) {
                throw new IllegalStateException("two strut ends in one hole: " + end);
            }
        }
        Hubs hubs = plan.hubs();
        List<Connection> byHub = new ArrayList<>();
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            Placement placement = plan.placement(type);
            List<HubStrut> struts = hubs.types().get(type).struts();
            List<Connection> here = new ArrayList<>();
            for (int i = 0; i < struts.size(); i++) {
                Connection end = taken.remove(new Slot(node, placement.holes().get(i) + 1));
                if (end == null || !fits(plan, end, struts.get(i))) {
                    throw new IllegalStateException("no such strut end for node " + node + ", strut " + i);
                }
                here.add(end);
            }
            here.sort(Comparator.comparingInt(Connection::hole));
            byHub.addAll(here);
        }
        if (!taken.isEmpty()) {
            throw new IllegalStateException("strut ends in holes that their hub does not have: " + taken.values());
        }
        return byHub;
    }

    private static boolean fits(Plan plan, Connection end, HubStrut strut) {
        int type = plan.hubs().strutTypeOf(end.member());
        boolean alike = plan.struts().types().get(type).alike();
        return type == strut.strutType() && (alike || end.tip() == strut.tip());
    }
}
