package collarwright.pack;

import collarwright.job.CsvForm;
import java.util.List;

/**
 * A table of a pack: one description, from which the file of separated values and the sheet of the workbook are printed.
 *
 * @param heads names of the columns, with their units
 * @param rows from the first line down, each with as many cells as there are heads
 */
public record Table(List<String> heads, List<List<Cell>> rows) {

    /** Checks and keeps the rows. */
    public Table {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        for (List<Cell> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException(
                        "a row of " + row.size() + " cells under " + heads.size() + " heads");
            }
        }
    }

    /** What stands in one cell. */
    public sealed interface Cell {}

    /**
     * Words or an id.
     *
     * @param value may be empty, and hold any sign
     */
    public record Text(String value) implements Cell {}

    /**
     * A count.
     *
     * @param value any
     */
    public record Whole(long value) implements Cell {}

    /**
     * A measure.
     *
     * @param value finite
     * @param decimals how many are shown, 0 or more
     */
    public record Measure(double value, int decimals) implements Cell {

        /** Refuses what is no number. */
        public Measure {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("not a finite number: " + value);
            }
        }
    }

    /** Nothing: there is none of it. */
    public record Empty() implements Cell {}

    /**
     * Prints the table as separated values.
     *
     * @param form separator and decimal sign
     * @return the file's bytes
     */
    public byte[] csv(CsvForm form) {
        return new CsvPrinter(form).print(this);
    }
}
