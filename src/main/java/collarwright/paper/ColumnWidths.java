package collarwright.paper;

import java.util.List;

/** How wide the columns of a table are. */
final class ColumnWidths {

    /** Room at both sides of a field. */
    static final double PAD = 1.2;

    private static final double BLANK = 19;
    private static final double TICK = 5;

    private final Wrapping wrapping;

    ColumnWidths(Wrapping wrapping) {
        this.wrapping = wrapping;
    }

    /**
     * Shares out the room: every column gets its longest word; what is left goes to those whose lines are longer; what is
     * left then is shared by all.
     */
    double[] share(Grid grid, double room) {
        int count = grid.columns().size();
        double[] least = new double[count];
        double[] whole = new double[count];
        for (int i = 0; i < count; i++) {
            String title = grid.columns().get(i).title();
            least[i] = wrapping.widestWord(title) + 2 * PAD;
            whole[i] = least[i];
            for (List<Cell> row : grid.rows()) {
                Cell cell = row.get(i);
                least[i] = StrictMath.max(least[i], fixed(cell, wrapping.widestWord(cell.text())) + 2 * PAD);
                whole[i] = StrictMath.max(whole[i], fixed(cell, wrapping.widestLine(cell.text())) + 2 * PAD);
            }
            whole[i] = StrictMath.max(whole[i], least[i]);
        }
        return fit(least, whole, room);
    }

    private static double fixed(Cell cell, double text) {
        return switch (cell.kind()) {
            case BLANK -> BLANK;
            case TICK -> TICK;
            default -> text;
        };
    }

    private static double[] fit(double[] least, double[] whole, double room) {
        double[] widths = new double[least.length];
        double leastSum = sum(least);
        double wholeSum = sum(whole);
        for (int i = 0; i < widths.length; i++) {
            if (leastSum >= room) {
                widths[i] = least[i] * room / leastSum;
            } else if (wholeSum <= room) {
                widths[i] = whole[i] + (room - wholeSum) / widths.length;
            } else {
                widths[i] = least[i] + (room - leastSum) * (whole[i] - least[i]) / (wholeSum - leastSum);
            }
        }
        return widths;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
