package collarwright.drawing;

/**
 * A whole circle.
 *
 * @param centre its centre
 * @param radius above 0
 */
public record Circle(Point centre, double radius) implements Shape {
    /** Checks the radius. */
    public Circle {
        if (!(radius > 0 && radius < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a circle needs a radius above 0, not " + radius);
        }
    }

    @Override
    public Box bounds() {
        return new Box(centre.x() - radius, centre.y() - radius, centre.x() + radius, centre.y() + radius);
    }

    @Override
    public Circle moved(double dx, double dy) {
        return new Circle(centre.moved(dx, dy), radius);
    }
}
