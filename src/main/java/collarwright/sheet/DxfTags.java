package collarwright.sheet;

import collarwright.units.Decimals;
import java.util.Locale;

/**
 * Writes DXF tags: a group code on one line, its value on the next. Lines end in CR LF, as the programs do that the
 * format comes from; every reader tried takes that.
 */
final class DxfTags {
    private static final String END = "\r\n";
    private static final int DECIMALS = 4;
    private static final int DEGREE_DECIMALS = 8;

    private final StringBuilder out = new StringBuilder();

    DxfTags text(int code, String value) {
        out.append(code).append(END).append(value).append(END);
        return this;
    }

    DxfTags whole(int code, int value) {
        return text(code, Integer.toString(value));
    }

    /** A handle or a pointer to one. */
    DxfTags handle(int code, int handle) {
        return text(code, Integer.toHexString(handle).toUpperCase(Locale.ROOT));
    }

    /** A length or another plain number. */
    DxfTags number(int code, double value) {
        return text(code, real(value, DECIMALS));
    }

    DxfTags degrees(int code, double angleDegrees) {
        return text(code, real(angleDegrees, DEGREE_DECIMALS));
    }

    DxfTags bulge(int code, double value) {
        return text(code, real(value, DEGREE_DECIMALS));
    }

    // Without idle zeros, but with a point, so that it is seen to be a real number.
    private static String real(double value, int decimals) {
        String digits = Decimals.trimmed(value, decimals);
        return digits.contains(".") ? digits : digits + ".0";
    }

    /** A point on the plane z = 0. */
    DxfTags point(int code, double x, double y) {
        return number(code, x).number(code + 10, y).text(code + 20, "0.0");
    }

    /** A point without z. */
    DxfTags flat(int code, double x, double y) {
        return number(code, x).number(code + 10, y);
    }

    DxfTags start(String section) {
        return text(0, "SECTION").text(2, section);
    }

    DxfTags end() {
        return text(0, "ENDSEC");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
