package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.List;

/**
 * Places the nodes of class I so that the edges of the base are divided into equal arcs. An inner node is the normalised
 * mean of the three points in which the great circles of its three grid lines cross, two by two.
 *
 * <p>Source of the subdivision: J. D. Clinton, Advanced Structural Geometry Studies, Part I, NASA CR-1734, 1971, class I,
 * method 2 (method's name from memory).
 */
final class EqualArcs {

    private final int frequency;

    EqualArcs(int frequency) {
        this.frequency = frequency;
    }

    /**
     * Places a node.
     *
     * @param corners of the base
     * @param corner the corners of a face; what stands where the part is 0 does not count
     * @param part of each corner, in parts of the frequency's square
     * @return a unit vector
     */
    Vec3 node(List<Vec3> corners, int[] corner, int[] part) {
        int zeros = 0;
        for (int p : part) {
            zeros += p == 0 ? 1 : 0;
        }
        if (zeros == 2) {
            for (int i = 0; i < 3; i++) {
                if (part[i] > 0) {
                    return corners.get(corner[i]);
                }
            }
        }
        if (zeros == 1) {
            int from = part[0] == 0 ? 1 : 0;
            int to = part[2] == 0 ? 1 : 2;
            return along(corners.get(corner[from]), corners.get(corner[to]), steps(part[to]));
        }
        Vec3[] at = {corners.get(corner[0]), corners.get(corner[1]), corners.get(corner[2])};
        return inside(at, part);
    }

    private int steps(int part) {
        return part / frequency;
    }

    private Vec3 inside(Vec3[] at, int[] part) {
        Vec3[] circle = new Vec3[3];
        for (int i = 0; i < 3; i++) {
            Vec3 first = along(at[(i + 1) % 3], at[i], steps(part[i]));
            Vec3 second = along(at[(i + 2) % 3], at[i], steps(part[i]));
            circle[i] = first.cross(second);
        }
        Vec3 middle = at[0].plus(at[1]).plus(at[2]);
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < 3; i++) {
            Vec3 crossing = circle[i].cross(circle[(i + 1) % 3]).unit();
            sum = sum.plus(crossing.dot(middle) < 0 ? crossing.times(-1) : crossing);
        }
        return sum.unit();
    }

    // So many of the frequency's equal arcs from one corner to another.
    private Vec3 along(Vec3 from, Vec3 to, int steps) {
        double whole = StrictMath.atan2(from.cross(to).norm(), from.dot(to));
        double arc = whole * steps / frequency;
        Vec3 square = to.minus(from.times(from.dot(to))).unit();
        return from.times(StrictMath.cos(arc)).plus(square.times(StrictMath.sin(arc)));
    }
}
