package collarwright.drawing;

/**
 * An upright rectangle of a sheet; its edges belong to it.
 *
 * @param left least x
 * @param bottom least y
 * @param right largest x
 * @param top largest y
 */
public record Box(double left, double bottom, double right, double top) {
    /** Checks the order and that all are finite. */
    public Box {
        boolean finite =
                Double.isFinite(left) && Double.isFinite(bottom) && Double.isFinite(right) && Double.isFinite(top);
        if (!finite || left > right || bottom > top) {
            throw new IllegalArgumentException("not a box: " + left + ", " + bottom + ", " + right + ", " + top);
        }
    }

    /**
     * The least box of two points.
     *
     * @param a one point
     * @param b the other
     * @return the box with both in its corners
     */
    public static Box of(Point a, Point b) {
        return new Box(
                StrictMath.min(a.x(), b.x()),
                StrictMath.min(a.y(), b.y()),
                StrictMath.max(a.x(), b.x()),
                StrictMath.max(a.y(), b.y()));
    }

    /**
     * The least box that holds two boxes.
     *
     * @param other the other box
     * @return the box of both
     */
    public Box with(Box other) {
        return new Box(
                StrictMath.min(left, other.left),
                StrictMath.min(bottom, other.bottom),
                StrictMath.max(right, other.right),
                StrictMath.max(top, other.top));
    }

    /**
     * Grows the box on all sides.
     *
     * @param by how far each side moves outward; negative shrinks it, to its middle at most
     * @return the grown box
     */
    public Box grown(double by) {
        double dx = StrictMath.max(by, -width() / 2);
        double dy = StrictMath.max(by, -height() / 2);
        return new Box(left - dx, bottom - dy, right + dx, top + dy);
    }

    /**
     * Moves the box.
     *
     * @param dx to the right
     * @param dy up
     * @return the moved box
     */
    public Box moved(double dx, double dy) {
        return new Box(left + dx, bottom + dy, right + dx, top + dy);
    }

    /**
     * Tells whether another box lies inside this one.
     *
     * @param other the other box
     * @return true if no part of it is outside
     */
    public boolean holds(Box other) {
        return left <= other.left && bottom <= other.bottom && right >= other.right && top >= other.top;
    }

    /**
     * Tells whether two boxes share a point.
     *
     * @param other the other box
     * @return true if they meet, even at an edge
     */
    public boolean meets(Box other) {
        return left <= other.right && other.left <= right && bottom <= other.top && other.bottom <= top;
    }

    /**
     * Measures the box.
     *
     * @return its extent in x
     */
    public double width() {
        return right - left;
    }

    /**
     * Measures the box.
     *
     * @return its extent in y
     */
    public double height() {
        return top - bottom;
    }
}
