package collarwright.job;

import java.io.IOException;
import java.util.List;

/** Somewhere that profile files can be read from. */
public interface ProfileSource {

    /**
     * Lists the profile files.
     *
     * @return their names in a fixed order
     * @throws IOException if the place cannot be read
     */
    List<String> names() throws IOException;

    /**
     * Reads one file.
     *
     * @param name one of {@link #names()}
     * @return its bytes
     * @throws IOException if it cannot be read
     */
    byte[] read(String name) throws IOException;

    /**
     * Returns what a person calls a file or, for the empty name, the whole place.
     *
     * @param name one of {@link #names()}, or an empty text
     * @return such as {@code profiles/my-saws.toml}
     */
    String place(String name);
}
