package collarwright.drawing;

import java.util.List;

/** Where a line of a drawing's notes may be broken. */
public final class LineBreaks {

    private LineBreaks() {}

    /**
     * Takes a line apart where it may be broken: at its spaces, but not between a number and its unit.
     *
     * @param line one line with single spaces
     * @return its words in order
     */
    public static List<String> words(String line) {
        return List.of(line.split("(?<![0-9]) | (?!(?:%|mm|in)(?:[ ,.:;)]|$))"));
    }
}
