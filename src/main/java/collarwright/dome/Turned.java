package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * Turns a sphere so that an edge or a face is up: a proper rotation, so that left stays left.
 *
 * @param axes where the new x, y and z point, in the base's frame; empty if nothing is turned
 */
record Turned(Optional<Axes> axes) {

    /** Three unit vectors, right-handed. */
    record Axes(Vec3 x, Vec3 y, Vec3 z) {}

    static Turned of(SphereSettings sphere, List<Vec3> corners, int[] face) {
        return switch (sphere.up()) {
            case VERTEX -> new Turned(Optional.empty());
            case EDGE -> facing(corners.get(0).plus(corners.get(1)), corners.get(1));
            case FACE ->
                facing(
                        corners.get(face[0]).plus(corners.get(face[1])).plus(corners.get(face[2])),
                        corners.get(face[0]));
        };
    }

    // Up goes to +z, and the other point into the plane of x and z, on the +x side.
    private static Turned facing(Vec3 up, Vec3 side) {
        Vec3 z = up.unit();
        Vec3 x = side.minus(z.times(side.dot(z))).unit();
        return new Turned(Optional.of(new Axes(x, z.cross(x), z)));
    }

    Vec3 apply(Vec3 at) {
        return axes.map(a -> new Vec3(at.dot(a.x()), at.dot(a.y()), at.dot(a.z())))
                .orElse(at);
    }
}
