package collarwright.pack;

import collarwright.job.CsvForm;
import collarwright.units.Decimals;
import java.nio.charset.StandardCharsets;

/**
 * Prints a table for spreadsheets: RFC 4180 (quotes doubled, CR LF after every record) with the job's separator and decimal
 * sign, UTF-8 without a byte-order mark, the same under every locale.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, so that a job's title can start
 * nothing on the reader's machine. Numbers are never changed, so a negative one stays a number.
 */
final class CsvPrinter {

    // Also their full-width forms, which some spreadsheets take for the plain ones.
    private static final String FORMULA_STARTS = "=+-@＝＋－＠";

    private final CsvForm form;
    private final StringBuilder text = new StringBuilder();

    CsvPrinter(CsvForm form) {
        this.form = form;
    }

    byte[] print(Table table) {
        for (int i = 0; i < table.heads().size(); i++) {
            part(i);
            words(table.heads().get(i));
        }
        text.append("\r\n");
        for (var row : table.rows()) {
            for (int i = 0; i < row.size(); i++) {
                part(i);
                cell(row.get(i));
            }
            text.append("\r\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void part(int column) {
        if (column > 0) {
            text.append(form.separator());
        }
    }

    private void cell(Table.Cell cell) {
        if (cell instanceof Table.Text words) {
            words(words.value());
        } else if (cell instanceof Table.Whole whole) {
            text.append(whole.value());
        } else if (cell instanceof Table.Measure measure) {
            text.append(Decimals.fixed(measure.value(), measure.decimals()).replace('.', form.decimal()));
        }
    }

    private void words(String value) {
        text.append(quoted(isFormula(value) ? "'" + value : value));
    }

    private static boolean isFormula(String value) {
        if (value.isEmpty()) {
            return false;
        }
        String shown = value.strip();
        boolean controlFirst = value.charAt(0) < ' ';
        return controlFirst || (!shown.isEmpty() && FORMULA_STARTS.indexOf(shown.charAt(0)) >= 0);
    }

    private String quoted(String value) {
        boolean plain = value.chars().noneMatch(c -> c == form.separator() || c == '"' || c == '\r' || c == '\n')
                && value.equals(value.strip());
        return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
