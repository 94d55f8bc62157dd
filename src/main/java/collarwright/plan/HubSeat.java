package collarwright.plan;

import collarwright.collar.NodeOffset;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
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
     * Finds it for a hub type.
     *
     * @param plan the plan
     * @param hubType index of the hub type, which is that of its pattern too
     * @return how its parts stand
     */
    public static HubSeat of(Plan plan, int hubType) {
        HubType type = plan.hubs().types().get(hubType);
        double midRadius = plan.job().hub().body().midRadius();
        double strut = plan.job().strut().stock().od().max();
        return new HubSeat(collar(type, midRadius), RingSeat.of(type, plan.struts(), midRadius, strut));
    }

    static NodeOffset collar(HubType type, double midRadius) {
        List<Double> angles = type.struts().stream().map(HubStrut::axialAngle).toList();
        return NodeOffset.of(midRadius, angles);
    }
}
