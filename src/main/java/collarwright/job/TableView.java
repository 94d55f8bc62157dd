package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.LengthUnit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** A table of a TOML file, asked key by key. It remembers what it was asked for; the rest is unknown. */
public final class TableView {

    private final TomlReader reader;
    private final TomlTable table;
    private final String path;
    private final Where where;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> later = new LinkedHashSet<>();

    TableView(TomlReader reader, TomlTable table, String path, Where where) {
        this.reader = reader;
        this.table = table;
        this.path = path;
        this.where = where;
        reader.register(this);
    }

    /**
     * Returns a key that may be there.
     *
     * @param name the key
     * @return what stands there, or nothing
     */
    public KeyView key(String name) {
        asked.add(name);
        List<String> one = List.of(name);
        return new KeyView(reader, pathOf(name), valuePlace(name), Optional.ofNullable(table.get(one)));
    }

    /**
     * Returns a key that has to be there; JOB_KEY_MISSING if it is not.
     *
     * @param name the key
     * @param expected what it should hold, for a person
     * @param example a line that would do
     * @return what stands there, or nothing after a finding
     */
    public KeyView need(String name, String expected, String example) {
        KeyView key = key(name);
        if (!key.present()) {
            reader.missing(this, name, expected, "write a line such as: " + example);
        }
        return key;
    }

    /**
     * Returns a table that may be there.
     *
     * @param name the table's name
     * @return the table; empty if it is not there or is no table (then with a finding)
     */
    public Optional<TableView> table(String name) {
        KeyView key = key(name);
        return key.present() ? key.table() : Optional.empty();
    }

    /**
     * Returns a table that has to be there; JOB_KEY_MISSING if it is not.
     *
     * @param name the table's name
     * @param expected what it should hold, for a person
     * @return the table, or empty after a finding
     */
    public Optional<TableView> needTable(String name, String expected) {
        KeyView key = key(name);
        if (!key.present()) {
            reader.missing(this, name, expected, "write the table [" + pathOf(name) + "] with its keys");
            return Optional.empty();
        }
        return key.table();
    }

    /**
     * Refuses a key that is planned but not built: JOB_NOT_IN_THIS_VERSION if it is there.
     *
     * @param name the key
     * @param instead what to do today
     */
    public void later(String name, String instead) {
        boolean named = asked.contains(name);
        KeyView key = key(name);
        if (!named) {
            // Known, but never offered where a key is misspelt.
            asked.remove(name);
            later.add(name);
        }
        if (key.present()) {
            key.notInThisVersion("no key of this name", instead);
        }
    }

    /**
     * Adds a stop finding at the table itself.
     *
     * @param code its kind
     * @param expected what should be there
     * @param found what is there
     * @param hints what to do, the best first
     */
    public void stop(Code code, String expected, String found, String... hints) {
        reader.add(Finding.stop(code, where, expected, found, hints));
    }

    /**
     * Returns the table's place.
     *
     * @return where its header or brace stands; line 1 for the whole file
     */
    public Where where() {
        return where;
    }

    /**
     * Returns the unit of bare numbers in this file.
     *
     * @return mm unless the file says otherwise
     */
    public LengthUnit bareUnit() {
        return reader.bareUnit();
    }

    /** Adds a finding that has its own place. */
    void add(Finding finding) {
        reader.add(finding);
    }

    /** The keys that stand in the table, in the order of the text. */
    List<String> names() {
        return List.copyOf(table.keySet());
    }

    String place() {
        return path.isEmpty() ? "the file" : "[" + path + "]";
    }

    String pathOf(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Keys that stand in the table and were never asked for, in the order of the text. */
    List<String> unknown() {
        return table.keySet().stream()
                .filter(key -> !asked.contains(key) && !later.contains(key))
                .toList();
    }

    List<String> asked() {
        return List.copyOf(asked);
    }

    Where keyPlace(String name) {
        return place(table.inputPositionOf(List.of(name)));
    }

    private Where valuePlace(String name) {
        var entry = table.entry(List.of(name));
        TomlPosition value = entry == null ? null : entry.value().position();
        return value == null ? keyPlace(name) : place(value);
    }

    private Where place(@Nullable TomlPosition position) {
        return position == null ? where : reader.at(position.line(), position.column());
    }
}
