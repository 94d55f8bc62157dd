package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.LengthUnit;
import collarwright.units.Quoted;
import collarwright.units.Spelling;
import collarwright.units.Together;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * Reads one TOML file by its tables and keys, and finds everything that is wrong in it.
 *
 * <p>Use: {@link #open}, then ask the root and its tables for every key that the file may have, then {@link #finish}:
 * whatever was never asked for is reported as unknown, whatever was needed and is not there as missing.
 */
public final class TomlReader {

    /** The units that bare numbers may be in, by the word in {@code units = "…"}. */
    private static final Map<String, LengthUnit> BARE_UNITS = bareUnits();

    private final TextFile file;
    private final FindingList findings;
    private final TableView root;
    private final LengthUnit bareUnit;
    private final boolean broken;
    private final List<TableView> views = new ArrayList<>();
    private final List<Missing> missing = new ArrayList<>();

    private record Missing(TableView table, String key, String expected, String hint) {}

    private TomlReader(TextFile file, TomlParseResult toml, FindingList findings) {
        this.file = file;
        this.findings = findings;
        this.broken = toml.hasErrors();
        this.root = new TableView(this, toml, "", new Where.Text(file.name(), 1, 1));
        this.bareUnit = root.key("units").word(BARE_UNITS).orElse(LengthUnit.MM);
    }

    /**
     * Opens a file. The key {@code units} at its top says what bare numbers are in (mm if it is not there).
     *
     * @param file the text
     * @param findings takes the findings: JOB_SYNTAX and JOB_BAD_NUMBER for what is not TOML, then those of the views
     * @return the reader; empty if so much is broken that nothing more can be said about the rest
     */
    public static Optional<TomlReader> open(TextFile file, FindingList findings) {
        return open(file, Toml.parse(file.text()), findings);
    }

    /**
     * Opens several files, which are parsed at the same time.
     *
     * @param files the texts
     * @param findings takes the findings, file by file
     * @return a reader for each, in the order of the files; empty where so much is broken that nothing more can be said
     */
    static List<Optional<TomlReader>> open(List<TextFile> files, FindingList findings) {
        List<Supplier<TomlParseResult>> parsers = new ArrayList<>();
        files.forEach(file -> parsers.add(() -> Toml.parse(file.text())));
        List<TomlParseResult> parsed = Together.all(parsers);
        List<Optional<TomlReader>> readers = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            readers.add(open(files.get(i), parsed.get(i), findings));
        }
        return readers;
    }

    private static Optional<TomlReader> open(TextFile file, TomlParseResult toml, FindingList findings) {
        boolean readable = SyntaxFindings.add(file, toml.errors(), findings);
        return readable ? Optional.of(new TomlReader(file, toml, findings)) : Optional.empty();
    }

    /**
     * Returns the table of the whole file.
     *
     * @return the root
     */
    public TableView root() {
        return root;
    }

    /** Reports keys that nobody asked for and needed keys that are not there. */
    public void finish() {
        views.forEach(this::reportUnknown);
        for (Missing gap : missing) {
            // Where the text is broken the key may stand in the broken part; where it is misspelt that was said.
            if (!broken && !misspelt(gap)) {
                findings.add(Finding.stop(
                        Code.JOB_KEY_MISSING,
                        gap.table.where(),
                        gap.table.pathOf(gap.key) + ": " + gap.expected,
                        "nothing",
                        gap.hint));
            }
        }
        views.clear();
        missing.clear();
    }

    private boolean misspelt(Missing gap) {
        return gap.table.unknown().stream()
                .anyMatch(key -> nearest(gap.table, key).contains(gap.key));
    }

    private void reportUnknown(TableView view) {
        for (String key : view.unknown()) {
            List<String> near = nearest(view, key);
            String hint = near.isEmpty()
                    ? "take the line out; " + view.place() + " has the keys " + String.join(", ", view.asked())
                    : "did you mean " + String.join(" or ", near) + "?";
            findings.add(Finding.stop(
                    Code.JOB_UNKNOWN_KEY,
                    view.keyPlace(key),
                    "a key that " + view.place() + " has",
                    Quoted.bare(view.pathOf(key)),
                    hint));
        }
    }

    private static List<String> nearest(TableView view, String key) {
        return Spelling.nearest(key, view.asked(), 2);
    }

    /**
     * Returns the unit of bare numbers.
     *
     * @return mm unless the file says otherwise
     */
    public LengthUnit bareUnit() {
        return bareUnit;
    }

    void register(TableView view) {
        views.add(view);
    }

    void missing(TableView table, String key, String expected, String hint) {
        missing.add(new Missing(table, key, expected, hint));
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    Where.Text at(int line, int column) {
        return new Where.Text(file.name(), line, column);
    }

    private static Map<String, LengthUnit> bareUnits() {
        Map<String, LengthUnit> units = new LinkedHashMap<>();
        for (LengthUnit unit : LengthUnit.values()) {
            units.put(unit.symbol(), unit);
        }
        return java.util.Collections.unmodifiableMap(units);
    }
}
