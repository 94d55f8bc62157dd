package collarwright.job;

import collarwright.units.Quoted;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Shows values of a TOML file to a person. */
final class TomlValues {

    private TomlValues() {}

    /**
     * Shows a value with its kind.
     *
     * @param value what the TOML parser returns
     * @return such as {@code "3" (text)} or {@code a list of 2}
     */
    static String shown(Object value) {
        if (value instanceof String text) {
            return Quoted.text(text) + " (text)";
        }
        if (value instanceof TomlTable) {
            return "a table";
        }
        if (value instanceof TomlArray array) {
            return "a list of " + array.size();
        }
        if (value instanceof Double number) {
            return Quoted.number(number) + " (a number)";
        }
        if (value instanceof Long || value instanceof Boolean) {
            return value + (value instanceof Long ? " (a number)" : " (yes or no)");
        }
        return value + " (a date or a time)";
    }

    /**
     * Says how to write what is expected.
     *
     * @param value what stands there
     * @param expected what should
     * @return a hint
     */
    static String hint(Object value, String expected) {
        if (expected.startsWith("text") && (value instanceof Number || value instanceof Boolean)) {
            return "set it in quotation marks: \"" + value + "\"";
        }
        if (expected.startsWith("a table")) {
            return "write { key = value, … }";
        }
        if (value instanceof TomlArray) {
            return "write one value, without [ and ]";
        }
        if (value instanceof String && (expected.contains("number") || expected.startsWith("true"))) {
            return "write " + expected + ", without quotation marks";
        }
        return "write " + expected;
    }
}
