package collarwright.pack;

import java.util.ArrayList;
import java.util.List;

/** Fills a table cell by cell. */
final class TableBuilder {

    private static final Table.Cell NOTHING = new Table.Empty();

    private final List<String> heads;
    private final List<List<Table.Cell>> rows = new ArrayList<>();
    private List<Table.Cell> row = new ArrayList<>();

    TableBuilder(String... heads) {
        this.heads = List.of(heads);
    }

    TableBuilder text(String value) {
        return cell(new Table.Text(value));
    }

    TableBuilder whole(long value) {
        return cell(new Table.Whole(value));
    }

    TableBuilder number(double value, int decimals) {
        return cell(new Table.Measure(value, decimals));
    }

    TableBuilder empty() {
        return cell(NOTHING);
    }

    private TableBuilder cell(Table.Cell cell) {
        row.add(cell);
        return this;
    }

    void endRow() {
        rows.add(List.copyOf(row));
        row = new ArrayList<>(heads.size());
    }

    Table table() {
        if (!row.isEmpty()) {
            throw new IllegalStateException("the last row is not ended");
        }
        return new Table(heads, rows);
    }
}
