package collarwright.picture;

import collarwright.machining.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Numbers and patterns of collars that are too narrow in a picture to hold them: below the stick, in rows that no label and
 * no line to another label crosses. Where not every collar has room, neighbours of one pattern share a label; the first and
 * the last come before those between.
 */
final class StickLabels {

    /** Rows for labels of single collars, and of neighbours together. */
    private static final int ROWS = 2;

    private static final int MOST_ROWS = 4;

    private static final double APART = 1.6;

    private final Lettering letters = Lettering.load();
    private final double least;
    private final double most;
    private final List<Placed> placed = new ArrayList<>();

    /**
     * A label that has its place.
     *
     * @param text such as {@code 3 CA} or {@code 4-9 CB}
     * @param x its middle
     * @param half half its width
     * @param from left side of what it names
     * @param to right side of it
     * @param row from 0, nearest to the stick
     */
    record Placed(String text, double x, double half, double from, double to, int row) {

        /** Where its line comes down. */
        double tip() {
            return (from + to) / 2;
        }

        private boolean covers(double at) {
            return StrictMath.abs(at - x) < half + APART / 2;
        }

        private boolean clear(Placed other) {
            if (row == other.row) {
                return StrictMath.abs(x - other.x) >= half + other.half + APART;
            }
            return row > other.row ? !other.covers(tip()) : !covers(other.tip());
        }
    }

    private StickLabels(double least, double most) {
        this.least = least;
        this.most = most;
    }

    /**
     * Places labels.
     *
     * @param load what lies on the stick
     * @param left where a collar begins in the picture, by its number
     * @param right where it ends
     * @param least where a label may begin
     * @param most where a label may end
     * @return one for each collar; else one for each stretch of a pattern that has room
     */
    static List<Placed> of(Load load, IntToDoubleFunction left, IntToDoubleFunction right, double least, double most) {
        StickLabels each = new StickLabels(least, most);
        boolean all = true;
        for (int i = 1; i <= load.collars(); i++) {
            Load.Stretch one = new Load.Stretch(i, i, load.pattern(i));
            all = all && each.place(one, left, right, ROWS);
        }
        if (all) {
            return List.copyOf(each.placed);
        }
        StickLabels shared = new StickLabels(least, most);
        List<Load.Stretch> stretches = load.stretches();
        int last = stretches.size() - 1;
        shared.place(stretches.get(0), left, right, MOST_ROWS);
        if (last > 0) {
            shared.place(stretches.get(last), left, right, MOST_ROWS);
        }
        for (int i = 1; i < last; i++) {
            shared.place(stretches.get(i), left, right, MOST_ROWS);
        }
        return List.copyOf(shared.placed);
    }

    private boolean place(Load.Stretch stretch, IntToDoubleFunction left, IntToDoubleFunction right, int rows) {
        String text = stretch.text();
        double half = letters.width(text, Label.SIZE) / 2;
        double from = left.applyAsDouble(stretch.first());
        double to = right.applyAsDouble(stretch.last());
        double x = StrictMath.max(least + half, StrictMath.min(most - half, (from + to) / 2));
        for (int row = 0; row < rows; row++) {
            Placed label = new Placed(text, x, half, from, to, row);
            Optional<Placed> meets =
                    placed.stream().filter(p -> !label.clear(p)).findFirst();
            if (meets.isEmpty()) {
                placed.add(label);
                return true;
            }
        }
        return false;
    }
}
