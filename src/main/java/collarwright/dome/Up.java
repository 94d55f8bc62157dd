package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.List;

/** What part of the base is at the top, on the +z axis. The base is only ever turned there, never mirrored. */
public enum Up {
    /** Corner 0 of the base at +z, corner 1 over the +x meridian. */
    VERTEX,

    /** The middle of the base's edge from corner 0 to corner 1 at +z, this edge over the x axis, corner 1 on its +x side. */
    EDGE,

    /** The middle of the base's first triangle at +z, the first corner of this triangle over the +x meridian. */
    FACE;

    /** The corners of a base turned so; for a vertex the same numbers to the last bit. */
    List<Vec3> turned(Base base) {
        List<Vec3> corners = base.corners();
        if (this == VERTEX) {
            return corners;
        }
        int[] face = base.faces().get(0);
        Vec3 up = this == EDGE
                ? corners.get(0).plus(corners.get(1)).unit()
                : corners.get(face[0])
                        .plus(corners.get(face[1]))
                        .plus(corners.get(face[2]))
                        .unit();
        Vec3 ahead = corners.get(this == EDGE ? 1 : face[0]);
        Vec3 meridian = ahead.minus(up.times(ahead.dot(up))).unit();
        Vec3 left = up.cross(meridian);
        return corners.stream()
                .map(c -> new Vec3(c.dot(meridian), c.dot(left), c.dot(up)))
                .toList();
    }
}
