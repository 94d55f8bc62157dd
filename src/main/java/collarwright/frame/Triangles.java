package collarwright.frame;

import collarwright.geometry.Vec3;

/** Triangles between points, counter-clockwise seen from outside. */
final class Triangles {

    private final Doubles points = new Doubles();
    private final Ints corners = new Ints();

    int size() {
        return corners.size() / 3;
    }

    int pointCount() {
        return points.size() / 3;
    }

    Vec3 point(int point) {
        return new Vec3(points.get(3 * point), points.get(3 * point + 1), points.get(3 * point + 2));
    }

    /** The point at a corner of a triangle. */
    int corner(int triangle, int corner) {
        return corners.get(3 * triangle + corner);
    }

    /** Unit vector outward. */
    Vec3 normal(int triangle) {
        Vec3 a = point(corner(triangle, 0));
        Vec3 b = point(corner(triangle, 1));
        return b.minus(a).cross(point(corner(triangle, 2)).minus(a)).unit();
    }

    private int point(Vec3 at) {
        points.add(at.x());
        points.add(at.y());
        points.add(at.z());
        return pointCount() - 1;
    }

    // So many points one after another; the first one's number.
    private int circle(Vec3 centre, Vec3[] round) {
        int first = pointCount();
        for (Vec3 at : round) {
            point(centre.plus(at));
        }
        return first;
    }

    private void add(int a, int b, int c) {
        corners.add(a);
        corners.add(b);
        corners.add(c);
    }

    private void quad(int a, int b, int c, int d) {
        add(a, b, c);
        add(a, c, d);
    }

    /** A rod as a closed prism whose corners lie on its circle. */
    void rod(FrameModel.Rod rod, int sides) {
        Vec3[] round = round(rod.to().minus(rod.from()).unit(), rod.diameter() / 2, sides);
        int start = point(rod.from());
        int end = point(rod.to());
        int low = circle(rod.from(), round);
        int high = circle(rod.to(), round);
        for (int i = 0; i < sides; i++) {
            int j = (i + 1) % sides;
            quad(low + i, low + j, high + j, high + i);
            add(start, low + j, low + i);
            add(end, high + i, high + j);
        }
    }

    /** A collar as a closed ring of flat sides. */
    void collar(FrameModel.Collar collar, int sides) {
        Vec3[] outer = round(collar.axis(), collar.outerRadius(), sides);
        Vec3[] inner = round(collar.axis(), collar.innerRadius(), sides);
        Vec3 half = collar.axis().times(collar.width() / 2);
        int lowOut = circle(collar.centre().minus(half), outer);
        int lowIn = circle(collar.centre().minus(half), inner);
        int highOut = circle(collar.centre().plus(half), outer);
        int highIn = circle(collar.centre().plus(half), inner);
        for (int i = 0; i < sides; i++) {
            int j = (i + 1) % sides;
            quad(lowOut + i, lowOut + j, highOut + j, highOut + i);
            quad(lowIn + j, lowIn + i, highIn + i, highIn + j);
            quad(highOut + i, highOut + j, highIn + j, highIn + i);
            quad(lowOut + j, lowOut + i, lowIn + i, lowIn + j);
        }
    }

    // Points of a circle about an axis, counter-clockwise seen from the axis' tip.
    private static Vec3[] round(Vec3 axis, double radius, int sides) {
        Vec3 across = StrictMath.abs(axis.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        Vec3 x = across.minus(axis.times(across.dot(axis))).unit();
        Vec3 y = axis.cross(x);
        Vec3[] round = new Vec3[sides];
        for (int i = 0; i < sides; i++) {
            double angle = 2 * StrictMath.PI * i / sides;
            round[i] = x.times(radius * StrictMath.cos(angle)).plus(y.times(radius * StrictMath.sin(angle)));
        }
        return round;
    }
}
