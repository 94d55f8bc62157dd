package collarwright.dome;

import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.units.LengthUnit;
import java.util.List;

/**
 * A frame from outside.
 *
 * @param net its nodes and members
 * @param unit of the file that it was read from
 * @param merge nodes nearer than this were taken as one, mm
 * @param alike lengths that differ by no more are one, and angles by no more than this on the collar's outside, mm
 * @param feetWithin nodes at most this above the lowest stand on the ground, mm
 * @param axis how the axes of hubs are laid
 * @param axes of single hubs that the user gives
 * @param openings what is left out, and what is added
 */
public record FrameSettings(
        FrameNet net,
        LengthUnit unit,
        double merge,
        double alike,
        double feetWithin,
        Form.Axis axis,
        List<NodeAxis> axes,
        List<Opening> openings)
        implements DomeSource {

    /** How far apart two equal lengths may be where nothing is said, mm. Our choice, no source: no saw holds more. */
    public static final double USUAL_ALIKE = 0.1;

    /** How far above the lowest node a foot may be where nothing is said, mm. Our choice, no source. */
    public static final double USUAL_FEET_WITHIN = 1;

    /** Keeps the lists. */
    public FrameSettings {
        axes = List.copyOf(axes);
        openings = List.copyOf(openings);
    }

    /**
     * A hub's axis.
     *
     * @param node index of its node, from 0
     * @param axis unit vector, outward
     */
    public record NodeAxis(int node, Vec3 axis) {}
}
