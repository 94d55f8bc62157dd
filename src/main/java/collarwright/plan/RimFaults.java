package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.Role;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.frame.Crossings;
import collarwright.frame.FrameNet;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Finds struts added to a rim that run into other struts away from a hub. */
final class RimFaults {

    /** So many are told one by one. */
    private static final int TOLD = 20;

    private RimFaults() {}

    /**
     * Looks for them.
     *
     * @param dome the whole frame
     * @param radius mm of its unit
     * @param strut largest outside diameter
     * @return a stop for each pair
     */
    static List<Finding> of(Dome dome, double radius, double strut) {
        List<Finding> findings = new ArrayList<>();
        boolean[] rim = new boolean[dome.memberCount()];
        for (int m = 0; m < rim.length; m++) {
            rim[m] = dome.role(m) == Role.RIM;
        }
        if (IntStream.range(0, rim.length).anyMatch(m -> rim[m])) {
            Crossings.each(net(dome, radius), m -> rim[m], strut, (first, second, apart) -> {
                if (findings.size() < TOLD) {
                    findings.add(stop(dome, rim[first] ? first : second, rim[first] ? second : first, strut, apart));
                }
            });
        }
        return findings;
    }

    private static Finding stop(Dome dome, int added, int other, double strut, double apart) {
        return Finding.stop(
                Code.DOME_OPENING,
                new Where.Part("added strut " + named(dome, added)),
                "a strut that meets others at its hubs only, and passes them by its thickness, "
                        + Decimals.fixed(strut, 2) + " mm",
                "its axis comes within " + Decimals.fixed(apart, 2) + " mm of strut " + named(dome, other),
                "join other hubs with add, or leave one of the two out");
    }

    private static String named(Dome dome, int member) {
        return dome.nodeId(dome.memberA(member)) + "/" + dome.nodeId(dome.memberB(member));
    }

    private static FrameNet net(Dome dome, double radius) {
        double[] coordinates = new double[3 * dome.nodeCount()];
        for (int node = 0; node < dome.nodeCount(); node++) {
            coordinates[3 * node] = dome.x(node) * radius;
            coordinates[3 * node + 1] = dome.y(node) * radius;
            coordinates[3 * node + 2] = dome.z(node) * radius;
        }
        int[] members = new int[2 * dome.memberCount()];
        for (int m = 0; m < dome.memberCount(); m++) {
            members[2 * m] = dome.memberA(m);
            members[2 * m + 1] = dome.memberB(m);
        }
        return new FrameNet(coordinates, members);
    }
}
