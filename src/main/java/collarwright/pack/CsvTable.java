package collarwright.pack;

import collarwright.units.Decimals;
import java.nio.charset.StandardCharsets;

/**
 * A table for spreadsheets: RFC 4180 (comma, quotes doubled, CR LF after every record), UTF-8 without a byte-order mark,
 * decimal points under every locale.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, so that a job's title can start
 * nothing on the reader's machine. Numbers are never changed, so a negative one stays a number.
 */
final class CsvTable {

    // Also their full-width forms, which some spreadsheets take for the plain ones.
    private static final String FORMULA_STARTS = "=+-@＝＋－＠";

    private final StringBuilder text = new StringBuilder();
    private final int columns;
    private int column;

    CsvTable(String... heads) {
        columns = heads.length;
        for (String head : heads) {
            text(head);
        }
        endRow();
    }

    CsvTable text(String value) {
        return cell(quoted(isFormula(value) ? "'" + value : value));
    }

    CsvTable whole(long value) {
        return cell(Long.toString(value));
    }

    CsvTable number(double value, int decimals) {
        return cell(Decimals.fixed(value, decimals));
    }

    CsvTable empty() {
        return cell("");
    }

    private CsvTable cell(String ready) {
        if (column > 0) {
            text.append(',');
        }
        text.append(ready);
        column++;
        return this;
    }

    void endRow() {
        if (column != columns) {
            throw new IllegalStateException("a row of " + column + " cells under " + columns + " heads");
        }
        text.append("\r\n");
        column = 0;
    }

    byte[] bytes() {
        if (column != 0) {
            throw new IllegalStateException("the last row is not ended");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static boolean isFormula(String value) {
        if (value.isEmpty()) {
            return false;
        }
        String shown = value.strip();
        boolean controlFirst = value.charAt(0) < ' ';
        return controlFirst || (!shown.isEmpty() && FORMULA_STARTS.indexOf(shown.charAt(0)) >= 0);
    }

    private static String quoted(String value) {
        boolean plain = value.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
                && value.equals(value.strip());
        return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
