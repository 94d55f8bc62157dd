package collarwright.cutting;

import java.util.List;

/**
 * Which piece is cut from which stick.
 *
 * @param task what was asked
 * @param layouts offcuts first, then new sticks, long ones first; most runs first within a length
 * @param uncut pieces for which there is no stock, by index of the task's pieces; none where all are cut
 * @param proof how good the plan is
 */
public record CutPlan(CuttingTask task, List<StickLayout> layouts, List<Integer> uncut, CutProof proof) {

    /** Keeps the lists. */
    public CutPlan {
        layouts = List.copyOf(layouts);
        uncut = List.copyOf(uncut);
        if (!uncut.isEmpty() && uncut.size() != task.pieces().size()) {
            throw new IllegalArgumentException("a number for each kind of piece, or none at all");
        }
    }

    /**
     * Returns how many new sticks are cut.
     *
     * @return without offcuts
     */
    public int newSticks() {
        return layouts.stream()
                .filter(l -> !l.stock().offcut())
                .mapToInt(StickLayout::runs)
                .sum();
    }

    /**
     * Returns how many offcuts are cut.
     *
     * @return those from other work
     */
    public int offcutsUsed() {
        return layouts.stream()
                .filter(l -> l.stock().offcut())
                .mapToInt(StickLayout::runs)
                .sum();
    }

    /**
     * Returns how many sticks of one stock are cut.
     *
     * @param stock one of the task's
     * @return 0 where none is
     */
    public int taken(StockLength stock) {
        return layouts.stream()
                .filter(l -> l.stock().equals(stock))
                .mapToInt(StickLayout::runs)
                .sum();
    }

    /**
     * Returns how often a stop is set: once for each length of each layout.
     *
     * @return number of settings
     */
    public int stopSettings() {
        return layouts.stream().mapToInt(l -> l.portions().size()).sum();
    }

    /**
     * Returns the length of all sticks that are cut.
     *
     * @return mm, offcuts included
     */
    public double stickLength() {
        return layouts.stream().mapToDouble(l -> l.runs() * l.stock().length()).sum();
    }
}
