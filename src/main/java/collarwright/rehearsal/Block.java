package collarwright.rehearsal;

import java.util.List;
import java.util.Optional;

/**
 * The words of one line.
 *
 * @param line line of the text, from 1
 * @param words in the order in which they are written
 * @param comments the comments of the lines before it that have no words, each joined with its further lines
 */
record Block(int line, List<Word> words, List<String> comments) {
    Block {
        words = List.copyOf(words);
        comments = List.copyOf(comments);
    }

    Block(int line, List<Word> words) {
        this(line, words, List.of());
    }

    boolean has(String key) {
        // Asked many times for every line of every program: no stream.
        for (Word word : words) {
            if (word.is(key)) {
                return true;
            }
        }
        return false;
    }

    boolean hasAny(String... keys) {
        for (String key : keys) {
            if (has(key)) {
                return true;
            }
        }
        return false;
    }

    /** The number behind a letter; the first one if there are more. */
    Optional<Double> value(char letter) {
        for (Word word : words) {
            if (word.letter() == letter) {
                return Optional.of(word.value());
            }
        }
        return Optional.empty();
    }

    boolean moves() {
        return hasAny("X", "Y", "Z", "A");
    }
}
