package collarwright.machining;

import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a hole that is cut by a jet or a blade which points at the pipe's axis.
 *
 * <p>Such a cut has walls that lie toward the axis: its outline, in place along the pipe and angle about it, is the same at
 * every radius. A cylinder of radius p, square to the axis, crosses the pipe's radius r where {@code x = p·cos φ} and
 * {@code sin(angle) = p·sin φ / r}. For one x, the angle falls as r grows, since asin rises: so the trace on the bore holds
 * those of all radii outside it, and the cylinder passes the wall where the outline is that trace. It is what a hole that
 * is drilled has inside; outside it is wider round the pipe by Ro/Ri.
 *
 * <p>In the plane of the pipe's axis a strut meets the same two points as in a drilled hole, so up and down it leans as far.
 *
 * <p>Kerf: half its width is taken off along the outside, square to the outline there, where a cut is measured. A jet that
 * keeps its width inside cuts the hole a little wider than planned round the pipe, never narrower.
 *
 * @param hole diameter of the cylinder that passes
 * @param bore inside radius of the pipe where its wall is thickest, above half of {@code hole}
 * @param outer outside radius
 */
record TubeOutline(double hole, double bore, double outer) {

    /** How far a straight stretch may stand off the curve: our choice, no source. */
    static final double CHORD = 0.02;

    private static final int FEWEST = 24;
    private static final int MOST = 3600;

    TubeOutline {
        if (!(hole > 0 && hole / 2 < bore && bore < outer)) {
            throw new IllegalArgumentException("a hole of " + hole + " in a pipe of radii " + bore + ", " + outer);
        }
    }

    /**
     * A place on the unrolled outside.
     *
     * @param x along the pipe, from the hole's axis
     * @param arc round the pipe, from the hole's axis, on the outside
     */
    record Point(double x, double arc) {
        double to(Point other) {
            return StrictMath.hypot(other.x - x, other.arc - arc);
        }

        Point toward(Point other, double share) {
            return new Point(x + (other.x - x) * share, arc + (other.arc - arc) * share);
        }
    }

    /** A point as far inside the outline as is asked for; φ counts counter-clockwise from +x. */
    Point inside(double phi, double inward) {
        double p = hole / 2;
        double sine = p * StrictMath.sin(phi) / bore;
        double alongX = -p * StrictMath.sin(phi);
        double alongArc = outer * p * StrictMath.cos(phi) / bore / StrictMath.sqrt(1 - sine * sine);
        double length = StrictMath.hypot(alongX, alongArc);
        return new Point(
                p * StrictMath.cos(phi) - inward * alongArc / length,
                outer * StrictMath.asin(sine) + inward * alongX / length);
    }

    /**
     * Once round, as straight stretches that stay within {@link #CHORD} of the curve.
     *
     * @param inward how far inside the outline, less than {@link #tightest()}
     * @return the first point again at the end; it begins at the side, where no upright strut bears
     */
    List<Point> path(double inward) {
        int count = FEWEST;
        while (count < MOST && sagitta(count, inward) > CHORD) {
            count += FEWEST / 2;
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            points.add(inside(turn(i % count, count), inward));
        }
        return points;
    }

    private static double turn(double step, int count) {
        return StrictMath.PI / 2 + 2 * StrictMath.PI * step / count;
    }

    private double sagitta(int count, double inward) {
        double most = 0;
        for (int i = 0; i < count; i++) {
            Point from = inside(turn(i, count), inward);
            Point to = inside(turn(i + 1.0, count), inward);
            for (double share : new double[] {0.25, 0.5, 0.75}) {
                Point on = inside(turn(i + share, count), inward);
                double cross = (to.x - from.x) * (on.arc - from.arc) - (to.arc - from.arc) * (on.x - from.x);
                most = StrictMath.max(most, StrictMath.abs(cross) / from.to(to));
            }
        }
        return most;
    }

    /** The least radius of the outline's bends on the outside, by circles through three points close together. */
    double tightest() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST; i++) {
            Point a = inside(turn(i - 1.0, MOST), 0);
            Point b = inside(turn(i, MOST), 0);
            Point c = inside(turn(i + 1.0, MOST), 0);
            double area = StrictMath.abs((b.x - a.x) * (c.arc - a.arc) - (b.arc - a.arc) * (c.x - a.x));
            least = StrictMath.min(least, a.to(b) * b.to(c) * c.to(a) / (2 * area));
        }
        return least;
    }
}
