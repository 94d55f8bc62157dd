package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The main sizes of a dome. Frame: origin at the sphere's centre, +z through the apex; all sizes are to nodes (where the
 * strut axes meet) unless they say otherwise.
 *
 * @param radius centre to node, horizontal; empty for a frame from outside
 * @param floorDiameter twice the largest horizontal distance of a foot node from the dome's axis; empty for a whole sphere and for a
 *     frame from outside
 * @param height highest node to lowest node, along the dome's axis
 * @param highestNodeZ z of the highest node
 * @param lowestNodeZ z of the lowest node
 * @param lowestCollarPointZ z of the lowest point of any collar: what has to stay above the ground
 */
public record DomeMeasures(
        OptionalDouble radius,
        OptionalDouble floorDiameter,
        double height,
        double highestNodeZ,
        double lowestNodeZ,
        double lowestCollarPointZ) {

    /**
     * Measures a dome.
     *
     * @param plan the plan
     * @return its sizes
     */
    public static DomeMeasures of(Plan plan) {
        double radius = plan.struts().radius();
        Dome dome = plan.hubs().dome();
        double foot = dome.footRadius();
        boolean generated = dome.source() instanceof DomeSettings;
        return new DomeMeasures(
                generated ? OptionalDouble.of(radius) : OptionalDouble.empty(),
                foot == 0 || !generated ? OptionalDouble.empty() : OptionalDouble.of(2 * radius * foot),
                radius * (dome.highestZ() - dome.lowestZ()),
                radius * dome.highestZ(),
                radius * dome.lowestZ(),
                lowestCollarPoints(plan).stream().min(Double::compare).orElseThrow());
    }

    /**
     * Tells how far the lowest point of any collar lies below the lowest node.
     *
     * @return mm, above 0
     */
    public double collarBelowLowestNode() {
        return lowestNodeZ - lowestCollarPointZ;
    }

    /**
     * Finds the lowest point of the collars of each hub type, over all nodes that have one.
     *
     * @param plan the plan
     * @return z from the sphere's centre, by hub type
     */
    public static List<Double> lowestCollarPoints(Plan plan) {
        Hubs hubs = plan.hubs();
        CollarBody body = plan.job().hub().body();
        double radius = plan.struts().radius();
        List<Double> offsets =
                HubSeat.all(plan).stream().map(seat -> seat.collar().mean()).toList();
        List<Double> lowest = new ArrayList<>(Collections.nCopies(offsets.size(), Double.POSITIVE_INFINITY));
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            double up = hubs.dome().axis(node).z();
            // A collar is a cylinder about the hub's axis: its lowest point is half its width along the axis and one
            // outer radius across it below its centre.
            double across = StrictMath.sqrt(StrictMath.max(0, 1 - up * up));
            double centre = radius * hubs.dome().z(node) - offsets.get(type) * up;
            double point = centre - body.width() / 2 * StrictMath.abs(up) - body.outerRadius() * across;
            lowest.set(type, StrictMath.min(lowest.get(type), point));
        }
        return List.copyOf(lowest);
    }
}
