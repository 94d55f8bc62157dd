package collarwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sets letters on a wrap where there is room for them, as large as fits. A builder's tool: it changes as letters are
 * placed.
 */
final class Lettering {
    private static final double APART = 6;
    private static final double LINE_GAP = 0.7;

    private final Drawing drawing;
    private final FreeSpace space;
    private final List<Box> placed = new ArrayList<>();

    Lettering(Drawing drawing, FreeSpace space) {
        this.drawing = drawing;
        this.space = space;
    }

    /** Some labels that belong together. */
    private record Block(List<Label> labels) {
        Box bounds() {
            return labels.stream().map(Label::bounds).reduce(Box::with).orElseThrow();
        }

        Block moved(Point to) {
            return new Block(
                    labels.stream().map(label -> label.moved(to.x(), to.y())).toList());
        }

        static Block stacked(String first, double height, String second, double secondHeight) {
            double up = secondHeight * (1 + LINE_GAP);
            return new Block(List.of(Label.of(first, height, 0, up), Label.of(second, secondHeight, 0, 0)));
        }

        static Block beside(String first, double height, String second, double secondHeight) {
            double x = StrokeFont.width(first, height) + APART;
            return new Block(List.of(Label.of(first, height, 0, 0), Label.of(second, secondHeight, x, 0)));
        }
    }

    /** Sets a label where it stands. */
    void set(Label label) {
        drawing.add(Role.MARK, label);
        Box box = label.bounds();
        space.takeLetters(box);
        placed.add(box);
    }

    /** Sets a label where it stands, if there is room. */
    boolean setIfFree(Label label) {
        boolean free = space.isFree(label.bounds());
        if (free) {
            set(label);
        }
        return free;
    }

    /** Sets a label as near to where it stands as there is room, within a reach to the left and right. */
    boolean setNear(Label label, double reach) {
        return setNear(new Block(List.of(label)), reach);
    }

    private boolean setNear(Block block, double reach) {
        Box best = block.bounds();
        Optional<Box> box = space.nearest(best, reach, space.height());
        box.ifPresent(b ->
                block.labels().forEach(label -> set(label.moved(b.left() - best.left(), b.bottom() - best.bottom()))));
        return box.isPresent();
    }

    /** Sets two texts near a point, one under or beside the other, the first one as large as fits. */
    boolean setPairNear(String first, String second, List<Double> heights, Point near, double reach) {
        for (double height : heights) {
            double less = StrictMath.min(height, StrictMath.max(height / 2, 3.5));
            Block stacked = Block.stacked(first, height, second, less).moved(near);
            Block beside = Block.beside(first, height, second, less).moved(near);
            if (setNear(stacked, reach) || setNear(beside, reach)) {
                return true;
            }
        }
        return false;
    }

    /** Sets a line of letters inside a hole, above or below its cross, as large as fits. */
    boolean setInside(FreeSpace.Placed hole, String text, List<Double> heights, double from) {
        for (double height : heights) {
            for (int step = 0; 0.5 * step <= 2 * height + 2; step++) {
                double d = 0.5 * step;
                double base = hole.centre().y() + (from > 0 ? from + d : from - height - d);
                Label label = Label.centred(text, height, hole.centre().x(), base);
                if (space.isFreeInside(hole, label.bounds())) {
                    set(label);
                    return true;
                }
            }
        }
        return false;
    }

    /** Returns what an upright line has to make way for, from below. */
    List<Box> crossedBy(double x) {
        return placed.stream()
                .map(box -> box.grown(0.8))
                .filter(box -> box.left() <= x && x <= box.right())
                .sorted(Comparator.comparingDouble(Box::bottom))
                .toList();
    }
}
