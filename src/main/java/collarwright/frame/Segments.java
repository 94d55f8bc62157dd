package collarwright.frame;

import collarwright.geometry.Vec3;

/** How near two pieces of straight line come to each other. */
final class Segments {

    private Segments() {}

    /** The least distance of the pieces from a to b and from c to d: inside, or at one of the four ends. */
    static double apart(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
        Vec3 u = b.minus(a);
        Vec3 v = d.minus(c);
        double uu = u.dot(u);
        double uv = u.dot(v);
        double vv = v.dot(v);
        Vec3 w = a.minus(c);
        double square = uu * vv - uv * uv;
        double least = StrictMath.min(
                StrictMath.min(toPoint(a, b, c), toPoint(a, b, d)), StrictMath.min(toPoint(c, d, a), toPoint(c, d, b)));
        if (square > 1e-12 * uu * vv) {
            double s = (uv * w.dot(v) - vv * w.dot(u)) / square;
            double t = (uu * w.dot(v) - uv * w.dot(u)) / square;
            if (s > 0 && s < 1 && t > 0 && t < 1) {
                least = StrictMath.min(
                        least, w.plus(u.times(s)).minus(v.times(t)).norm());
            }
        }
        return least;
    }

    private static double toPoint(Vec3 a, Vec3 b, Vec3 point) {
        Vec3 u = b.minus(a);
        double at = StrictMath.max(0, StrictMath.min(1, point.minus(a).dot(u) / u.dot(u)));
        return a.plus(u.times(at)).minus(point).norm();
    }
}
