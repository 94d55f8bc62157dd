package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.Percents;
import collarwright.units.Quoted;
import collarwright.units.Reading;
import collarwright.units.Refusal;
import collarwright.units.Spelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * What stands at one key or in one place of a list, taken as the kind of value that belongs there. Every method returns
 * empty if nothing is there, and empty with a finding at the exact place if something else is.
 */
public final class KeyView {

    private final TomlReader reader;
    private final String path;
    private final Where where;
    private final Optional<Object> value;

    KeyView(TomlReader reader, String path, Where where, Optional<Object> value) {
        this.reader = reader;
        this.path = path;
        this.where = where;
        this.value = value;
    }

    /**
     * Tells whether something stands there.
     *
     * @return true for any value
     */
    public boolean present() {
        return value.isPresent();
    }

    /**
     * Returns the place of the value.
     *
     * @return the place of the table if nothing stands there
     */
    public Where where() {
        return where;
    }

    /**
     * Returns the key with its tables.
     *
     * @return such as {@code strut.tie-hole.diameter}
     */
    public String path() {
        return path;
    }

    /**
     * Tells whether a table stands there.
     *
     * @return true for {@code { … }} and for {@code [name]}
     */
    public boolean isTable() {
        return value.filter(TomlTable.class::isInstance).isPresent();
    }

    /**
     * Tells whether a text stands there.
     *
     * @return true for anything in quotation marks
     */
    public boolean isText() {
        return value.filter(String.class::isInstance).isPresent();
    }

    /**
     * Shows the value with its kind.
     *
     * @return such as {@code 0.5 (a number)}
     */
    public String shown() {
        return value.map(TomlValues::shown).orElse("nothing");
    }

    /**
     * Takes the value as text.
     *
     * @return the text
     */
    public Optional<String> text() {
        return take(String.class, "text in quotation marks");
    }

    /**
     * Takes the value as yes or no.
     *
     * @return true or false
     */
    public Optional<Boolean> flag() {
        return take(Boolean.class, "true or false");
    }

    /**
     * Takes the value as one of several words; JOB_UNKNOWN_WORD if it is another.
     *
     * @param words what each word stands for, in the order in which a person should see them
     * @param <T> what they stand for
     * @return what the word stands for
     */
    public <T> Optional<T> word(Map<String, T> words) {
        String expected = "one of the words " + String.join(", ", words.keySet());
        Optional<String> word = take(String.class, expected);
        if (word.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> meaning = Optional.ofNullable(words.get(word.get()));
        if (meaning.isEmpty()) {
            unknownWord(word.get(), expected, words);
        }
        return meaning;
    }

    /**
     * Takes the value as one of a few words, of which this version has built only some: one that it has not is a stop.
     *
     * @param built each word, true if it is built; the first one is what to write instead
     */
    public void builtWord(Map<String, Boolean> built) {
        List<String> words = List.copyOf(built.keySet());
        List<String> here =
                words.stream().filter(w -> built.getOrDefault(w, false)).toList();
        List<String> later = words.stream().filter(w -> !here.contains(w)).toList();
        String all = String.join(" or ", here) + " (not in this version: " + String.join(", ", later) + ")";
        String instead = "write " + path.substring(path.lastIndexOf('.') + 1) + " = " + Quoted.text(here.get(0));
        take(String.class, "the word " + all).filter(w -> !here.contains(w)).ifPresent(word -> {
            if (later.contains(word)) {
                notInThisVersion(here.get(0), instead);
            } else {
                stop(Code.JOB_UNKNOWN_WORD, "the word " + all, Quoted.text(word), instead);
            }
        });
    }

    private void unknownWord(String word, String expected, Map<String, ?> words) {
        List<String> near = Spelling.nearest(word, words.keySet(), 2);
        String hint = near.isEmpty() ? "write one of these words" : "did you mean " + String.join(" or ", near) + "?";
        stop(Code.JOB_UNKNOWN_WORD, expected, Quoted.text(word), hint);
    }

    /**
     * Takes the value as a whole number.
     *
     * @param least the least that is allowed
     * @param most the most that is allowed
     * @return the number
     */
    public Optional<Integer> wholeNumber(int least, int most) {
        String expected = "a whole number from " + least + " to " + most;
        Optional<Long> number = take(Long.class, expected);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        long given = number.get();
        if (given < least || given > most) {
            stop(Code.JOB_OUT_OF_RANGE, expected, given + "", "the nearest is " + (given < least ? least : most));
            return Optional.empty();
        }
        return Optional.of((int) given);
    }

    /**
     * Takes the value as a number without a unit.
     *
     * @param least the least that is allowed
     * @param most the most that is allowed
     * @return the number; −0 comes as 0
     */
    public Optional<Double> number(double least, double most) {
        String expected = "a number from " + Decimals.trimmed(least, 6) + " to " + Decimals.trimmed(most, 6);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (!(value.get() instanceof Number number)) {
            wrongType(expected);
            return Optional.empty();
        }
        double given = number.doubleValue() + 0.0;
        if (!Double.isFinite(given)) {
            stop(Code.JOB_BAD_NUMBER, expected, Quoted.number(given), "write the number in digits");
            return Optional.empty();
        }
        if (given < least || given > most) {
            String nearest = Decimals.trimmed(given < least ? least : most, 6);
            stop(Code.JOB_OUT_OF_RANGE, expected, Quoted.number(given), "the nearest is " + nearest);
            return Optional.empty();
        }
        return Optional.of(given);
    }

    /**
     * Takes the value as a length; a bare number is in the file's unit.
     *
     * @param zero whether 0 may stand there
     * @return the length
     */
    public Optional<Length> length(Length.Zero zero) {
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Object given = value.get();
        if (given instanceof String text) {
            return taken(Length.parse(text, reader.bareUnit(), zero), Code.JOB_BAD_LENGTH);
        }
        if (given instanceof Number number) {
            return taken(Length.from(number.doubleValue(), reader.bareUnit(), zero), Code.JOB_BAD_LENGTH);
        }
        wrongType(zero == Length.Zero.REFUSED ? "a length above 0" : "a length");
        return Optional.empty();
    }

    /**
     * Takes the value as a length above 0.
     *
     * @return mm
     */
    public Optional<Double> size() {
        return length(Length.Zero.REFUSED).map(Length::mm);
    }

    /**
     * Takes the value as a length above 0 or as two of them, the least and the most.
     *
     * @return the interval with its middle as the nominal value
     */
    public Optional<Interval> interval() {
        return value.filter(TomlArray.class::isInstance).isPresent()
                ? Intervals.between(this)
                : size().map(Interval::of);
    }

    /**
     * Takes the value as an angle; a bare number is in degrees.
     *
     * @param leastDegrees the least that is allowed
     * @param mostDegrees the most that is allowed
     * @return radians
     */
    public Optional<Double> angle(double leastDegrees, double mostDegrees) {
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> degrees = value.get() instanceof String text
                ? taken(Angles.parseDegrees(text), Code.JOB_BAD_NUMBER)
                : number(-1e9, 1e9);
        if (degrees.isPresent() && (degrees.get() < leastDegrees || degrees.get() > mostDegrees)) {
            String nearest = Decimals.trimmed(degrees.get() < leastDegrees ? leastDegrees : mostDegrees, 6);
            stop(
                    Code.JOB_OUT_OF_RANGE,
                    "an angle from " + Decimals.trimmed(leastDegrees, 6) + "° to " + Decimals.trimmed(mostDegrees, 6)
                            + "°",
                    Decimals.trimmed(degrees.get(), 6) + "°",
                    "the nearest is " + nearest + "°");
            return Optional.empty();
        }
        return degrees.map(d -> Angles.radians(d + 0.0));
    }

    /**
     * Takes the value as a share in percent.
     *
     * @return percent, 0 to 100
     */
    public Optional<Double> percent() {
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get() instanceof String text) {
            return taken(Percents.parse(text), Code.JOB_BAD_NUMBER);
        }
        if (value.get() instanceof Number number) {
            return taken(Percents.from(number.doubleValue()), Code.JOB_BAD_NUMBER);
        }
        wrongType("a share from 0 to 100 %, such as \"3 %\"");
        return Optional.empty();
    }

