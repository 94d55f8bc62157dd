package collarwright.dome;

import collarwright.geometry.Vec3;

/**
 * A triangle of the base in its own plane, seen from the sphere's centre: great circles are straight lines there. Points
 * are told by their distances along two sides.
 */
final class FlatFace {

    private final Vec3 origin;
    private final Vec3 first;
    private final Vec3 second;
    private final double span;
    private final int n;

    FlatFace(Vec3 a, Vec3 b, Vec3 c, int n) {
        this.origin = a;
        this.first = b.minus(a);
        this.second = c.minus(a);
        this.span = StrictMath.acos(a.dot(b));
        this.n = n;
    }

    // How far along a flat side, of 1, one sees the point that is k of n equal arcs along: the sine rule in the
    // triangle
    // of the centre and the side.
    private double along(int k) {
        double angle = span * k / n;
        double base = (StrictMath.PI - span) / 2;
        double side = 2 * StrictMath.sin(span / 2);
        return StrictMath.sin(angle) / StrictMath.sin(StrictMath.PI - base - angle) / side;
    }

    /** The node i steps of n toward the first corner, j toward the second, k toward the third. */
    Vec3 node(int i, int j, int k) {
        // Lines u·x + v·y = w in the oblique frame of two sides.
        double[] keepFirst = line(1 - along(i), 0, 0, 1 - along(i));
        double[] keepSecond = line(along(j), 0, along(j), 1 - along(j));
        double[] keepThird = line(0, along(k), 1 - along(k), along(k));
        return ray(keepFirst, keepSecond)
                .plus(ray(keepSecond, keepThird))
                .plus(ray(keepThird, keepFirst))
                .unit();
    }

    private static double[] line(double x1, double y1, double x2, double y2) {
        return new double[] {y2 - y1, x1 - x2, x1 * (y2 - y1) + y1 * (x1 - x2)};
    }

    private Vec3 ray(double[] one, double[] other) {
        double determinant = one[0] * other[1] - one[1] * other[0];
        double x = (one[2] * other[1] - one[1] * other[2]) / determinant;
        double y = (one[0] * other[2] - one[2] * other[0]) / determinant;
        return origin.plus(first.times(x)).plus(second.times(y)).unit();
    }
}
