package collarwright.drawing;

/**
 * A straight line.
 *
 * @param from where it starts
 * @param to where it ends
 */
public record Line(Point from, Point to) implements Shape {

    /**
     * A line by its coordinates.
     *
     * @param x1 start
     * @param y1 start
     * @param x2 end
     * @param y2 end
     * @return the line
     */
    public static Line of(double x1, double y1, double x2, double y2) {
        return new Line(new Point(x1, y1), new Point(x2, y2));
    }

    @Override
    public Box bounds() {
        return Box.of(from, to);
    }

    @Override
    public Line moved(double dx, double dy) {
        return new Line(from.moved(dx, dy), to.moved(dx, dy));
    }
}