    /**
     * Takes the value as a list; a single value counts as a list of one.
     *
     * @return the items in their order, each with its own place; empty if nothing is there
     */
    public List<KeyView> items() {
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof TomlArray array)) {
            return List.of(this);
        }
        List<KeyView> items = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            TomlPosition at = array.inputPositionOf(i);
            Where place = at == null ? where : reader.at(at.line(), at.column());
            items.add(new KeyView(reader, path + "[" + (i + 1) + "]", place, Optional.of(array.get(i))));
        }
        return List.copyOf(items);
    }

    /**
     * Takes the value as a table.
     *
     * @return the table
     */
    public Optional<TableView> table() {
        return take(TomlTable.class, "a table").map(table -> new TableView(reader, table, path, where));
    }

    /**
     * Refuses the value because this version has not built it: JOB_NOT_IN_THIS_VERSION.
     *
     * @param expected what this version can do
     * @param instead what to do today
     */
    public void notInThisVersion(String expected, String instead) {
        stop(Code.JOB_NOT_IN_THIS_VERSION, expected + " in this version", shown(), instead);
    }

    /**
     * Adds a stop finding at the value.
     *
     * @param code its kind
     * @param expected what should be there
     * @param found what is there
     * @param hints what to do, the best first
     */
    public void stop(Code code, String expected, String found, String... hints) {
        reader.add(Finding.stop(code, where, path + ": " + expected, found, hints));
    }

    /**
     * Adds a warning at the value.
     *
     * @param code its kind
     * @param expected what should be there
     * @param found what is there
     * @param hints what to do, the best first
     */
    public void warn(Code code, String expected, String found, String... hints) {
        reader.add(Finding.warn(code, where, path + ": " + expected, found, hints));
    }

    /** Adds a note at the value. */
    void note(Code code, String expected, String found, String... hints) {
        reader.add(Finding.note(code, where, path + ": " + expected, found, hints));
    }

    private <T> Optional<T> taken(Reading<T> reading, Code unreadable) {
        reading.refusal()
                .ifPresent(why -> reader.add(new Finding(
                        Level.STOP,
                        code(why.fault(), unreadable),
                        where,
                        path + ": " + why.expected(),
                        why.found(),
                        why.hints())));
        return reading.found();
    }

    private static Code code(Refusal.Fault fault, Code unreadable) {
        return switch (fault) {
            case UNREADABLE -> unreadable;
            case NOT_A_NUMBER -> Code.JOB_BAD_NUMBER;
            case OUT_OF_RANGE -> Code.JOB_OUT_OF_RANGE;
        };
    }

    private <T> Optional<T> take(Class<T> kind, String expected) {
        if (value.isPresent() && !kind.isInstance(value.get())) {
            wrongType(expected);
            return Optional.empty();
        }
        return value.map(kind::cast);
    }

    private void wrongType(String expected) {
        stop(Code.JOB_WRONG_TYPE, expected, shown(), TomlValues.hint(value.orElse(""), expected));
    }
}
