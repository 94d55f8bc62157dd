package collarwright.sheet;

import collarwright.drawing.Box;
import java.util.List;

/**
 * A straight or bent way from one point to another, in mm.
 *
 * @param x1 where it starts
 * @param y1 up
 * @param x2 where it ends
 * @param y2 up
 * @param bulge sagitta by half chord, + counter-clockwise, 0 straight
 */
record DrawnTurn(double x1, double y1, double x2, double y2, double bulge) {

    /** Whether its chord is the way itself, as near as it is read. */
    boolean isFlat() {
        return StrictMath.abs(bulge) * StrictMath.hypot(x2 - x1, y2 - y1) / 2 < DrawnPiece.CHORD_ERROR;
    }

    /** Both halves: an arc's top lies beside the middle of its chord; each half has the bulge of half the angle. */
    List<DrawnTurn> halves() {
        double x = (x1 + x2 + (y2 - y1) * bulge) / 2;
        double y = (y1 + y2 - (x2 - x1) * bulge) / 2;
        double half = bulge / (1 + StrictMath.sqrt(1 + bulge * bulge));
        return List.of(new DrawnTurn(x1, y1, x, y, half), new DrawnTurn(x, y, x2, y2, half));
    }

    /** The least box that holds it, from its ends and where it runs level or upright. */
    Box reach() {
        double left = StrictMath.min(x1, x2);
        double right = StrictMath.max(x1, x2);
        double bottom = StrictMath.min(y1, y2);
        double top = StrictMath.max(y1, y2);
        if (isFlat()) {
            return new Box(left, bottom, right, top);
        }
        double dx = x2 - x1;
        double dy = y2 - y1;
        double off = (bulge - 1 / bulge) / 4;
        double x = (x1 + x2) / 2 + dy * off;
        double y = (y1 + y2) / 2 - dx * off;
        double radius = StrictMath.hypot(dx, dy) * StrictMath.abs(bulge + 1 / bulge) / 4;
        return new Box(
                passes(x - radius, y) ? StrictMath.min(left, x - radius) : left,
                passes(x, y - radius) ? StrictMath.min(bottom, y - radius) : bottom,
                passes(x + radius, y) ? StrictMath.max(right, x + radius) : right,
                passes(x, y + radius) ? StrictMath.max(top, y + radius) : top);
    }

    // Of a point on the whole circle: a way that runs counter-clockwise lies to the right of its chord.
    private boolean passes(double x, double y) {
        return ((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) * bulge < 0;
    }
}
