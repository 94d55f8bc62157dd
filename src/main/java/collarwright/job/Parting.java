package collarwright.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds lines of a table that are not parted as its first line is: numbers with decimal commas between cells that commas
 * part, or lines with the other separator. Each is told once for all its lines, since every cell behind it has slipped.
 *
 * @param separator of the first line, comma or semicolon
 * @param columns cells of the first line, 1 or more
 */
record Parting(char separator, int columns) {

    /**
     * What is wrong.
     *
     * @param first the first such line's first cell, or its first cell too many
     * @param expected how lines have to be
     * @param found what they are
     * @param hint what to do
     */
    record Wrong(CsvText.Cell first, String expected, String found, String hint) {}

    /**
     * Tells whether a line is parted as the first one is.
     *
     * @param line its cells
     * @return false where the cells cannot be told to columns
     */
    boolean holds(List<CsvText.Cell> line) {
        return !mixed(line) && !longer(line);
    }

    /**
     * Says once what is wrong with the lines of a table.
     *
     * @param lines all lines below the column names
     * @return empty if every line holds
     */
    Optional<Wrong> wrong(List<List<CsvText.Cell>> lines) {
        char other = other();
        Optional<Wrong> mixed = wrong(
                lines,
                this::mixed,
                0,
                "the separator of the first line, " + separator + ", in every line",
                "parted by " + other,
                "write " + other + " in the first line too, or " + separator + " in every line; with decimal commas ;"
                        + " is the one to take");
        return mixed.or(() -> wrong(
                lines,
                this::longer,
                columns,
                "no more cells than the " + columns + " of the first line",
                "with more",
                separator == ','
                        ? "where numbers have decimal commas, separate the cells with ; in every line, the first one too"
                        : "take the cells beyond the last column out, or give their column a name"));
    }

    private static Optional<Wrong> wrong(
            List<List<CsvText.Cell>> lines,
            Predicate<List<CsvText.Cell>> fault,
            int at,
            String expected,
            String found,
            String hint) {
        List<List<CsvText.Cell>> faulty = lines.stream().filter(fault).toList();
        return faulty.isEmpty()
                ? Optional.empty()
                : Optional.of(new Wrong(
                        faulty.get(0).get(at),
                        expected,
                        faulty.size() + (faulty.size() == 1 ? " line " : " lines ") + found,
                        hint));
    }

    private char other() {
        return separator == ',' ? ';' : ',';
    }

    // A note may hold the other sign, and decimal commas stand between semicolons: only a line that is short of cells
    // for
    // it counts.
    private boolean mixed(List<CsvText.Cell> line) {
        long others = line.stream()
                .flatMapToInt(c -> c.text().chars())
                .filter(c -> c == other())
                .count();
        return others >= 2 && (separator == ',' ? line.size() < columns : line.size() == 1 && columns > 1);
    }

    private boolean longer(List<CsvText.Cell> line) {
        return line.size() > columns
                && line.subList(columns, line.size()).stream()
                        .anyMatch(c -> !c.text().isBlank());
    }
}
