package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.FrameSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Finds hubs that stand nearer to each other than a collar is wide. */
final class HubSpacing {

    private final Dome dome;
    private final double radius;
    private final double least;
    private final boolean drawn;
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    private HubSpacing(Dome dome, double radius, double least) {
        this.dome = dome;
        this.radius = radius;
        this.least = least;
        this.drawn = dome.source() instanceof FrameSettings;
    }

    /**
     * Looks for collars that meet.
     *
     * @param frame the frame
     * @param radius mm of its unit
     * @param collar outside diameter
     * @return a stop with the nearest pair; empty if there is none
     */
    static Optional<Finding> of(Framing frame, double radius, double collar) {
        Dome dome = frame.hubs().dome();
        // The nearest nodes of a whole net on a sphere are joined, and its strut types stand shortest first.
        boolean apart = dome.onSphere() && frame.shell().strutShapes().get(0).chordFactor() * radius >= collar;
        return apart ? Optional.empty() : new HubSpacing(dome, radius, collar).look();
    }

    private Optional<Finding> look() {
        int pairs = 0;
        double nearest = Double.POSITIVE_INFINITY;
        String who = "";
        for (int node = 0; node < dome.nodeCount(); node++) {
            for (int other : around(node)) {
                double apart = dome.node(node).minus(dome.node(other)).norm() * radius;
                pairs += apart < least ? 1 : 0;
                // What is nearer by rounding alone is as near; the first pair is told.
                if (apart < least && apart < nearest * (1 - 1e-9)) {
                    nearest = apart;
                    who = "hubs " + dome.nodeId(other) + " and " + dome.nodeId(node);
                }
            }
            cells.computeIfAbsent(
                            key(cell(dome.x(node)), cell(dome.y(node)), cell(dome.z(node))), k -> new ArrayList<>(2))
                    .add(node);
        }
        return pairs == 0
                ? Optional.empty()
                : Optional.of(Finding.stop(
                        Code.HUB_SPACING,
                        new Where.Part(who + (pairs > 1 ? " and " + (pairs - 1) + " more pairs" : "")),
                        "nodes further apart than a collar is wide, " + Decimals.fixed(least, 1) + " mm",
                        Decimals.fixed(nearest, 1) + " mm",
                        drawn
                                ? "check the unit that the file was read in: frame-unit"
                                : "make the dome larger or its frequency lower",
                        "or take a narrower collar pipe"));
    }

    private Set<Integer> around(int node) {
        Set<Integer> found = new TreeSet<>();
        for (int i = 0; i < 27; i++) {
            long key = key(
                    cell(dome.x(node)) + i / 9 - 1, cell(dome.y(node)) + i / 3 % 3 - 1, cell(dome.z(node)) + i % 3 - 1);
            found.addAll(cells.getOrDefault(key, List.of()));
        }
        return found;
    }

    private long cell(double coordinate) {
        return (long) StrictMath.floor(coordinate * radius / least);
    }

    private static long key(long x, long y, long z) {
        return (x * 73_856_093L) ^ ((y * 19_349_663L) << 20) ^ ((z * 83_492_791L) << 40);
    }
}
