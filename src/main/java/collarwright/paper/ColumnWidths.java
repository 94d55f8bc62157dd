package collarwright.paper;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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
        int count = least.length;
        double[] widths = new double[count];
        double left = room - sum(least);
        if (left <= 0) {
            for (int i = 0; i < count; i++) {
                widths[i] = least[i] * room / sum(least);
            }
            return widths;
        }
        // Those that want little get it first; the others share what is left.
        List<Integer> order = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> whole[i] - least[i])
                        .thenComparing(i -> i))
                .toList();
        for (int n = 0; n < count; n++) {
            int i = order.get(n);
            double more = StrictMath.min(whole[i] - least[i], left / (count - n));
            widths[i] = least[i] + more;
            left -= more;
        }
        for (int i = 0; i < count; i++) {
            widths[i] += left / count;
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
