package collarwright.collar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Edges of holes as points in space, for {@link LeanSearch}: each made from what a shop does, not from the formulas of the
 * program. Besides both edges there is one in the middle of the wall, which should never bind.
 */
final class TriedHoles {

    private static final int POINTS = 720;

    private TriedHoles() {}

    private static double turn(int i) {
        return 2 * StrictMath.PI * i / POINTS;
    }

    private static double[][] points(IntFunction<double[]> point) {
        double[][] xyz = new double[3][POINTS];
        for (int i = 0; i < POINTS; i++) {
            double[] p = point.apply(i);
            for (int k = 0; k < 3; k++) {
                xyz[k][i] = p[k];
            }
        }
        return xyz;
    }

    private static double[] onCylinder(double radius, double y, double z) {
        return new double[] {StrictMath.sqrt((radius - y) * (radius + y)), y, z};
    }

    static List<double[][]> round(double diameter, double inner, double outer) {
        return tilted(diameter, 0, 0, inner, outer);
    }

    /** Every line of the bore is followed, by halving, until it comes out of the cylinder. */
    static List<double[][]> tilted(double diameter, double tilt, double swing, double inner, double outer) {
        List<double[][]> edges = new ArrayList<>();
        double middle = (inner + outer) / 2;
        for (double radius : new double[] {inner, middle, outer}) {
            edges.add(points(i -> {
                double across = diameter / 2 * StrictMath.sin(turn(i));
                double up = diameter / 2 * StrictMath.cos(turn(i));
                double low = -middle;
                double high = 4 * outer;
                for (int step = 0; step < 100; step++) {
                    double s = (low + high) / 2;
                    double[] at = jig(new double[] {s, across, up}, tilt, swing, middle);
                    boolean inside = at[0] < 0 || at[0] * at[0] + at[1] * at[1] < radius * radius;
                    low = inside ? s : low;
                    high = inside ? high : s;
                }
                return jig(new double[] {low, across, up}, tilt, swing, middle);
            }));
        }
        return edges;
    }

    // The drill's frame turned down by the tilt, then round by the swing, then brought to the middle of the wall.
    private static double[] jig(double[] p, double tilt, double swing, double middle) {
        double x = p[0] * StrictMath.cos(tilt) + p[2] * StrictMath.sin(tilt);
        double z = -p[0] * StrictMath.sin(tilt) + p[2] * StrictMath.cos(tilt);
        return new double[] {
            middle + x * StrictMath.cos(swing) - p[1] * StrictMath.sin(swing),
            x * StrictMath.sin(swing) + p[1] * StrictMath.cos(swing),
            z
        };
    }

    /** The cutter goes half the straight way to either side. */
    static List<double[][]> slot(double width, double length, boolean around, double inner, double outer) {
        List<double[][]> edges = new ArrayList<>();
        double half = (length - width) / 2;
        for (double radius : new double[] {inner, (inner + outer) / 2, outer}) {
            edges.add(points(i -> {
                // Three tenths of all points on each round end, two tenths on each side.
                double part = 10.0 * i / POINTS;
                double along;
                double aside;
                if (part < 3) {
                    along = half + width / 2 * StrictMath.sin(StrictMath.PI * part / 3);
                    aside = width / 2 * StrictMath.cos(StrictMath.PI * part / 3);
                } else if (part < 5) {
                    along = half - (part - 3) * half;
                    aside = -width / 2;
                } else if (part < 8) {
                    along = -half - width / 2 * StrictMath.sin(StrictMath.PI * (part - 5) / 3);
                    aside = -width / 2 * StrictMath.cos(StrictMath.PI * (part - 5) / 3);
                } else {
                    along = -half + (part - 8) * half;
                    aside = width / 2;
                }
                return around ? onCylinder(radius, along, aside) : onCylinder(radius, aside, along);
            }));
        }
        return edges;
    }

    /** A point of the strip turns round the collar by its distance over the mean radius. */
    static List<double[][]> rolled(double diameter, double inner, double outer) {
        List<double[][]> edges = new ArrayList<>();
        double mean = (inner + outer) / 2;
        for (double radius : new double[] {inner, mean, outer}) {
            edges.add(points(i -> {
                double azimuth = diameter / 2 * StrictMath.sin(turn(i)) / mean;
                return new double[] {
                    radius * StrictMath.cos(azimuth),
                    radius * StrictMath.sin(azimuth),
                    diameter / 2 * StrictMath.cos(turn(i))
                };
            }));
        }
        return edges;
    }

    /** What is left of the wall of the hole begins and ends where neither pipe nor cone is cut away. */
    static List<double[][]> countersunk(double diameter, double outside, double inside, double inner, double outer) {
        double depthOut = (outside - diameter) / 2;
        double depthIn = (inside - diameter) / 2;
        double p = diameter / 2;
        double[][] out = points(i -> {
            double[] at = onCylinder(outer, p * StrictMath.sin(turn(i)), p * StrictMath.cos(turn(i)));
            at[0] = StrictMath.min(at[0], outer - depthOut);
            return at;
        });
        double[][] in = points(i -> {
            double[] at = onCylinder(inner, p * StrictMath.sin(turn(i)), p * StrictMath.cos(turn(i)));
            at[0] = depthIn > 0 ? StrictMath.max(at[0], inner + depthIn) : at[0];
            return at;
        });
        return List.of(out, in);
    }
}
