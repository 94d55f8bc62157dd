package collarwright.job;

/**
 * How tables of comma separated values are written: what parts their cells, and what stands before decimals. Spreadsheets
 * of many countries take a decimal comma, and a semicolon between cells.
 *
 * @param separator comma or semicolon
 * @param decimal point or comma; never what parts the cells
 */
public record CsvForm(char separator, char decimal) {

    /** Comma and point, as RFC 4180 and most programs have them. */
    public static final CsvForm USUAL = new CsvForm(',', '.');

    /** Checks the signs. */
    public CsvForm {
        if (",;".indexOf(separator) < 0 || ".,".indexOf(decimal) < 0 || separator == decimal) {
            throw new IllegalArgumentException("cells parted by '" + separator + "', decimals after '" + decimal + "'");
        }
    }
}
