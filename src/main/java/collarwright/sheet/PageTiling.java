package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * How a drawing is spread over pages. Neighbours overlap by {@link #OVERLAP} on the sheet; the overlap keeps clear of
 * holes where it can, so that no hole has to be pieced together.
 *
 * @param landscape whether the pages lie on their long side
 * @param area what is spread, on the sheet
 * @param acrosses middles of the overlaps of pages side by side, ascending in x
 * @param downs middles of the overlaps of pages above one another, descending in y
 */
record PageTiling(boolean landscape, Box area, List<Double> acrosses, List<Double> downs) {
    static final double OVERLAP = 10;

    private static final double HALF = OVERLAP / 2;
    private static final double STEP = 0.5;

    PageTiling {
        acrosses = List.copyOf(acrosses);
        downs = List.copyOf(downs);
    }

    /**
     * The room for a drawing on a page, sheet millimetres.
     *
     * @param width across
     * @param height up
     */
    record Room(double width, double height) {}

    /**
     * A stretch that a join should keep clear of.
     *
     * @param from one end
     * @param to the other, larger
     */
    private record Stretch(double from, double to) {}

    /**
     * A register cross.
     *
     * @param at its place on the sheet
     * @param letter the same for all crosses of one join
     */
    record Cross(Point at, String letter) {}

    /**
     * Chooses the orientation with fewer pages, landscape if both are alike.
     *
     * @param area what is spread
     * @param holes what should not be cut apart
     * @param landscape room on a lying page
     * @param portrait room on a standing page
     * @throws IllegalArgumentException if a page has no room beside its furniture
     */
    static PageTiling of(Box area, List<Box> holes, Room landscape, Room portrait) {
        PageTiling lying = of(true, area, holes, landscape);
        PageTiling standing = of(false, area, holes, portrait);
        return standing.count() < lying.count() ? standing : lying;
    }

    private static PageTiling of(boolean landscape, Box area, List<Box> holes, Room room) {
        List<Stretch> wide =
                holes.stream().map(h -> new Stretch(h.left(), h.right())).toList();
        // Rows run down: y is counted from the top.
        List<Stretch> high = holes.stream()
                .map(h -> new Stretch(area.top() - h.top(), area.top() - h.bottom()))
                .toList();
        List<Double> downs = joins(0, area.height(), room.height(), high).stream()
                .map(d -> area.top() - d)
                .toList();
        return new PageTiling(landscape, area, joins(area.left(), area.right(), room.width(), wide), downs);
    }

    private static List<Double> joins(double from, double to, double room, List<Stretch> holes) {
        if (!(room > 2 * OVERLAP)) {
            throw new IllegalArgumentException("a page has no room for a drawing: " + room + " mm");
        }
        double length = to - from;
        int count = (int) StrictMath.max(1, StrictMath.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9));
        List<Double> joins = new ArrayList<>();
        double start = from;
        for (int i = 1; i < count; i++) {
            int left = count - i;
            double high = start + room - HALF;
            double low = to + HALF - (left * room - (left - 1) * OVERLAP);
            double join = nearestClear(from + length * i / count, low, high, holes);
            joins.add(join);
            start = join - HALF;
        }
        return joins;
    }

    // Alternates to both sides of the even share, within what the pages can hold.
    private static double nearestClear(double even, double low, double high, List<Stretch> holes) {
        double best = StrictMath.max(low, StrictMath.min(high, even));
        for (int k = 0; k * STEP <= high - low; k++) {
            for (double join : new double[] {best - k * STEP, best + k * STEP}) {
                boolean clear = holes.stream().noneMatch(h -> h.from() < join + HALF + 1 && h.to() > join - HALF - 1);
                if (join >= low && join <= high && clear) {
                    return join;
                }
            }
        }
        return best;
    }

    int columns() {
        return acrosses.size() + 1;
    }

    int rows() {
        return downs.size() + 1;
    }

    int count() {
        return columns() * rows();
    }

    /** The height of the tallest tile. */
    double tallest() {
        double most = 0;
        for (int page = 0; page < count(); page += columns()) {
            most = StrictMath.max(most, tile(page).height());
        }
        return most;
    }

    /** The part of the sheet on a page; pages run left to right, then down. */
    Box tile(int page) {
        int column = page % columns();
        int row = page / columns();
        double left = column == 0 ? area.left() : acrosses.get(column - 1) - HALF;
        double right = column == columns() - 1 ? area.right() : acrosses.get(column) + HALF;
        double top = row == 0 ? area.top() : downs.get(row - 1) + HALF;
        double bottom = row == rows() - 1 ? area.bottom() : downs.get(row) - HALF;
        return new Box(left, bottom, right, top);
    }

    /**
     * Places the register crosses: in the middle of every overlap, near the edges of the area and where overlaps cross.
     *
     * @param inX how far from the left and right edge
     * @param inY how far from the upper and lower edge
     */
    List<Cross> crosses(double inX, double inY) {
        List<Cross> crosses = new ArrayList<>();
        List<Double> heights = new ArrayList<>(List.of(area.top() - inY, area.bottom() + inY));
        heights.addAll(downs);
        for (int i = 0; i < acrosses.size(); i++) {
            for (double y : heights) {
                crosses.add(new Cross(new Point(acrosses.get(i), y), letter(i)));
            }
        }
        for (int i = 0; i < downs.size(); i++) {
            for (double x : List.of(area.left() + inX, area.right() - inX)) {
                crosses.add(new Cross(new Point(x, downs.get(i)), letter(acrosses.size() + i)));
            }
        }
        return List.copyOf(crosses);
    }

    private static String letter(int index) {
        return Character.toString((char) ('A' + index % 26));
    }
}
