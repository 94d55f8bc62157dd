package collarwright.plan;

import collarwright.collar.NodeOffset;
import java.util.List;

/**
 * How the parts of a hub stand to each other when it is put together. Heights count along the hub's axis, + away from the
 * dome's centre.
 *
 * @param collar how far the collar's mid-plane sits below (toward the dome's centre from) the node, the mean over its
 *     struts, and how far apart the points are where the struts' axes meet the hub's axis
 * @param ring where the strut ends stand against the centre ring, from the collar's mid-plane
 */
public record HubSeat(NodeOffset collar, RingSeat ring) {

    /**
     * Finds it for all hub types.
     *
     * @param plan the plan
     * @return how the parts of each stand, by hub type
     */
    public static List<HubSeat> all(Plan plan) {
        double strut = plan.job().strut().stock().od().max();
        return HubPart.all(plan.hubs(), plan.struts(), plan.book(), plan.job().hub()).stream()
                .map(hub -> new HubSeat(hub.offset(), RingSeat.of(hub, strut)))
                .toList();
    }

    /**
     * Finds it for a hub type.
     *
     * @param plan the plan
     * @param hubType index of the hub type
     * @return how its parts stand
     */
    public static HubSeat of(Plan plan, int hubType) {
        return all(plan).get(hubType);
    }
}
