package collarwright.pack;

import collarwright.plan.Plan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The tables of a pack in one workbook: a sheet for each, heads that stay in sight, units in the heads, numbers as numbers
 * and everything else as text, so that no id can become a date or a number.
 *
 * <p>Numbers have 15 significant digits, which is what spreadsheets keep (ECMA-376 stores them as IEEE 754 doubles), and are
 * shown with the decimals of the tables. Revision and job stand on the first sheet instead of in every row.
 *
 * <p>Source of the form: ECMA-376-1, 5th edition 2016, Office Open XML File Formats, part 1 (SpreadsheetML).
 */
final class PackBook {

    /** Where it stands in a pack. */
    static final String FILE = "plan.xlsx";

    /** What it is for. */
    static final String PURPOSE = "all tables in one workbook for spreadsheets, a sheet for each";

    /** Sheets of more rows are slow in most spreadsheets: they stand as CSV only. Our choice, no source. */
    static final int MOST_ROWS = 50_000;

    private static final Set<String> IN_EVERY_ROW = Set.of("revision", "job");
    private static final MathContext DIGITS = new MathContext(15);
    private static final int WIDEST = 48;
    private static final int MOST_SIGNS = 32_767;

    private PackBook() {}

    /**
     * One sheet.
     *
     * @param name up to 31 letters, digits and blanks
     * @param table what stands on it
     */
    record Part(String name, Table table) {}

    /**
     * Prints the workbook.
     *
     * @param plan the plan
     * @param parts the sheets in their order, one or more
     * @return the file's bytes
     */
    static byte[] print(Plan plan, List<Part> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 18);
        try {
            Workbook book = new Workbook(bytes, "collarwright", null);
            for (Part part : parts) {
                Worksheet sheet = book.newWorksheet(part.name());
                boolean fits = part.table().rows().size() <= MOST_ROWS;
                print(sheet, fits ? part.table() : elsewhere(part.table()));
            }
            book.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return FixedZip.of(bytes.toByteArray(), plan.job().title());
    }

    private static Table elsewhere(Table table) {
        TableBuilder told = new TableBuilder("too long for this workbook");
        told.text(table.rows().size() + " rows: see the CSV file of the pack, or plan.json")
                .endRow();
        return told.table();
    }

    private static void print(Worksheet sheet, Table table) {
        int columns = columns(table);
        for (int c = 0; c < columns; c++) {
            sheet.value(0, c, table.heads().get(c).replace("(deg)", "(°)"));
            sheet.style(0, c).bold().wrapText(true).verticalAlignment("top").set();
            sheet.width(c, width(table, c));
        }
        for (int r = 0; r < table.rows().size(); r++) {
            for (int c = 0; c < columns; c++) {
                print(sheet, r + 1, c, table.rows().get(r).get(c));
            }
        }
        sheet.freezePane(1, 1);
        sheet.repeatRows(0);
    }

    /** What every row of a CSV file ends with says nothing in a workbook that has it on its first sheet. */
    static int columns(Table table) {
        int columns = table.heads().size();
        while (columns > 1 && IN_EVERY_ROW.contains(table.heads().get(columns - 1))) {
            columns--;
        }
        return columns;
    }

    private static void print(Worksheet sheet, int row, int column, Table.Cell cell) {
        if (cell instanceof Table.Text text) {
            if (!text.value().isEmpty()) {
                String whole = text.value();
                sheet.value(row, column, whole.substring(0, StrictMath.min(whole.length(), MOST_SIGNS)));
                sheet.style(row, column).format("@").set();
            }
        } else if (cell instanceof Table.Whole whole) {
            sheet.value(row, column, whole.value());
            sheet.style(row, column).format("0").set();
        } else if (cell instanceof Table.Measure measure) {
            // The exact value of the double, rounded: a decimal that no version of Java prints otherwise.
            sheet.value(row, column, new BigDecimal(measure.value()).round(DIGITS));
            sheet.style(row, column)
                    .format(measure.decimals() == 0 ? "0" : "0." + "0".repeat(measure.decimals()))
                    .set();
        }
    }

    // As wide as the longest word of the head and the longest cell, in characters.
    private static double width(Table table, int column) {
        int widest = 8;
        for (String word : table.heads().get(column).split(" ")) {
            widest = StrictMath.max(widest, word.length());
        }
        for (List<Table.Cell> row : table.rows()) {
            if (row.get(column) instanceof Table.Text text) {
                widest = StrictMath.max(widest, StrictMath.min(text.value().length(), WIDEST));
            }
        }
        return widest + 2.0;
    }
}
