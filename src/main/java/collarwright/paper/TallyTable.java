package collarwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A box to tick for every stick that is run, ten in a row. */
final class TallyTable {

    /** Fewer sticks are ticked in the table of programs. */
    private static final int LEAST = 4;

    private static final int TEN = 10;

    /** With more sticks a box stands for ten. */
    private static final int MOST = 300;

    private TallyTable() {}

    static Optional<Grid> of(int sticks) {
        if (sticks < LEAST) {
            return Optional.empty();
        }
        int each = sticks > MOST ? TEN : 1;
        List<Column> columns = new ArrayList<>(List.of(Column.words("sticks")));
        for (int i = 1; i <= TEN; i++) {
            columns.add(Column.marks(Integer.toString(i * each)));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (int first = 1; first <= sticks; first += TEN * each) {
            int last = StrictMath.min(sticks, first + TEN * each - 1);
            List<Cell> row = new ArrayList<>(List.of(Cell.strong(first == last ? "" + first : first + "-" + last)));
            for (int i = 0; i < TEN; i++) {
                row.add(first + i * each <= sticks ? Cell.tick() : Cell.of(""));
            }
            rows.add(row);
        }
        String what = each == 1 ? "a box for every stick" : "a box for every ten sticks";
        return Optional.of(new Grid("Tally, " + what + " that is run with all of its programs", columns, rows));
    }
}
