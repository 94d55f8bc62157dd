package collarwright.finding;

import java.util.List;
import java.util.Objects;

/**
 * One thing that is wrong, doubtful or worth knowing, with its place and its cure.
 *
 * @param level stop, warn or note
 * @param code what kind of finding it is
 * @param where its place
 * @param expected what should be there, with its unit
 * @param found what is there, with its unit
 * @param hints what to do, the best first; never empty
 */
public record Finding(Level level, Code code, Where where, String expected, String found, List<String> hints) {

    /** Checks that nothing is missing. */
    public Finding {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(found, "found");
        hints = List.copyOf(hints);
        if (hints.isEmpty()) {
            throw new IllegalArgumentException(code + ": a finding needs a hint");
        }
    }

    /**
     * A finding that stops the work.
     *
     * @param code its kind
     * @param where its place
     * @param expected what should be there
     * @param found what is there
     * @param hints what to do, the best first
     * @return the finding
     */
    public static Finding stop(Code code, Where where, String expected, String found, String... hints) {
        return new Finding(Level.STOP, code, where, expected, found, List.of(hints));
    }

    /**
     * A finding that a person should look at.
     *
     * @param code its kind
     * @param where its place
     * @param expected what should be there
     * @param found what is there
     * @param hints what to do, the best first
     * @return the finding
     */
    public static Finding warn(Code code, Where where, String expected, String found, String... hints) {
        return new Finding(Level.WARN, code, where, expected, found, List.of(hints));
    }

    /**
     * A finding that is worth knowing.
     *
     * @param code its kind
     * @param where its place
     * @param expected what one would expect
     * @param found what is there
     * @param hints what to do, the best first
     * @return the finding
     */
    public static Finding note(Code code, Where where, String expected, String found, String... hints) {
        return new Finding(Level.NOTE, code, where, expected, found, List.of(hints));
    }
}
