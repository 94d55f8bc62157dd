package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps account of where on a wrap there is still room for a mark. A builder's tool: it changes as marks are placed. */
final class FreeSpace {
    /** What stands beside a line keeps this far off. */
    static final double AROUND_LINE = 0.6;

    private static final double STEP = 0.5;
    private static final double FROM_EDGE = 1;
    private static final double FROM_HOLE = 1.2;
    private static final double INSIDE_HOLE = 0.7;
    private static final double LETTERS_ACROSS = 2.5;
    private static final double LETTERS_UP = 1;

    private final Box region;
    private final List<Placed> holes;
    private final List<Box> taken = new ArrayList<>();

    /**
     * A hole with its place.
     *
     * @param outline its shape
     * @param centre its axis on the wrap
     */
    record Placed(HoleOutline outline, Point centre) {
        boolean meets(Box box) {
            double x = StrictMath.max(0, StrictMath.max(box.left() - centre.x(), centre.x() - box.right()));
            return x < halfWidthBeside(box);
        }

        // At the height of the box that is nearest to the axis, where the hole is widest.
        double halfWidthBeside(Box box) {
            double y = StrictMath.max(0, StrictMath.max(box.bottom() - centre.y(), centre.y() - box.top()));
            return outline.halfWidthAt(y, FROM_HOLE);
        }

        boolean holds(Box box) {
            return outline.holds(box.moved(-centre.x(), -centre.y()), INSIDE_HOLE);
        }
    }

    FreeSpace(Box region, List<Placed> holes) {
        this.region = region.grown(-FROM_EDGE);
        this.holes = List.copyOf(holes);
    }

    /** The height of the whole wrap. */
    double height() {
        return region.height();
    }

    /** Takes a place and some room around it, whether it is free or not. */
    void take(Box box, double around) {
        taken.add(box.grown(around));
    }

    /** Takes the place of letters: what stands beside them on a line has to keep further off than what stands above. */
    void takeLetters(Box box) {
        taken.add(new Box(
                box.left() - LETTERS_ACROSS,
                box.bottom() - LETTERS_UP,
                box.right() + LETTERS_ACROSS,
                box.top() + LETTERS_UP));
    }

    /** Tells whether a box lies outside all holes. */
    boolean isOutsideHoles(Box box) {
        return holes.stream().noneMatch(h -> h.meets(box));
    }

    /** Tells whether a box lies on the wrap, outside all holes and clear of what is placed. */
    boolean isFree(Box box) {
        return region.holds(box) && isUntaken(box) && isOutsideHoles(box);
    }

    /** Tells whether a box lies within one hole and clear of what is placed. */
    boolean isFreeInside(Placed hole, Box box) {
        return hole.holds(box) && isUntaken(box);
    }

    private boolean isUntaken(Box box) {
        return taken.stream().noneMatch(box::meets);
    }

    /**
     * Finds room for a mark.
     *
     * @param shape a box of the mark's size around the place where it would be best
     * @param reachAcross how far to the left or right of it the mark may go
     * @param reachUp how far up or down
     * @return the nearest free box of that size, if there is one
     */
    Optional<Box> nearest(Box shape, double reachAcross, double reachUp) {
        int rows = (int) StrictMath.ceil(reachUp / STEP);
        Optional<Box> best = Optional.empty();
        double room = reachAcross;
        // Rows 0, 1, -1, 2, -2 and so on.
        for (int j = 0; j <= 2 * rows; j++) {
            int step = (j + 1) / 2;
            double up = (step * 2 > j ? step : -step) * STEP;
            Box row = shape.moved(0, up);
            if (row.bottom() < region.bottom() || row.top() > region.top()) {
                continue;
            }
            double left = room - (best.isPresent() ? StrictMath.abs(up) : 0);
            Optional<Double> across = nearestInRow(row, left);
            if (across.isPresent()) {
                best = Optional.of(row.moved(across.get(), 0));
                // From now on only what is nearer in all counts.
                room = StrictMath.abs(across.get()) + StrictMath.abs(up) - STEP / 2;
            }
        }
        return best;
    }

    private Optional<Double> nearestInRow(Box row, double reach) {
        double right = firstFree(row, reach, 1);
        double left = firstFree(row, StrictMath.min(reach, right), -1);
        double way = StrictMath.min(right, left);
        return way <= reach ? Optional.of(left < right ? -left : right) : Optional.empty();
    }

    // Walks in one direction, from behind one obstacle to behind the next; infinity if nothing is free within reach.
    private double firstFree(Box row, double reach, int sense) {
        double way = 0;
        while (way <= reach) {
            Box box = row.moved(sense * way, 0);
            double past = past(box, sense);
            if (past <= 0) {
                return way;
            }
            // A little more than needed, so that rounding cannot leave the box where it was.
            way += past + 1e-6;
        }
        return Double.POSITIVE_INFINITY;
    }

    // How far the box has to go to pass what it meets; 0 if it meets nothing, infinity if it can only leave the wrap.
    private double past(Box box, int sense) {
        double out = sense > 0 ? box.right() - region.right() : region.left() - box.left();
        if (out > 0) {
            return Double.POSITIVE_INFINITY;
        }
        double past = sense > 0 ? region.left() - box.left() : box.right() - region.right();
        for (Box other : taken) {
            if (box.meets(other)) {
                past = StrictMath.max(past, sense > 0 ? other.right() - box.left() : box.right() - other.left());
                past = StrictMath.max(past, Double.MIN_NORMAL);
            }
        }
        for (Placed hole : holes) {
            if (hole.meets(box)) {
                double edge = hole.centre().x() + sense * hole.halfWidthBeside(box);
                past = StrictMath.max(past, sense > 0 ? edge - box.left() : box.right() - edge);
            }
        }
        return past;
    }
}
