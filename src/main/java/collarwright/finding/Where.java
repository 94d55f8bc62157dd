package collarwright.finding;

import java.util.Objects;

/** The place a finding speaks of: a place in a text, a part of the model, or a file. */
public sealed interface Where {

    /**
     * Returns the place as a person reads it.
     *
     * @return {@code job.toml:12:3}, {@code pattern CA / hole 3}, or a file's path
     */
    String text();

    /**
     * A place in a text file.
     *
     * @param file the file's name as the user gave it
     * @param line line, from 1
     * @param column column, from 1
     */
    record Text(String file, int line, int column) implements Where {
        /** Checks the place. */
        public Text {
            Objects.requireNonNull(file, "file");
            if (line < 1 || column < 1) {
                throw new IllegalArgumentException("line and column count from 1: " + line + ":" + column);
            }
        }

        @Override
        public String text() {
            return file + ":" + line + ":" + column;
        }
    }

    /**
     * A part of the model.
     *
     * @param path the part, widest first, such as {@code pattern CA / hole 3}
     */
    record Part(String path) implements Where {
        /** Checks the path. */
        public Part {
            if (path.isBlank()) {
                throw new IllegalArgumentException("a part needs a path");
            }
        }

        @Override
        public String text() {
            return path;
        }
    }

    /**
     * A file or a folder.
     *
     * @param path its path as the user gave it
     */
    record Path(String path) implements Where {
        /** Checks the path. */
        public Path {
            if (path.isEmpty()) {
                throw new IllegalArgumentException("a file needs a path");
            }
        }

        @Override
        public String text() {
            return path;
        }
    }
}
