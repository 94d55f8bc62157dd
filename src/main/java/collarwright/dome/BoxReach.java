package collarwright.dome;

import collarwright.geometry.Vec3;

/** Tells which struts come into a doorway. */
final class BoxReach {

    private final Vec3 outward;
    private final Vec3 sideways;
    private final double halfWidth;
    private final double top;

    /**
     * A doorway.
     *
     * @param box its size and azimuth
     * @param floor z of the lowest node
     */
    BoxReach(Opening.Box box, double floor) {
        double c = StrictMath.cos(box.azimuth());
        double s = StrictMath.sin(box.azimuth());
        // Azimuths run clockwise from above, from +x.
        this.outward = new Vec3(c, -s, 0);
        this.sideways = new Vec3(s, c, 0);
        this.halfWidth = box.width() / 2;
        this.top = floor + box.height();
    }

    /**
     * Tells whether a strut's axis comes into the doorway.
     *
     * @param a one end
     * @param b the other
     * @param touch how far it may come in all the same
     * @return true if some point of it lies deeper than that within every side
     */
    boolean touches(Vec3 a, Vec3 b, double touch) {
        // Where along the strut, from 0 to 1, all four sides hold.
        double[] span = {0, 1};
        clip(span, outward.dot(a) - touch, outward.dot(b) - touch);
        clip(span, halfWidth - touch - sideways.dot(a), halfWidth - touch - sideways.dot(b));
        clip(span, halfWidth - touch + sideways.dot(a), halfWidth - touch + sideways.dot(b));
        clip(span, top - touch - a.z(), top - touch - b.z());
        return span[0] < span[1];
    }

    // Keeps the part of the span where a value that runs evenly from one to the other is above 0.
    private static void clip(double[] span, double from, double to) {
        if (from <= 0 && to <= 0) {
            span[1] = span[0];
        } else if (from < 0 || to < 0) {
            double at = from / (from - to);
            if (from < 0) {
                span[0] = StrictMath.max(span[0], at);
            } else {
                span[1] = StrictMath.min(span[1], at);
            }
        }
    }
}
