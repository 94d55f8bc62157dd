package collarwright.collar;

import collarwright.geometry.Vec3;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a round strut binds by trying it: the edges of the hole are points in space, the strut is a cylinder in any
 * direction whose axis is moved about in the hole. No formula of contact, no outline and no library is used.
 */
final class LeanSearch {

    private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;
    private static final int STEPS = 32;

    private final List<double[][]> edges;
    private final double radius;
    private final double middle;
    private final double span;

    /** Edges as x, y and z of points all round, the strut, the middle of the wall, and how far the axis is moved. */
    LeanSearch(List<double[][]> edges, double strut, double middle, double span) {
        this.edges = edges;
        this.radius = strut / 2;
        this.middle = middle;
        this.span = span;
    }

    /** The lean from the radial line at which there is no room any more; there must be room at the first. */
    double limit(double bearing, double fits, double binds) {
        double in = fits;
        double out = binds;
        while (out - in > 1e-6) {
            double lean = (in + out) / 2;
            if (room(lean, bearing) >= 0) {
                in = lean;
            } else {
                out = lean;
            }
        }
        return (in + out) / 2;
    }

    /** The most room over all places of the axis: over all heights, and for each over all sideways places. */
    double room(double lean, double bearing) {
        Vec3 along = new Vec3(
                StrictMath.cos(lean),
                StrictMath.sin(lean) * StrictMath.sin(bearing),
                -StrictMath.sin(lean) * StrictMath.cos(bearing));
        Vec3 one = along.cross(new Vec3(0, 0, 1)).unit();
        Vec3 two = one.cross(along);
        return highest(u ->
                highest(v -> room(new Vec3(middle, 0, 0).plus(one.times(u)).plus(two.times(v)), along)));
    }

    // The top of a figure that has one, between the span to either side.
    private double highest(DoubleUnaryOperator figure) {
        double a = -span;
        double b = span;
        double x = b - GOLDEN * (b - a);
        double y = a + GOLDEN * (b - a);
        double fx = figure.applyAsDouble(x);
        double fy = figure.applyAsDouble(y);
        for (int i = 0; i < STEPS; i++) {
            if (fx > fy) {
                b = y;
                y = x;
                fy = fx;
                x = b - GOLDEN * (b - a);
                fx = figure.applyAsDouble(x);
            } else {
                a = x;
                x = y;
                fx = fy;
                y = a + GOLDEN * (b - a);
                fy = figure.applyAsDouble(y);
            }
        }
        return StrictMath.max(fx, fy);
    }

    private double room(Vec3 through, Vec3 along) {
        double least = Double.POSITIVE_INFINITY;
        for (double[][] edge : edges) {
            int count = edge[0].length;
            double[] squares = new double[count];
            int nearest = 0;
            for (int i = 0; i < count; i++) {
                double dx = edge[0][i] - through.x();
                double dy = edge[1][i] - through.y();
                double dz = edge[2][i] - through.z();
                double on = dx * along.x() + dy * along.y() + dz * along.z();
                squares[i] = dx * dx + dy * dy + dz * dz - on * on;
                nearest = squares[i] < squares[nearest] ? i : nearest;
            }
            double before = squares[(nearest + count - 1) % count];
            double after = squares[(nearest + 1) % count];
            double bend = before - 2 * squares[nearest] + after;
            double least2 = squares[nearest] - (bend > 0 ? (before - after) * (before - after) / (8 * bend) : 0);
            least = StrictMath.min(least, StrictMath.sqrt(StrictMath.max(0, least2)));
        }
        return least - radius;
    }
}
