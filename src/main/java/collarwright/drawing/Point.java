package collarwright.drawing;

/**
 * A point of a sheet.
 *
 * @param x to the right
 * @param y up
 */
public record Point(double x, double y) {
    /** Checks that both are finite. */
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("not a point: " + x + ", " + y);
        }
    }

    /**
     * Moves the point.
     *
     * @param dx to the right
     * @param dy up
     * @return the moved point
     */
    public Point moved(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /**
     * Measures the distance to another point.
     *
     * @param other the other point
     * @return 0 or more
     */
    public double distance(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return StrictMath.sqrt(dx * dx + dy * dy);
    }
}
