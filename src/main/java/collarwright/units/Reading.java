package collarwright.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a text: a value, or the reason why not.
 *
 * @param <T> the kind of value
 */
public sealed interface Reading<T> {

    /**
     * A text that could be read.
     *
     * @param value its value
     * @param <T> the kind of value
     */
    record Read<T>(T value) implements Reading<T> {}

    /**
     * A text that could not be taken.
     *
     * @param why the reason, with what to do
     * @param <T> the kind of value
     */
    record Refused<T>(Refusal why) implements Reading<T> {}

    /**
     * A value.
     *
     * @param value the value
     * @param <T> the kind of value
     * @return the reading
     */
    static <T> Reading<T> of(T value) {
        return new Read<>(value);
    }

    /**
     * A refusal.
     *
     * @param fault its kind
     * @param expected what should stand there
     * @param found what stands there
     * @param hints what to do, the best first
     * @param <T> the kind of value
     * @return the reading
     */
    static <T> Reading<T> refused(Refusal.Fault fault, String expected, String found, String... hints) {
        return new Refused<>(new Refusal(fault, expected, found, List.of(hints)));
    }

    /**
     * Returns the value, if there is one.
     *
     * @return the value, or empty
     */
    default Optional<T> found() {
        return this instanceof Read<T> read ? Optional.of(read.value) : Optional.empty();
    }

    /**
     * Returns the refusal, if there is one.
     *
     * @return the refusal, or empty
     */
    default Optional<Refusal> refusal() {
        return this instanceof Refused<T> refused ? Optional.of(refused.why) : Optional.empty();
    }

    /**
     * Goes on with the value.
     *
     * @param next what to do with the value
     * @param <U> the kind of the next value
     * @return its result, or the same refusal
     */
    default <U> Reading<U> then(Function<T, Reading<U>> next) {
        if (this instanceof Read<T> read) {
            return next.apply(read.value);
        }
        return new Refused<>(refusal().orElseThrow());
    }
}
