package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Quoted;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlParseError;

/** Says in plain words what keeps a text from being TOML. */
final class SyntaxFindings {

    private static final Pattern TWICE = Pattern.compile("(.+) previously defined at line (\\d+), column \\d+");
    private static final Pattern UNEXPECTED = Pattern.compile("Unexpected (.+?), expected (.+)", Pattern.DOTALL);
    private static final Pattern HEADER = Pattern.compile("\\s*\\[.*");
    private static final Pattern KEY_AND_VALUE =
            Pattern.compile("\\s*([A-Za-z0-9_.-]+)\\s*=\\s*((?:[^\"'\\[{#\\s][^#]*?)?)\\s*(?:#.*)?");
    private static final Pattern KEY_LINE = Pattern.compile("\\s*[A-Za-z0-9_.-]+\\s*=.*");
    private static final Pattern NUMBER_AND_MORE = Pattern.compile("[+-]?[0-9.][0-9_.]*\\s*[^0-9\\s,].*");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.*");

    private SyntaxFindings() {}

    /**
     * Adds a finding for every error, one a line.
     *
     * @param file the text
     * @param errors what the TOML parser found
     * @param findings takes the findings
     * @return true if the rest of the text can be read all the same
     */
    static boolean add(TextFile file, List<TomlParseError> errors, FindingList findings) {
        Set<Integer> lines = new HashSet<>();
        boolean readable = true;
        for (TomlParseError error : errors) {
            int line = StrictMath.max(1, error.position().line());
            if (lines.add(line)) {
                findings.add(finding(file, error, line));
            }
            readable &= harmless(file.line(line), message(error));
        }
        return readable;
    }

    private static String message(TomlParseError error) {
        return Objects.requireNonNullElse(error.getMessage(), "");
    }

    // After a broken or repeated table header the keys below it would be read as another table's.
    private static boolean harmless(String line, String message) {
        return message.endsWith("is too large")
                || (!HEADER.matcher(line).matches()
                        && (KEY_LINE.matcher(line).matches() || TWICE.matcher(message).matches()));
    }

    private static Finding finding(TextFile file, TomlParseError error, int line) {
        Where where = new Where.Text(file.name(), line, StrictMath.max(1, error.position().column()));
        String message = message(error);
        Matcher twice = TWICE.matcher(message);
        if (twice.matches()) {
            return Finding.stop(
                    Code.JOB_SYNTAX,
                    where,
                    twice.group(1) + " only once",
                    twice.group(1) + " again; it stands in line " + twice.group(2) + " already",
                    "keep the one you mean and take the other out");
        }
        if (message.endsWith("is too large")) {
            return Finding.stop(
                    Code.JOB_BAD_NUMBER,
                    where,
                    "a number that can be counted with",
                    "a number that is too large",
                    "check the number of digits and the power of ten");
        }
        Matcher value = KEY_AND_VALUE.matcher(file.line(line));
        return value.matches()
                ? valueFinding(where, value.group(1), value.group(2), message)
                : plainFinding(where, message);
    }

    private static Finding valueFinding(Where where, String key, String value, String message) {
        if (value.isEmpty()) {
            return Finding.stop(
                    Code.JOB_SYNTAX, where, key + " = a value", "nothing after the =", "write the value, or take the line out");
        }
        if (DECIMAL_COMMA.matcher(value).matches()) {
            String pointed = value.replaceFirst(",", ".");
            return Finding.stop(
                    Code.JOB_SYNTAX,
                    where,
                    key + " = a number with a decimal point",
                    Quoted.bare(value) + ", with a comma",
                    "write " + key + " = " + (pointed.matches("[\\d.+-]+") ? pointed : '"' + pointed + '"'));
        }
        if (value.indexOf('=') >= 0) {
            return Finding.stop(
                    Code.JOB_SYNTAX,
                    where,
                    "one key = value on a line",
                    Quoted.bare(key + " = " + value),
                    "put the second one on a line of its own");
        }
        if (NUMBER_AND_MORE.matcher(value).matches() || Character.isLetter(value.codePointAt(0))) {
            return Finding.stop(
                    Code.JOB_SYNTAX,
                    where,
                    key + " = a bare number, or text in quotation marks",
                    Quoted.bare(value) + ", without them",
                    "write " + key + " = " + inQuotes(value));
        }
        return plainFinding(where, message);
    }

    private static String inQuotes(String value) {
        if (value.equalsIgnoreCase("true") || value.equalsIgnoreCase("false")) {
            return value.toLowerCase(Locale.ROOT);
        }
        String shown = Quoted.bare(value);
        if (shown.indexOf('"') < 0) {
            return '"' + shown + '"';
        }
        return shown.indexOf('\'') < 0 ? "'" + shown + "'" : '"' + shown.replace("\"", "\\\"") + '"';
    }

    private static Finding plainFinding(Where where, String message) {
        Matcher unexpected = UNEXPECTED.matcher(message);
        String expected = unexpected.matches() ? unexpected.group(2) : "text that follows the rules of TOML";
        String found = unexpected.matches() ? unexpected.group(1) : message;
        return Finding.stop(
                Code.JOB_SYNTAX,
                where,
                plain(expected),
                Quoted.bare(plain(found)),
                hint(message));
    }

    private static String plain(String words) {
        return words.equals(". or =")
                ? "= after the key"
                : words.replace("a newline", "the end of the line")
                        .replace("end-of-input", "the end of the file")
                        .replaceFirst("^end of", "the end of");
    }

    private static String hint(String message) {
        if (message.contains("escape")) {
            return "write \\\\ for a backslash, or set the text in single quotation marks";
        }
        if (message.contains("\\u201") || message.contains("\\u2033") || message.contains("\\u2032")) {
            return "use straight quotation marks: \" or '";
        }
        if (message.contains("Leading zeros")) {
            return "write the number without the 0 in front";
        }
        if (message.contains(", expected \"") || message.contains(", expected '")) {
            return "close the text with the quotation mark it began with";
        }
        if (message.contains("expected ]")) {
            return "close the list or the table's name with ]";
        }
        return "mend this line: a line is key = value, [table], or a # comment";
    }
}
