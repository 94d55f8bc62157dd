package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.List;

/** Points of the unit sphere over a triangle, each told by whole parts of the triangle's corners. */
final class FacePoints {

    private final Subdivision subdivision;
    private final List<Vec3> corners;

    FacePoints(Subdivision subdivision, List<Vec3> corners) {
        this.subdivision = subdivision;
        this.corners = corners;
    }

    /**
     * The point of one, two or three different corners with their parts, all of them above 0; corners beyond the count are
     * not read.
     */
    Vec3 at(int count, int[] corner, int[] part) {
        if (subdivision == Subdivision.CHORDS || count == 1) {
            return chords(count, corner, part);
        }
        Vec3 a = corners.get(corner[0]);
        Vec3 b = corners.get(corner[1]);
        return count == 2
                ? arc(a, part[0], b, part[1])
                : crossing(new Vec3[] {a, b, corners.get(corner[2])}, part[0] + part[1] + part[2], part);
    }

    private Vec3 chords(int count, int[] corner, int[] part) {
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < count; i++) {
            sum = sum.plus(corners.get(corner[i]).times(part[i]));
        }
        return sum.unit();
    }

    // The point that parts the arc from a to b in the ratio of partB to partA. Corners of a base are farther apart than
    // 60°, so the sine below is safe.
    private static Vec3 arc(Vec3 a, int partA, Vec3 b, int partB) {
        double whole = StrictMath.atan2(a.cross(b).norm(), a.dot(b));
        double step = whole / (partA + partB);
        return a.times(StrictMath.sin(partA * step))
                .plus(b.times(StrictMath.sin(partB * step)))
                .unit();
    }

    // A line of the grid keeps the part of one corner. Its great circle joins the points with this part on the two
    // edges
    // at that corner; here it stands as its plane's normal, turned toward that corner.
    private static Vec3 crossing(Vec3[] corner, int whole, int[] part) {
        Vec3[] plane = new Vec3[3];
        for (int i = 0; i < 3; i++) {
            Vec3 own = corner[i];
            Vec3 next = arc(own, part[i], corner[(i + 1) % 3], whole - part[i]);
            Vec3 last = arc(own, part[i], corner[(i + 2) % 3], whole - part[i]);
            plane[i] = next.cross(last);
        }
        // Each crossing is meant on the triangle's side of the sphere, not its opposite.
        Vec3 middle = corner[0].plus(corner[1]).plus(corner[2]);
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < 3; i++) {
            Vec3 cross = plane[i].cross(plane[(i + 1) % 3]).unit();
            sum = sum.plus(cross.times(StrictMath.signum(cross.dot(middle))));
        }
        return sum.unit();
    }
}
