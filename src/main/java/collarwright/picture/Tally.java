package collarwright.picture;

import collarwright.kit.Stripes;
import java.awt.geom.Rectangle2D;

/** The stripes of a strut type, as they are painted on the strut: upright bars side by side. */
final class Tally {

    static final double HEIGHT = 2.6;

    private static final double WIDE = 1.5;
    private static final double NARROW = 0.5;
    private static final double GAP = 0.7;

    private Tally() {}

    static double width(Stripes stripes) {
        int bars = stripes.wide() + stripes.narrow();
        return bars == 0 ? 0 : stripes.wide() * WIDE + stripes.narrow() * NARROW + (bars - 1) * GAP;
    }

    /** Paints the bars around a point. */
    static void paint(Sketch sketch, Spot middle, Stripes stripes) {
        double x = middle.x() - width(stripes) / 2;
        for (int i = 0; i < stripes.wide() + stripes.narrow(); i++) {
            double bar = i < stripes.wide() ? WIDE : NARROW;
            sketch.fill(Ink.INK, new Rectangle2D.Double(x, middle.y() - HEIGHT / 2, bar, HEIGHT));
            x += bar + GAP;
        }
    }
}
