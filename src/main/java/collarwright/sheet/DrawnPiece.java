package collarwright.sheet;

import collarwright.drawing.Box;
import java.util.List;

/**
 * A line, an arc or a circle as it was read from a file, on whole ten-thousandths of a millimetre: two ends that were
 * printed alike are the same spot, and which side of a line a spot is on can be told without rounding.
 *
 * @param layer its layer's name
 * @param entity what the file calls it
 * @param line where in the file it starts, from 1
 * @param spots its corners in order; for a circle the last is the first
 * @param curved whether it is an arc or a circle
 * @param reach the least box that holds it, mm
 * @param inside whether it lies in the sheet, off its edges; only then it is split finely and compared further
 */
record DrawnPiece(String layer, String entity, int line, List<Spot> spots, boolean curved, Box reach, boolean inside) {
    /** Spots in a millimetre. */
    static final double GRAIN = 1e4;
    /** The largest coordinate that is read, mm: products of differences still fit a long. */
    static final double FARTHEST = 1e5;
    /** The most by which a chord may stray from its arc, mm. */
    static final double CHORD_ERROR = 0.002;

    DrawnPiece {
        spots = List.copyOf(spots);
    }

    /**
     * A place in the file's drawing.
     *
     * @param x to the right, in ten-thousandths of a millimetre
     * @param y up
     */
    record Spot(long x, long y) {
        static Spot of(double x, double y) {
            return new Spot(StrictMath.round(x * GRAIN), StrictMath.round(y * GRAIN));
        }

        double mmX() {
            return x / GRAIN;
        }

        double mmY() {
            return y / GRAIN;
        }

        double distance(Spot other) {
            return StrictMath.hypot((double) (x - other.x), (double) (y - other.y)) / GRAIN;
        }
    }

    /**
     * Where a piece was read.
     *
     * @param layer its layer
     * @param entity what the file calls it
     * @param line from 1
     */
    record Source(String layer, String entity, int line) {}

    Spot first() {
        return spots.get(0);
    }

    Spot last() {
        return spots.get(spots.size() - 1);
    }

    boolean isClosed() {
        return spots.size() > 2 && first().equals(last());
    }

    /**
     * What the same line drawn twice has twice, whichever way it runs.
     *
     * @param layer its layer, or what stands for several
     * @param from one end
     * @param to the other
     * @param middle between them; for a straight piece one of the ends
     */
    record Likeness(String layer, Spot from, Spot to, Spot middle) {}

    Likeness likeness(String on) {
        Spot a = first();
        Spot b = last();
        boolean swap = a.x() > b.x() || (a.x() == b.x() && a.y() > b.y());
        Spot from = swap ? b : a;
        return new Likeness(on, from, swap ? a : b, curved ? spots.get(spots.size() / 2) : from);
    }

    double length() {
        double length = 0;
        for (int i = 0; i + 1 < spots.size(); i++) {
            length += spots.get(i).distance(spots.get(i + 1));
        }
        return length;
    }
}
