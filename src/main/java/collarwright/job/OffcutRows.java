package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import collarwright.units.Letters;
import collarwright.units.Quoted;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The inventory of offcuts, as a pack carries it forward and a job reads it: a table of comma or semicolon separated values
 * with a line of column names, one line for each piece. Where semicolons part the cells, decimals may stand after a comma.
 *
 * <p>Columns, in any order: the name of the piece, the name of its stock, its length in mm, and a check
 * (letters that stand for the three; blank for a line written by hand). Others are left alone.
 *
 * @param offcuts the pieces, in the order of the file; those of good lines
 * @param findings what is wrong, all of it: OFFCUT_FILE, JOB_FILE_UNREADABLE
 */
public record OffcutRows(List<CuttingSettings.Offcut> offcuts, List<Finding> findings) {

    /** Heads of the columns, in the order in which they are written. */
    public static final List<String> COLUMNS = List.of("offcut", "stock", "length (mm)", "check");

    private static final int MOST_ROWS = 5000;
    private static final double LONGEST = 100_000;
    private static final int ID_CHARACTERS = 40;

    /** Keeps the lists. */
    public OffcutRows {
        offcuts = List.copyOf(offcuts);
        findings = List.copyOf(findings);
    }

    /**
     * Returns the letters that stand for a line.
     *
     * @param offcut the piece; its length counts to 0.001 mm
     * @return eight letters
     */
    public static String check(CuttingSettings.Offcut offcut) {
        return Letters.of(offcut.id() + "\n" + offcut.stock() + "\n" + Decimals.fixed(offcut.length(), 3));
    }

    /**
     * Reads a file.
     *
     * @param name its name as the job has it
     * @param bytes its content, UTF-8
     * @param stocks names of the stocks that the job cuts; where there are none, nothing is said of a line's stock
     * @return pieces and findings
     */
    static OffcutRows read(String name, byte[] bytes, Set<String> stocks) {
        FindingList findings = new FindingList();
        Reader reader = new Reader(name, stocks, findings);
        TextFile.decode(name, bytes, findings).ifPresent(file -> reader.read(CsvText.of(file.text())));
        return new OffcutRows(reader.offcuts, findings.sorted());
    }

    private static final class Reader {
        private final String name;
        private final Set<String> stocks;
        private final FindingList findings;
        private final List<CuttingSettings.Offcut> offcuts = new ArrayList<>();
        private final Map<String, Integer> columns = new HashMap<>();
        private final Map<String, Integer> lineOf = new HashMap<>();
        private boolean comma;

        Reader(String name, Set<String> stocks, FindingList findings) {
            this.name = name;
            this.stocks = stocks;
            this.findings = findings;
        }

        void read(CsvText table) {
            comma = table.separator() == ';';
            if (table.open().isPresent()) {
                stop(
                        table.open().get(),
                        "a quotation mark at the end of the cell",
                        "none to the end of the file",
                        "add the mark, or take the first one out");
                return;
            }
            if (table.lines().isEmpty() || table.lines().size() > MOST_ROWS) {
                findings.add(Finding.stop(
                        Code.OFFCUT_FILE,
                        new Where.Path(name),
                        "a line of column names, and at most " + MOST_ROWS + " lines",
                        table.lines().isEmpty()
                                ? "an empty file"
                                : table.lines().size() + " lines",
                        "take the file struts/offcuts.csv of the last pack"));
                return;
            }
            List<CsvText.Cell> heads = table.lines().get(0);
            for (int i = 0; i < heads.size(); i++) {
                columns.putIfAbsent(heads.get(i).text().strip().toLowerCase(Locale.ROOT), i);
            }
            List<String> missing = COLUMNS.subList(0, 3).stream()
                    .filter(c -> !columns.containsKey(c))
                    .toList();
            if (!missing.isEmpty()) {
                stop(
                        heads.get(0),
                        "the columns " + String.join(", ", COLUMNS),
                        "no column " + String.join(", ", missing),
                        "take the file struts/offcuts.csv of the last pack",
                        "or write a first line: " + String.join(",", COLUMNS));
                return;
            }
            List<List<CsvText.Cell>> body =
                    table.lines().subList(1, table.lines().size());
            Parting parting = new Parting(table.separator(), heads.size());
            parting.wrong(body).ifPresent(w -> stop(w.first(), w.expected(), w.found(), w.hint()));
            body.stream().filter(parting::holds).forEach(this::row);
        }

