package collarwright.job;

import java.util.Optional;
import java.util.function.Function;

/**
 * A key with the value that holds where the key is left out.
 *
 * @param <T> the kind of value
 */
final class Given<T> {

    private final KeyView key;
    private final Optional<T> read;
    private final T usual;

    /**
     * Reads a key.
     *
     * @param key the key
     * @param read how it is read
     * @param usual what holds where it is left out
     */
    Given(KeyView key, Function<KeyView, Optional<T>> read, T usual) {
        this.key = key;
        this.read = read.apply(key);
        this.usual = usual;
    }

    /** False if something stands there that could not be read. */
    boolean good() {
        return read.isPresent() || !key.present();
    }

    T value() {
        return read.orElse(usual);
    }

    KeyView key() {
        return key;
    }
}
