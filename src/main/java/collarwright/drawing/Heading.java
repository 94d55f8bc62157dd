package collarwright.drawing;

import java.util.List;

/**
 * What a sheet says about itself to a person. Any script is allowed here; printers show what their font has.
 *
 * @param drawing what is drawn, such as {@code Wrap template CA}
 * @param job the job's title as the shop wrote it
 * @param revision the job's revision, 8 letters
 * @param notes sentences for the reader, the most important first
 * @param table a table for the reader, row by row, the first row being its heads; may be empty
 */
public record Heading(String drawing, String job, String revision, List<String> notes, List<List<String>> table) {
    /** Keeps the lists, and checks that the table is a rectangle. */
    public Heading {
        notes = List.copyOf(notes);
        table = table.stream().map(List::copyOf).toList();
        if (table.stream().mapToInt(List::size).distinct().count() > 1) {
            throw new IllegalArgumentException("rows of different length");
        }
    }
}
