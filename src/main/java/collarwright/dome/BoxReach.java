package collarwright.dome;

import collarwright.geometry.Vec3;

/** Tells what comes into a doorway, and how much room is left. All in mm. */
final class BoxReach {

    /** Heights nearer than this are one, mm. */
    private static final double ROUNDING = 1e-6;

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

    /** z of the doorway's upper edge. */
    double top() {
        return top;
    }

    /**
     * Tells whether a strut comes into the doorway.
     *
     * @param a one end
     * @param b the other
     * @param touch how far its axis may come in all the same; negative by how far it must keep away
     * @return true if some point of its axis lies deeper than that within every side
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

    /** How deep a point lies within the nearest side; negative outside. */
    double depth(Vec3 at) {
        double aside = halfWidth - StrictMath.abs(sideways.dot(at));
        return StrictMath.min(outward.dot(at), StrictMath.min(aside, top - at.z()));
    }

    /**
     * Measures how far aside of the doorway's middle a part stands, as high as the doorway is.
     *
     * @param a one end of its axis
     * @param b the other; the same for a hub
     * @param radius about its axis
     * @return from the middle to its surface; infinite where it stands behind or wholly above
     */
    double aside(Vec3 a, Vec3 b, double radius) {
        double[] span = {0, 1};
        clip(span, outward.dot(a) + radius, outward.dot(b) + radius);
        // What hangs just on the upper edge is above it.
        double edge = top + radius - ROUNDING;
        clip(span, edge - a.z(), edge - b.z());
        double from = sideways.dot(a);
        double to = sideways.dot(b);
        double first = from + span[0] * (to - from);
        double last = from + span[1] * (to - from);
        double near = first * last < 0 ? 0 : StrictMath.min(StrictMath.abs(first), StrictMath.abs(last));
        return span[0] < span[1] ? near - radius : Double.POSITIVE_INFINITY;
    }

    /**
     * Measures how low a part hangs, as wide as the doorway is.
     *
     * @param a one end of its axis
     * @param b the other; the same for a hub
     * @param radius about its axis
     * @return z of its underside; infinite where it stands behind or wholly beside
     */
    double underside(Vec3 a, Vec3 b, double radius) {
        double[] span = {0, 1};
        double half = halfWidth + radius;
        clip(span, outward.dot(a) + radius, outward.dot(b) + radius);
        clip(span, half - sideways.dot(a), half - sideways.dot(b));
        clip(span, half + sideways.dot(a), half + sideways.dot(b));
        double first = a.z() + span[0] * (b.z() - a.z());
        double last = a.z() + span[1] * (b.z() - a.z());
        return span[0] < span[1] ? StrictMath.min(first, last) - radius : Double.POSITIVE_INFINITY;
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
