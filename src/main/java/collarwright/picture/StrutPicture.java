package collarwright.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A strut with what is measured on it, by the letters of the strut table: L, E1 and E2. Not to scale. */
public final class StrutPicture implements Picture {

    private static final double HIGH = 9;

    private final boolean drilled;
    private final double width;

    /**
     * Prepares the picture.
     *
     * @param drilled whether there is a tie hole near each end
     * @param width mm on paper
     */
    public StrutPicture(boolean drilled, double width) {
        this.drilled = drilled;
        this.width = width;
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return drilled ? 34 : 24;
    }

    @Override
    public String describe() {
        return "A strut: L is its cut length"
                + (drilled ? ", E1 and E2 are the distances of its tie holes from its two cut ends" : "")
                + ". Not to scale.";
    }

    @Override
    public void paint(Sketch sketch) {
        double top = drilled ? 11 : 2;
        double left = 4;
        double right = width - 4;
        double middle = width / 2;
        half(sketch, new Rectangle2D.Double(left, top, middle - left - 2, HIGH));
        half(sketch, new Rectangle2D.Double(middle + 2, top, right - middle - 2, HIGH));
        for (int side = -1; side <= 1; side += 2) {
            breakLine(sketch, middle + 2 * side, top);
        }
        Spot axis = new Spot(left - 3, top + HIGH / 2);
        sketch.line(Stroking.axis(Ink.GREY), axis, axis.plus(right - left + 6, 0));
        double low = top + HIGH + 8;
        for (double x : new double[] {left, right}) {
            sketch.line(Stroking.thin(), new Spot(x, top + HIGH + 1), new Spot(x, low + 1.5));
        }
        Dimensions.across(sketch, new Spot(left, low), new Spot(right, low), "L");
        if (drilled) {
            hole(sketch, left, left + 24, top);
            hole(sketch, right, right - 24, top);
            Dimensions.across(sketch, new Spot(left, 4), new Spot(left + 24, 4), "E1");
            Dimensions.across(sketch, new Spot(right - 24, 4), new Spot(right, 4), "E2");
        }
    }

    private static void half(Sketch sketch, Rectangle2D area) {
        sketch.fill(Ink.PALE, area);
        for (double y : new double[] {area.getMinY(), area.getMaxY()}) {
            sketch.line(Stroking.edge(), new Spot(area.getMinX(), y), new Spot(area.getMaxX(), y));
        }
        boolean onLeft = area.getMinX() < 10;
        double x = onLeft ? area.getMinX() : area.getMaxX();
        sketch.line(Stroking.edge(), new Spot(x, area.getMinY()), new Spot(x, area.getMaxY()));
    }

    private static void breakLine(Sketch sketch, double x, double top) {
        Path2D line = Sketch.chain(
                List.of(
                        new Spot(x, top - 1),
                        new Spot(x, top + HIGH / 2 - 1.5),
                        new Spot(x - 1, top + HIGH / 2 - 0.5),
                        new Spot(x + 1, top + HIGH / 2 + 0.5),
                        new Spot(x, top + HIGH / 2 + 1.5),
                        new Spot(x, top + HIGH + 1)),
                false);
        sketch.draw(Stroking.thin(), line);
    }

    private static void hole(Sketch sketch, double end, double x, double top) {
        var circle = Sketch.circle(new Spot(x, top + HIGH / 2), 1.3);
        sketch.fill(Ink.PAPER, circle);
        sketch.draw(Stroking.edge(), circle);
        sketch.line(Stroking.thin(), new Spot(x, 2.5), new Spot(x, top + HIGH / 2 - 2));
        sketch.line(Stroking.thin(), new Spot(end, 2.5), new Spot(end, top - 1));
    }
}
