package collarwright.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The sloping lines of cut material. */
final class Hatching {

    private static final double STEP = 2.2;

    private Hatching() {}

    /** Fills a rectangle with lines at 45°, and draws its edge. */
    static void cut(Sketch sketch, Rectangle2D area) {
        sketch.fill(Ink.TINT, area);
        Path2D.Double lines = new Path2D.Double();
        double least = area.getMinX() + area.getMinY();
        double most = area.getMaxX() + area.getMaxY();
        // Lines x + y = sum, all from one grid, so that two parts of one piece match.
        for (double sum = StrictMath.ceil(least / STEP) * STEP; sum < most; sum += STEP) {
            double fromX = StrictMath.max(area.getMinX(), sum - area.getMaxY());
            double toX = StrictMath.min(area.getMaxX(), sum - area.getMinY());
            lines.moveTo(fromX, sum - fromX);
            lines.lineTo(toX, sum - toX);
        }
        if (lines.getCurrentPoint() != null) {
            sketch.draw(Stroking.thin(), lines);
        }
        sketch.draw(Stroking.edge(), area);
    }
}
