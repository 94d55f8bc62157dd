package collarwright.assembly;

import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether and how a frame goes together.
 *
 * @param fittings what it was worked out from, by hub type
 * @param travels how far struts can be pushed, by hub type
 * @param reports the same with what each strut needs, by hub type and its strut
 * @param tightest for each strut type, the least of what is left of the travel at the better end of any of its struts
 *     with all neighbours seated and all rings out
 * @param order an order in which the frame can be raised
 */
public record Assembly(
        List<Fitting> fittings,
        List<HubTravel> travels,
        List<List<HoleReport>> reports,
        List<Tightest> tightest,
        RaisingOrder order) {

    /** Keeps the lists. */
    public Assembly {
        fittings = List.copyOf(fittings);
        travels = List.copyOf(travels);
        reports = reports.stream().map(List::copyOf).toList();
        tightest = List.copyOf(tightest);
    }

    /**
     * The tightest strut of a type.
     *
     * @param strutType index of the strut type
     * @param travel how far it can be pushed in at its better end; positive infinity where nothing stops it
     * @param needed how far it has to be
     * @param hubType the hub type there
     * @param hole the hole there, from 0
     */
    public record Tightest(int strutType, double travel, double needed, int hubType, int hole) {
        double margin() {
            return travel - needed;
        }
    }

    /**
     * Works it out.
     *
     * @param hubs the frame
     * @param fittings by hub type
     * @param bending how far struts may bow
     * @return the result
     */
    public static Assembly of(Hubs hubs, List<Fitting> fittings, Bending bending) {
        List<HubTravel> travels = fittings.stream().map(Fitting::travel).toList();
        double[][] toEnter = new double[travels.size()][];
        for (int type = 0; type < toEnter.length; type++) {
            toEnter[type] = new double[travels.get(type).holes().size()];
        }
        for (int m = 0; m < hubs.dome().memberCount(); m++) {
            int typeA = hubs.typeOf(hubs.nodeAtA(m));
            int typeB = hubs.typeOf(hubs.nodeAtB(m));
            int holeA = hubs.holeAtA(m) - 1;
            int holeB = hubs.holeAtB(m) - 1;
            double needA = travels.get(typeA).holes().get(holeA).needed();
            double needB = travels.get(typeB).holes().get(holeB).needed();
            toEnter[typeA][holeA] = StrictMath.max(toEnter[typeA][holeA], needB);
            toEnter[typeB][holeB] = StrictMath.max(toEnter[typeB][holeB], needA);
        }
        List<List<HoleReport>> reports = new ArrayList<>();
        for (int type = 0; type < toEnter.length; type++) {
            List<HoleReport> holes = new ArrayList<>();
            for (int hole = 0; hole < toEnter[type].length; hole++) {
                HubStrut strut = hubs.types().get(type).struts().get(hole);
                Bow straight = new Bow(bending.diameter(), bending.lengths().get(strut.strutType()), 0);
                holes.add(HoleReport.of(travels.get(type), hole, toEnter[type][hole], straight));
            }
            reports.add(holes);
        }
        RaisingOrder order = RaisingOrder.of(hubs, travels, bending);
        return new Assembly(fittings, travels, reports, tightest(hubs, travels), order);
    }

    private static List<Tightest> tightest(Hubs hubs, List<HubTravel> travels) {
        Map<Integer, Tightest> found = new TreeMap<>();
        for (int m = 0; m < hubs.dome().memberCount(); m++) {
            Tightest a = end(hubs, travels, m, true);
            Tightest b = end(hubs, travels, m, false);
            Tightest better = a.margin() >= b.margin() - Joint.SAME ? a : b;
            Tightest least = found.get(better.strutType());
            if (least == null || better.margin() < least.margin() - Joint.SAME) {
                found.put(better.strutType(), better);
            }
        }
        return List.copyOf(found.values());
    }

    private static Tightest end(Hubs hubs, List<HubTravel> travels, int member, boolean a) {
        int near = hubs.typeOf(a ? hubs.nodeAtA(member) : hubs.nodeAtB(member));
        int far = hubs.typeOf(a ? hubs.nodeAtB(member) : hubs.nodeAtA(member));
        int hole = (a ? hubs.holeAtA(member) : hubs.holeAtB(member)) - 1;
        int farHole = (a ? hubs.holeAtB(member) : hubs.holeAtA(member)) - 1;
        HubTravel hub = travels.get(near);
        double travel = hub.available(hole, hub.all() & ~(1 << hole));
        double needed = travels.get(far).holes().get(farHole).needed();
        return new Tightest(hubs.strutTypeOf(member), travel, needed, near, hole);
    }
}