        private void row(List<CsvText.Cell> line) {
            CsvText.Cell idCell = cell(line, "offcut");
            CsvText.Cell stockCell = cell(line, "stock");
            CsvText.Cell lengthCell = cell(line, "length (mm)");
            String id = idCell.text().strip();
            String stock = stockCell.text().strip();
            boolean named = id(idCell, id);
            boolean known = stocks.isEmpty() || stocks.contains(stock);
            if (!known) {
                stop(
                        stockCell,
                        "a stock of this job: " + String.join(", ", stocks),
                        Quoted.text(stock),
                        "take the inventory of this stock, or the line out",
                        "a stock given in place is called by its material and size, such as steel 26.7 x 2.6 mm");
            }
            Optional<Double> length = length(lengthCell);
            if (!named || !known || length.isEmpty()) {
                return;
            }
            CuttingSettings.Offcut offcut = new CuttingSettings.Offcut(id, stock, length.get());
            if (columns.containsKey("check")) {
                checked(cell(line, "check"), offcut);
            }
            offcuts.add(offcut);
        }

        private boolean id(CsvText.Cell cell, String id) {
            boolean printable = id.codePoints().allMatch(Quoted::printable);
            if (!printable || id.isEmpty() || id.length() > ID_CHARACTERS || !Character.isLetter(id.codePointAt(0))) {
                stop(
                        cell,
                        "a name of 1 to " + ID_CHARACTERS + " characters that begins with a letter",
                        Quoted.text(id),
                        "write a name on the piece, and here");
                return false;
            }
            Integer before = lineOf.putIfAbsent(id, cell.line());
            if (before != null) {
                stop(
                        cell,
                        "each name once",
                        id + ", which stands in line " + before + " already",
                        "look which of the two is there, and take the other line out");
                return false;
            }
            return true;
        }

        private Optional<Double> length(CsvText.Cell cell) {
            String text = cell.text().strip();
            String plain = comma ? text.replace(',', '.') : text;
            double length = plain.matches("[0-9]{1,7}(\\.[0-9]{1,9})?") ? Double.parseDouble(plain) : -1;
            if (length > 0 && length <= LONGEST) {
                return Optional.of(length);
            }
            stop(
                    cell,
                    comma
                            ? "a length in mm above 0 and up to 100000, in digits"
                            : "a length in mm above 0 and up to 100000, in digits with a point",
                    text.isEmpty() ? "nothing" : Quoted.text(text),
                    "measure the piece and write its length in mm");
            return Optional.empty();
        }

        // What a program wrote has its letters; what a person changed has wrong ones, or none.
        private void checked(CsvText.Cell cell, CuttingSettings.Offcut offcut) {
            String letters = cell.text().strip();
            if (!letters.isEmpty() && !letters.equals(OffcutRows.check(offcut))) {
                stop(
                        cell,
                        "the letters that belong to " + offcut.id() + " of " + offcut.stock() + ", "
                                + Decimals.trimmed(offcut.length(), 3) + " mm",
                        letters + ": the line was changed by hand",
                        "measure the piece; where the line is right, leave its check blank",
                        "else take the file struts/offcuts.csv of the last pack again");
            }
        }

        private CsvText.Cell cell(List<CsvText.Cell> line, String column) {
            int at = columns.getOrDefault(column, 0);
            CsvText.Cell last = line.get(line.size() - 1);
            return at < line.size() ? line.get(at) : new CsvText.Cell("", last.line(), last.column());
        }

        private void stop(CsvText.Cell cell, String expected, String found, String... hints) {
            findings.add(Finding.stop(
                    Code.OFFCUT_FILE, new Where.Text(name, cell.line(), cell.column()), expected, found, hints));
        }
    }
}
