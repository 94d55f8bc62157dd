package collarwright.drawing;

import java.util.List;

/**
 * Lettering of single strokes.
 *
 * @param text one line; every character must be in the {@link StrokeFont}
 * @param at left end of its base line
 * @param height of a capital letter, above 0
 * @param angle of the base line, counter-clockwise from +x
 */
public record Label(String text, Point at, double height, double angle) implements Shape {
    /** Checks the height, and that every character can be drawn. */
    public Label {
        if (!(height > 0 && height < Double.POSITIVE_INFINITY) || !Double.isFinite(angle)) {
            throw new IllegalArgumentException("a label needs a height above 0, not " + height + ", and an angle");
        }
        StrokeFont.require(text);
        if (text.isBlank()) {
            throw new IllegalArgumentException("a label needs something to draw");
        }
    }

    /**
     * A level label by the left end of its base line.
     *
     * @param text one line
     * @param height of a capital letter
     * @param x left end
     * @param y base line
     * @return the label
     */
    public static Label of(String text, double height, double x, double y) {
        return new Label(text, new Point(x, y), height, 0);
    }

    /**
     * A level label by the middle of its base line.
     *
     * @param text one line
     * @param height of a capital letter
     * @param x middle
     * @param y base line
     * @return the label
     */
    public static Label centred(String text, double height, double x, double y) {
        return of(text, height, x - StrokeFont.width(text, height) / 2, y);
    }

    /**
     * Returns the strokes that draw it.
     *
     * @return paths in the order of writing
     */
    public List<Path> strokes() {
        return StrokeFont.strokes(this);
    }

    @Override
    public Box bounds() {
        return strokes().stream().map(Path::bounds).reduce(Box::with).orElseThrow();
    }

    @Override
    public Label moved(double dx, double dy) {
        return new Label(text, at.moved(dx, dy), height, angle);
    }
}
