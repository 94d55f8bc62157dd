package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps account of where on a wrap there is still room for a mark. A builder's tool: it changes as marks are placed. */
final class FreeSpace {
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
            return outline.meets(box.moved(-centre.x(), -centre.y()), FROM_HOLE);
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

    /** Tells whether a box lies on the wrap, outside all holes and clear of what is placed. */
    boolean isFree(Box box) {
        return region.holds(box) && holes.stream().noneMatch(h -> h.meets(box)) && isUntaken(box);
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
        int across = (int) StrictMath.ceil(reachAcross / STEP);
        int up = (int) StrictMath.ceil(reachUp / STEP);
        Optional<Box> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = -across; i <= across; i++) {
            for (int j = -up; j <= up; j++) {
                double cost = StrictMath.abs(i) + StrictMath.abs(j);
                if (cost < least) {
                    Box box = shape.moved(i * STEP, j * STEP);
                    if (isFree(box)) {
                        least = cost;
                        best = Optional.of(box);
                    }
                }
            }
        }
        return best;
    }
}
