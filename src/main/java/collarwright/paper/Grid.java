package collarwright.paper;

import java.util.List;

/**
 * A table, the same for every paper.
 *
 * @param caption what it shows
 * @param columns from left to right
 * @param rows from top to bottom, each with a field for every column; the first field names the row
 */
record Grid(String caption, List<Column> columns, List<List<Cell>> rows) {
    Grid {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(caption + ": a row has " + row.size() + " fields");
            }
        }
    }
}
