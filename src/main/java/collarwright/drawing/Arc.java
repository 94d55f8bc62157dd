package collarwright.drawing;

/**
 * A part of a circle.
 *
 * @param centre the circle's centre
 * @param radius above 0
 * @param start angle of its start, counter-clockwise from +x
 * @param sweep angle from start to end, + counter-clockwise; not 0, less than a whole turn
 */
public record Arc(Point centre, double radius, double start, double sweep) implements Shape {
    private static final double TURN = 2 * StrictMath.PI;

    /** Checks the radius and the angles. */
    public Arc {
        boolean angles = Double.isFinite(start) && sweep != 0 && StrictMath.abs(sweep) < TURN;
        if (!(radius > 0 && radius < Double.POSITIVE_INFINITY && angles)) {
            throw new IllegalArgumentException("not an arc: radius " + radius + ", " + start + " by " + sweep);
        }
    }

    /**
     * An arc between two points.
     *
     * <p>Source: bulge = tan(sweep / 4), the definition of group code 42 in the DXF reference.
     *
     * @param from where it starts
     * @param to where it ends, elsewhere than the start
     * @param bulge tangent of a quarter of the sweep: + counter-clockwise, 1 a half turn; not 0
     * @return the arc
     */
    public static Arc between(Point from, Point to, double bulge) {
        double chord = from.distance(to);
        double sweep = 4 * StrictMath.atan(bulge);
        double radius = StrictMath.abs(chord * (1 + bulge * bulge) / (4 * bulge));
        // The centre lies on the left of the chord by this share of its length, for a counter-clockwise arc.
        double share = (1 - bulge * bulge) / (4 * bulge);
        Point centre = new Point(
                (from.x() + to.x()) / 2 - share * (to.y() - from.y()),
                (from.y() + to.y()) / 2 + share * (to.x() - from.x()));
        double start = StrictMath.atan2(from.y() - centre.y(), from.x() - centre.x());
        return new Arc(centre, radius, start, sweep);
    }

    /**
     * Returns the angle of its end.
     *
     * @return start plus sweep
     */
    public double end() {
        return start + sweep;
    }

    /**
     * Returns the point at an angle of its circle.
     *
     * @param angle counter-clockwise from +x
     * @return the point
     */
    public Point at(double angle) {
        return new Point(centre.x() + radius * StrictMath.cos(angle), centre.y() + radius * StrictMath.sin(angle));
    }

    @Override
    public Box bounds() {
        Box box = Box.of(at(start), at(end()));
        double low = StrictMath.min(start, end());
        double high = StrictMath.max(start, end());
        // The arc is widest where it crosses an axis of its circle.
        double quarter = StrictMath.PI / 2;
        for (double k = StrictMath.ceil(low / quarter); k * quarter <= high; k++) {
            Point p = at(k * quarter);
            box = box.with(Box.of(p, p));
        }
        return box;
    }

    @Override
    public Arc moved(double dx, double dy) {
        return new Arc(centre.moved(dx, dy), radius, start, sweep);
    }
}
