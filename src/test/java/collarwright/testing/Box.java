package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * An upright rectangle, mm.
 *
 * @param x left edge
 * @param y the edge with the smaller y
 * @param width along x
 * @param height along y
 */
public record Box(double x, double y, double width, double height) {
    static Box from(JsonNode four) {
        return new Box(
                four.get(0).asDouble(),
                four.get(1).asDouble(),
                four.get(2).asDouble(),
                four.get(3).asDouble());
    }

    /** The right edge. */
    public double right() {
        return x + width;
    }

    /** The edge with the larger y. */
    public double far() {
        return y + height;
    }

    /** Whether the insides of two boxes meet, by more than the slack in both directions. */
    public boolean overlaps(Box other, double slack) {
        return Math.min(right(), other.right()) - Math.max(x, other.x) > slack
                && Math.min(far(), other.far()) - Math.max(y, other.y) > slack;
    }

    /** Whether a box lies in this one, give or take the slack. */
    public boolean holds(Box other, double slack) {
        return other.x >= x - slack
                && other.y >= y - slack
                && other.right() <= right() + slack
                && other.far() <= far() + slack;
    }
}
