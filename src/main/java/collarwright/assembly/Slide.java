package collarwright.assembly;

import collarwright.geometry.Vec3;

/**
 * How far a strut can be pushed along its own axis until it meets a solid cylinder: another strut, or the centre ring.
 *
 * <p>Pushed by t, the strut covers all that it covered before, and its end face a slice more. So it first meets the other
 * where that one's points inside the strut's own (endless) cylinder lie nearest along the push. Cut by any plane that is
 * parallel to both axes, the strut is a strip and the other a rectangle; the least push in one such plane is the least
 * over the rectangle's edges inside the strip, in closed form. Both solids are convex, so this least push is a convex
 * function of the plane's distance, and one golden section over the planes finds the least of all.
 *
 * <p>Accuracy: 1e-6 mm (SlideOracleTest holds it against the sampled surfaces). Solids that overlap by less than 1e-9
 * mm pass each other.
 */
public final class Slide {

    /** Overlap that does not count. */
    private static final double GRAZE = 1e-9;

    private static final double PARALLEL = 1e-9;
    private static final int HALVINGS = 60;

    /** The strut's radius. */
    private final double radius;

    /** The other one's. */
    private final double other;

    /** Start of the other's axis: along the push, across it in the planes, and across the planes. */
    private final double startU;

    private final double startP;
    private final double startE;

    /** Direction of the other's axis, along the push and across it; whole axis. */
    private final double alongU;

    private final double alongP;
    private final double length;

    private Slide(Cylinder strut, Cylinder obstacle) {
        Vec3 push = strut.direction().times(-1);
        Vec3 from = obstacle.start().minus(strut.start());
        Vec3 across = across(push, obstacle.direction(), from);
        Vec3 side = across.cross(push);
        this.radius = strut.radius() - GRAZE;
        this.other = obstacle.radius();
        this.startU = from.dot(push);
        this.startP = from.dot(side);
        this.startE = from.dot(across);
        this.alongU = obstacle.direction().dot(push);
        this.alongP = obstacle.direction().dot(side);
        this.length = obstacle.length();
    }

    /**
     * Finds the travel.
     *
     * @param strut the strut as it is seated: starts at its end face inside the collar, runs outward
     * @param obstacle what it may meet
     * @return how far it can be pushed against its direction, 0 where it already touches; positive infinity if it passes by
     */
    public static double travel(Cylinder strut, Cylinder obstacle) {
        return new Slide(strut, obstacle).least();
    }

    // Square to both axes; where they are parallel, square to the push and as far as can be in the plane of both.
    private static Vec3 across(Vec3 push, Vec3 axis, Vec3 from) {
        Vec3 normal = push.cross(axis);
        if (normal.norm() > PARALLEL) {
            return normal.unit();
        }
        Vec3 apart = from.minus(push.times(from.dot(push)));
        if (apart.norm() > PARALLEL) {
            return apart.unit();
        }
        Vec3 any = StrictMath.abs(push.x()) < 0.8 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        return push.cross(any).unit();
    }

    private double least() {
        double low = StrictMath.max(-radius, startE - other);
        double high = StrictMath.min(radius, startE + other);
        if (!(low < high)) {
            return Double.POSITIVE_INFINITY;
        }
        double nearest = Lowest.at(this::gap, low, high);
        if (gap(nearest) > 0) {
            return Double.POSITIVE_INFINITY;
        }
        double left = meeting(nearest, low);
        double right = meeting(nearest, high);
        return StrictMath.max(0, push(Lowest.at(this::push, left, right)));
    }

    // The last plane, from one in which they meet toward another, in which they still do.
    private double meeting(double inside, double outside) {
        if (gap(outside) <= 0) {
            return outside;
        }
        double in = inside;
        double out = outside;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (in + out) / 2;
            if (gap(middle) <= 0) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }

    private static double halfWidth(double radius, double off) {
        return StrictMath.sqrt(StrictMath.max(0, radius * radius - off * off));
    }

    // How far the rectangle lies beside the strip in a plane; 0 or less where they meet.
    private double gap(double plane) {
        double strip = halfWidth(radius, plane);
        double thick = halfWidth(other, plane - startE) * StrictMath.abs(alongU);
        double end = startP + length * alongP;
        double least = StrictMath.min(startP, end) - thick;
        double most = StrictMath.max(startP, end) + thick;
        return StrictMath.max(least - strip, -strip - most);
    }

    // The least push in a plane: over the four edges of the rectangle, each as far as it lies in the strip.
    private double push(double plane) {
        double strip = halfWidth(radius, plane);
        double thick = halfWidth(other, plane - startE);
        double u = -alongP * thick;
        double p = alongU * thick;
        double endU = startU + length * alongU;
        double endP = startP + length * alongP;
        double least = edge(startU + u, startP + p, endU + u, endP + p, strip);
        least = StrictMath.min(least, edge(startU - u, startP - p, endU - u, endP - p, strip));
        least = StrictMath.min(least, edge(startU + u, startP + p, startU - u, startP - p, strip));
        return StrictMath.min(least, edge(endU + u, endP + p, endU - u, endP - p, strip));
    }

    private static double edge(double fromU, double fromP, double toU, double toP, double strip) {
        double span = toP - fromP;
        if (StrictMath.abs(span) < PARALLEL) {
            return StrictMath.abs(fromP) <= strip ? StrictMath.min(fromU, toU) : Double.POSITIVE_INFINITY;
        }
        double one = (-strip - fromP) / span;
        double two = (strip - fromP) / span;
        double enter = StrictMath.max(0, StrictMath.min(one, two));
        double leave = StrictMath.min(1, StrictMath.max(one, two));
        if (enter > leave) {
            return Double.POSITIVE_INFINITY;
        }
        return StrictMath.min(fromU + enter * (toU - fromU), fromU + leave * (toU - fromU));
    }
}
