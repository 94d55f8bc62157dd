package collarwright.job;

import collarwright.units.Paper;

/**
 * A sheet of labels as it is bought. The first label stands at the top left; lengths from the paper's top left corner.
 *
 * @param paper the sheet's size
 * @param columns labels side by side, 1 or more
 * @param rows labels one above the other, 1 or more
 * @param width of a label, {@link #LEAST_WIDTH} or more
 * @param height of a label, {@link #LEAST_HEIGHT} or more
 * @param left from the paper's edge to the first label
 * @param top from the paper's edge to the first label
 * @param pitchX from the left edge of a label to that of the next; at least the width
 * @param pitchY from the top edge of a label to that of the next; at least the height
 * @param nudgeX how far a printer has to be helped to the right; below 0 to the left
 * @param nudgeY how far it has to be helped down; below 0 up
 */
public record LabelSheet(
        Paper paper,
        int columns,
        int rows,
        double width,
        double height,
        double left,
        double top,
        double pitchX,
        double pitchY,
        double nudgeX,
        double nudgeY) {

    /** The narrowest label on which everything stands at the least size of letters. Our choice, held by a test. */
    public static final double LEAST_WIDTH = 50;

    /** The lowest label. */
    public static final double LEAST_HEIGHT = 20;

    /** How far print stays from a label's edge. Our choice, no source. */
    public static final double PAD = 2.5;

    /** The widest nudge: a printer that is further off is set right. Our choice, no source. */
    public static final double MOST_NUDGE = 5;

    private static final double SAME = 1e-6;

    /** Checks that the labels lie on the paper and not over each other. */
    public LabelSheet {
        boolean labels = columns >= 1
                && rows >= 1
                && width >= LEAST_WIDTH - SAME
                && height >= LEAST_HEIGHT - SAME
                && pitchX >= width - SAME
                && pitchY >= height - SAME;
        boolean fits = left >= -SAME
                && top >= -SAME
                && left + (columns - 1) * pitchX + width <= paper.shortSide() + SAME
                && top + (rows - 1) * pitchY + height <= paper.longSide() + SAME;
        boolean near = StrictMath.abs(nudgeX) <= MOST_NUDGE + SAME && StrictMath.abs(nudgeY) <= MOST_NUDGE + SAME;
        if (!labels || !fits || !near) {
            throw new IllegalArgumentException("labels beside the paper or over each other");
        }
    }

    /**
     * The sheet where the job does not say: 3 × 8 labels of 70 × 36 mm on A4, of 2-1/2 × 1-1/4 in on Letter. Common
     * practice, no source.
     *
     * @param paper which paper
     * @return labels in the middle of it
     */
    public static LabelSheet usual(Paper paper) {
        return paper == Paper.A4
                ? new LabelSheet(paper, 3, 8, 70, 36, 0, 4.5, 70, 36, 0, 0)
                : new LabelSheet(paper, 3, 8, 63.5, 31.75, 12.7, 12.7, 63.5, 31.75, 0, 0);
    }

    /**
     * Counts the labels of a sheet.
     *
     * @return 1 or more
     */
    public int perSheet() {
        return columns * rows;
    }
}
