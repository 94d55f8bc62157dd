package collarwright.picture;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The pen of all pictures: draws lines, areas and letters on a Graphics2D whose unit is a millimetre.
 *
 * <p>Letters go as outlines to the same Graphics2D, or to whoever wants to write them as text. What was written is kept,
 * so that labels can make way for each other.
 */
public final class Sketch {

    /** How many degrees one curve of an arc spans at most, in rad. */
    private static final double ARC_STEP = StrictMath.PI / 4;

    private static final double PAD = 0.5;

    private final Graphics2D graphics;
    private final Lettering letters;
    private final Consumer<Written> writer;
    private final List<Written> written = new ArrayList<>();

    private Sketch(Graphics2D graphics, Lettering letters, Consumer<Written> writer) {
        this.graphics = graphics;
        this.letters = letters;
        this.writer = writer;
    }

    /**
     * A pen that draws letters as outlines.
     *
     * @param graphics what to draw on, its unit a millimetre
     * @param letters the typeface
     * @return the pen
     */
    public static Sketch on(Graphics2D graphics, Lettering letters) {
        return new Sketch(graphics, letters, text -> {
            Path2D outline = letters.outline(text.text(), text.x(), text.baseline(), text.size());
            graphics.setPaint(text.ink().color());
            graphics.fill(outline);
            if (text.bold()) {
                graphics.setStroke(
                        Stroking.solid(Lettering.BOLD * text.size(), text.ink()).toStroke());
                graphics.draw(outline);
            }
        });
    }

    /**
     * A pen that leaves letters to someone else.
     *
     * @param graphics what to draw on, its unit a millimetre
     * @param letters the typeface
     * @param writer is handed every text
     * @return the pen
     */
    public static Sketch on(Graphics2D graphics, Lettering letters, Consumer<Written> writer) {
        return new Sketch(graphics, letters, writer);
    }

    /**
     * Returns what was written.
     *
     * @return every text so far, in order
     */
    public List<Written> written() {
        return List.copyOf(written);
    }

    /**
     * Draws a line.
     *
     * @param style how
     * @param from its start
     * @param to its end
     */
    public void line(Stroking style, Spot from, Spot to) {
        draw(style, new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
    }

    /**
     * Draws the outline of a shape.
     *
     * @param style how
     * @param shape the shape
     */
    public void draw(Stroking style, Shape shape) {
        graphics.setPaint(style.ink().color());
        graphics.setStroke(style.toStroke());
        graphics.draw(shape);
    }

    /**
     * Fills a shape.
     *
     * @param ink its colour
     * @param shape the shape
     */
    public void fill(Ink ink, Shape shape) {
        graphics.setPaint(ink.color());
        graphics.fill(shape);
    }

    /**
     * Makes a circle.
     *
     * @param centre its centre
     * @param radius its radius
     * @return the circle as a shape
     */
    public static Shape circle(Spot centre, double radius) {
        return new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
    }

    /**
     * Makes a chain of lines.
     *
     * @param spots at least two
     * @param closed whether it returns to its start
     * @return the chain as a shape
     */
    public static Path2D chain(List<Spot> spots, boolean closed) {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(spots.get(0).x(), spots.get(0).y());
        for (Spot spot : spots.subList(1, spots.size())) {
            path.lineTo(spot.x(), spot.y());
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    /**
     * Adds an arc to a path, from where the path is if it is anywhere.
     *
     * @param path the path
     * @param centre centre of the arc
     * @param radius its radius
     * @param from azimuth of its start: 0 up, clockwise
     * @param to azimuth of its end; less than {@code from} for an arc that runs anticlockwise
     */
    public static void arc(Path2D path, Spot centre, double radius, double from, double to) {
        int steps = (int) StrictMath.max(1, StrictMath.ceil(StrictMath.abs(to - from) / ARC_STEP - 1e-9));
        double step = (to - from) / steps;
        // Distance of the control points for a curve that meets the circle at its middle too.
        double reach = 4.0 / 3 * StrictMath.tan(step / 4) * radius;
        Spot start = centre.polar(radius, from);
        if (path.getCurrentPoint() == null) {
            path.moveTo(start.x(), start.y());
        } else {
            path.lineTo(start.x(), start.y());
        }
        for (int i = 0; i < steps; i++) {
            double begin = from + i * step;
            double end = begin + step;
            Spot a = centre.polar(radius, begin).polar(reach, begin + StrictMath.PI / 2);
            Spot c = centre.polar(radius, end);
            Spot b = c.polar(-reach, end + StrictMath.PI / 2);
            path.curveTo(a.x(), a.y(), b.x(), b.y(), c.x(), c.y());
        }
    }

    /**
     * Draws an arrow's head.
     *
     * @param ink its colour
     * @param tip where it points to
     * @param heading azimuth it points in: 0 up, clockwise
     */
    public void arrow(Ink ink, Spot tip, double heading) {
        Spot back = tip.polar(-2.4, heading);
        Spot left = back.polar(0.55, heading - StrictMath.PI / 2);
        Spot right = back.polar(0.55, heading + StrictMath.PI / 2);
        fill(ink, chain(List.of(tip, left, right), true));
    }

    /**
     * Writes a label.
     *
     * @param label what and where
     */
    public void write(Label label) {
        put(label, place(label));
    }

    /**
     * Writes a label if there is room for it.
     *
     * @param label what and where
     * @param gap the room that has to stay to every text written before
     * @return whether it was written
     */
    public boolean writeIfFree(Label label, double gap) {
        Written text = place(label);
        if (written.stream().anyMatch(other -> other.touches(text, gap))) {
            return false;
        }
        put(label, text);
        return true;
    }

    Lettering letters() {
        return letters;
    }

    /**
     * Measures a text at the size of labels.
     *
     * @param text any text
     * @return mm
     */
    public double widthOf(String text) {
        return letters.width(letters.visible(text), Label.SIZE);
    }

    private Written place(Label label) {
        String text = letters.visible(label.text());
        double width = letters.width(text, Label.SIZE);
        double x = switch (label.side()) {
            case LEFT -> label.x();
            case MIDDLE -> label.x() - width / 2;
            case RIGHT -> label.x() - width;
        };
        double baseline = label.y() + Lettering.CAPITAL * Label.SIZE / 2;
        return new Written(text, x, baseline, width, Label.SIZE, label.ink(), label.bold());
    }

    private void put(Label label, Written text) {
        if (label.boxed()) {
            fill(
                    Ink.PAPER,
                    new Rectangle2D.Double(
                            text.x() - PAD,
                            text.top() - PAD,
                            text.width() + 2 * PAD,
                            text.baseline() - text.top() + 2 * PAD));
        }
        written.add(text);
        writer.accept(text);
    }
}
