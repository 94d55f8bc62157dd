package collarwright.frame;

import collarwright.geometry.Vec3;
import java.util.List;

/**
 * A frame as solids: struts as round rods from cut end to cut end, collars as rings. Millimetres, +z up.
 *
 * @param rods the struts
 * @param collars the collars
 */
public record FrameModel(List<Rod> rods, List<Collar> collars) {

    /** Keeps the lists. */
    public FrameModel {
        rods = List.copyOf(rods);
        collars = List.copyOf(collars);
    }

    /**
     * A strut.
     *
     * @param from middle of one cut end
     * @param to middle of the other
     * @param diameter of the rod
     * @param type the strut type's name
     */
    public record Rod(Vec3 from, Vec3 to, double diameter, String type) {}

    /**
     * A collar.
     *
     * @param centre middle of its mid-plane
     * @param axis unit vector, the way TOP faces
     * @param outerRadius of the pipe
     * @param innerRadius of its bore
     * @param width along the axis
     */
    public record Collar(Vec3 centre, Vec3 axis, double outerRadius, double innerRadius, double width) {}
}
