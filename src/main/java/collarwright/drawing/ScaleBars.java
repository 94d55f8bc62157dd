package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Bars of 100 mm and 4 in: the reader lays a rule on them and knows whether the sheet came out at full size. */
public final class ScaleBars {
    /** Length of the metric bar. */
    public static final double METRIC = 100;
    /** Length of the inch bar: 4 in. */
    public static final double INCH = 4 * 25.4;

    /** Room that a bar with its lettering takes across its length. */
    public static final double BREADTH = 10;

    /** What stands beside bars, wherever they are printed. */
    public static final String ADVICE = "Print at 100 %, no scaling. Check the bars.";

    private static final double END_TICK = 2;
    private static final double TICK = 1;
    private static final double LETTERS = 3.5;

    private ScaleBars() {}

    /**
     * Draws both bars lying, one above the other.
     *
     * @param x their left ends
     * @param y the lower edge of the room they take, twice {@link #BREADTH} high
     * @return lines and labels
     */
    public static List<Shape> lying(double x, double y) {
        List<Shape> shapes = new ArrayList<>(bar(new Point(x, y + END_TICK), METRIC, METRIC / 10, false, "100 mm"));
        shapes.addAll(bar(new Point(x, y + END_TICK + BREADTH), INCH, INCH / 4, false, "4 in"));
        return List.copyOf(shapes);
    }

    /**
     * Draws both bars standing, side by side.
     *
     * @param x the left edge of the room they take, twice {@link #BREADTH} wide
     * @param y their lower ends
     * @return lines and labels
     */
    public static List<Shape> standing(double x, double y) {
        List<Shape> shapes = new ArrayList<>(bar(new Point(x + END_TICK, y), METRIC, METRIC / 10, true, "100 mm"));
        shapes.addAll(bar(new Point(x + END_TICK + BREADTH, y), INCH, INCH / 4, true, "4 in"));
        return List.copyOf(shapes);
    }

    private static List<Shape> bar(Point from, double length, double step, boolean standing, String text) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(line(from, 0, 0, length, 0, standing));
        int steps = (int) StrictMath.round(length / step);
        for (int i = 0; i <= steps; i++) {
            double half = i == 0 || i == steps ? END_TICK : TICK;
            // The ends are exact; the ticks between them are a convenience.
            double along = i == steps ? length : i * step;
            shapes.add(line(from, along, -half, along, half, standing));
        }
        double gap = END_TICK + 1;
        double start = length / 2 - StrokeFont.width(text, LETTERS) / 2;
        Point at = standing
                ? new Point(from.x() + gap + LETTERS, from.y() + start)
                : new Point(from.x() + start, from.y() + gap);
        shapes.add(new Label(text, at, LETTERS, standing ? StrictMath.PI / 2 : 0));
        return shapes;
    }

    private static Line line(Point o, double a1, double b1, double a2, double b2, boolean standing) {
        return standing
                ? Line.of(o.x() + b1, o.y() + a1, o.x() + b2, o.y() + a2)
                : Line.of(o.x() + a1, o.y() + b1, o.x() + a2, o.y() + b2);
    }
}
