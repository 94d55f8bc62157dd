package collarwright.collar;

import java.util.List;

/**
 * How far a collar sits from its node along the hub's axis.
 *
 * <p>A strut crosses the middle of the wall at the height of its hole; its axis meets the hub's axis {@code h + Rm·tan θ}
 * above the collar's mid-plane, so the collar sits that much toward the dome's centre from its node. Where the struts of
 * a hub have unequal angles their axes meet the hub's axis at different heights.
 *
 * @param mean from the collar's mid-plane up to the node, the mean over the hub's struts
 * @param spread highest less lowest meeting point
 */
public record NodeOffset(double mean, double spread) {

    /**
     * Finds the offset of a hub whose holes are all on the mid-plane.
     *
     * @param midRadius radius of the middle of the wall
     * @param axialAngles of the hub's struts, at least one
     * @return the offset
     */
    public static NodeOffset of(double midRadius, List<Double> axialAngles) {
        return of(midRadius, axialAngles, Heights.MIDPLANE.of(midRadius, axialAngles));
    }

    /**
     * Finds the offset of a hub.
     *
     * @param midRadius radius of the middle of the wall
     * @param axialAngles of the hub's struts, at least one
     * @param heights of their holes above the mid-plane, as many
     * @return the offset
     */
    public static NodeOffset of(double midRadius, List<Double> axialAngles, List<Double> heights) {
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < axialAngles.size(); i++) {
            double height = heights.get(i) + midRadius * StrictMath.tan(axialAngles.get(i));
            sum += height;
            least = StrictMath.min(least, height);
            most = StrictMath.max(most, height);
        }
        return new NodeOffset(sum / axialAngles.size(), most - least);
    }
}
