package collarwright.collar;

import collarwright.geometry.Vec3;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a strut binds by trying it: the rims of the hole are points in space, the strut is a cylinder that leans in
 * the plane of the collar's axis and may move up and down in the hole. No formula of contact is used.
 *
 * <p>The collar's axis is +z, the hole's axis +x. A third rim in the middle of the wall is tried too, which should never
 * bind.
 */
final class TiltSearch {

    private static final int RIM_STEPS = 90;
    private static final int OFFSET_STEPS = 12;
    private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    private final double radius;
    private final double hole;
    private final double middle;
    private final double[][] layers;

    TiltSearch(double strut, double hole, double inner, double outer) {
        this(strut, hole, inner, outer, 0);
    }

    /** With rims that are eased by a 45° chamfer: where it begins in the hole and where it ends on the pipe. */
    TiltSearch(double strut, double hole, double inner, double outer, double rims) {
        this.radius = strut / 2;
        this.hole = hole / 2;
        this.middle = (inner + outer) / 2;
        this.layers = new double[][] {
            {inner, hole / 2 + rims},
            {inner + rims, hole / 2},
            {middle, hole / 2},
            {outer - rims, hole / 2},
            {outer, hole / 2 + rims}
        };
    }

    /** The largest lean at which there is room, found by halving. */
    double limit() {
        double fits = 0;
        double binds = StrictMath.PI / 2;
        while (binds - fits > 1e-6) {
            double lean = (fits + binds) / 2;
            if (room(lean, 0) >= 0) {
                fits = lean;
            } else {
                binds = lean;
            }
        }
        return (fits + binds) / 2;
    }

    /** The most room that a strut of this lean has, over all heights, when it is moved sideways by so much. */
    double room(double lean, double sideways) {
        double best = Double.NEGATIVE_INFINITY;
        double at = 0;
        double step = 2 * hole / OFFSET_STEPS;
        for (int i = 1; i < OFFSET_STEPS; i++) {
            double room = room(lean, sideways, -hole + i * step);
            if (room > best) {
                best = room;
                at = -hole + i * step;
            }
        }
        return StrictMath.max(best, climb(at - step, at + step, 32, z -> room(lean, sideways, z)));
    }

    private double room(double lean, double sideways, double height) {
        Vec3 along = new Vec3(StrictMath.cos(lean), 0, -StrictMath.sin(lean));
        Vec3 through = new Vec3(middle, sideways, height);
        double least = Double.POSITIVE_INFINITY;
        for (double[] layer : layers) {
            double axis = height - (layer[0] - middle) * StrictMath.tan(lean);
            if (StrictMath.abs(axis) > layer[1]) {
                return Double.NEGATIVE_INFINITY;
            }
            least = StrictMath.min(least, nearest(layer, through, along));
        }
        return least - radius;
    }

    private double nearest(double[] layer, Vec3 through, Vec3 along) {
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        // Without a sideways move both halves of the rim are alike.
        double round = through.y() == 0 ? StrictMath.PI : 2 * StrictMath.PI;
        double step = round / RIM_STEPS;
        for (int i = 0; i <= RIM_STEPS; i++) {
            double distance = distance(layer, i * step, through, along);
            if (distance < least) {
                least = distance;
                at = i * step;
            }
        }
        return -climb(at - step, at + step, 24, angle -> -distance(layer, angle, through, along));
    }

    private double distance(double[] layer, double angle, Vec3 through, Vec3 along) {
        double y = layer[1] * StrictMath.sin(angle);
        Vec3 rim = new Vec3(StrictMath.sqrt(layer[0] * layer[0] - y * y), y, layer[1] * StrictMath.cos(angle));
        return rim.minus(through).cross(along).norm();
    }

    /** The largest value of a function with one hump between two places. */
    private static double climb(double from, double to, int steps, DoubleUnaryOperator f) {
        double a = from;
        double b = to;
        double x = b - GOLDEN * (b - a);
        double y = a + GOLDEN * (b - a);
        double fx = f.applyAsDouble(x);
        double fy = f.applyAsDouble(y);
        for (int i = 0; i < steps; i++) {
            if (fx > fy) {
                b = y;
                y = x;
                fy = fx;
                x = b - GOLDEN * (b - a);
                fx = f.applyAsDouble(x);
            } else {
                a = x;
                x = y;
                fx = fy;
                y = a + GOLDEN * (b - a);
                fy = f.applyAsDouble(y);
            }
        }
        return StrictMath.max(fx, fy);
    }
}
