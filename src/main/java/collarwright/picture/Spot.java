package collarwright.picture;

/**
 * A point on paper.
 *
 * @param x mm to the right
 * @param y mm down
 */
public record Spot(double x, double y) {

    /**
     * Goes from here in a direction.
     *
     * @param distance how far
     * @param azimuth 0 up, clockwise
     * @return the point there
     */
    public Spot polar(double distance, double azimuth) {
        return new Spot(x + distance * StrictMath.sin(azimuth), y - distance * StrictMath.cos(azimuth));
    }

    /**
     * Goes from here.
     *
     * @param dx to the right
     * @param dy down
     * @return the point there
     */
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /**
     * The point between.
     *
     * @param other the other point
     * @return half way
     */
    public Spot middle(Spot other) {
        return new Spot((x + other.x) / 2, (y + other.y) / 2);
    }
}
