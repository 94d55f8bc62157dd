package collarwright.cutting;

import java.util.List;

/**
 * Sticks that are cut alike.
 *
 * @param stock what is cut
 * @param runs how many sticks
 * @param portions what is cut from each, long pieces first
 * @param sums where the length of each goes
 */
public record StickLayout(StockLength stock, int runs, List<Portion> portions, Sums sums) {

    /** Keeps the list. */
    public StickLayout {
        portions = List.copyOf(portions);
        if (runs < 1 || portions.isEmpty()) {
            throw new IllegalArgumentException("a layout has sticks, and pieces on them");
        }
    }

    /**
     * Equal pieces of one stick.
     *
     * @param piece index in the task's pieces
     * @param count how many
     */
    public record Portion(int piece, int count) {}

    /**
     * Where the length of one stick goes; the parts add up to it. Whole thousandths of a millimetre.
     *
     * @param length of the stick, rounded down
     * @param trim off the first end, its cut included
     * @param pieces all of them together, each rounded up
     * @param cuts how many cuts part pieces, without that of the trim
     * @param kerf what these cuts take
     * @param lastCut what the last of them takes where less than a cut is left for it; else 0
     * @param remainder what is left, its bad end included
     */
    public record Sums(
            double length, double trim, double pieces, int cuts, double kerf, double lastCut, double remainder) {}

    /**
     * Tells how many cuts of a stick are as wide as the saw cuts.
     *
     * @return all of them; one less where the last ends with the stick and takes only what is left
     */
    public int wholeCuts() {
        return sums.lastCut > 0 ? sums.cuts - 1 : sums.cuts;
    }

    /**
     * Returns the pieces of one stick.
     *
     * @return how many
     */
    public int pieces() {
        return portions.stream().mapToInt(Portion::count).sum();
    }

    static StickLayout of(CuttingTask task, StockLength stock, int runs, List<Portion> portions) {
        SawSettings saw = task.saw();
        long kerf = Grains.up(saw.kerf());
        long trim = Grains.up(saw.trimFirst());
        long length = Grains.down(stock.length());
        long sum = 0;
        int count = 0;
        for (Portion portion : portions) {
            sum += portion.count()
                    * Grains.up(task.pieces().get(portion.piece()).length());
            count += portion.count();
        }
        long rest = length - trim - sum - (count - 1) * kerf;
        long last = StrictMath.min(rest, kerf);
        if (rest < saw.heldGrains() + (saw.grip() > 0 ? kerf : 0)) {
            throw new IllegalStateException(stock.id() + ": more on the stick than it holds");
        }
        int cuts = rest == 0 ? count - 1 : count;
        Sums sums = new Sums(
                Grains.mm(length),
                Grains.mm(trim),
                Grains.mm(sum),
                cuts,
                Grains.mm((count - 1) * kerf + last),
                Grains.mm(last < kerf ? last : 0),
                Grains.mm(rest - last));
        return new StickLayout(stock, runs, portions, sums);
    }
}
