package collarwright.rehearsal;

import java.util.List;
import java.util.Optional;

/** The words of one line. */
final class Block {

    private final int line;
    private final List<Word> words;
    private final List<String> comments;
    /** One bit for each letter that is there: most questions are about words that are not. */
    private final int letters;

    /**
     * Takes the words of a line.
     *
     * @param line line of the text, from 1
     * @param words in the order in which they are written
     * @param comments the comments of the lines before it that have no words, each joined with its further lines
     */
    Block(int line, List<Word> words, List<String> comments) {
        this.line = line;
        this.words = List.copyOf(words);
        this.comments = List.copyOf(comments);
        int bits = 0;
        for (Word word : words) {
            bits |= bit(word.letter());
        }
        this.letters = bits;
    }

    Block(int line, List<Word> words) {
        this(line, words, List.of());
    }

    int line() {
        return line;
    }

    List<Word> words() {
        return words;
    }

    List<String> comments() {
        return comments;
    }

    boolean has(String key) {
        if (key.isEmpty() || (letters & bit(key.charAt(0))) == 0) {
            return false;
        }
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
        if ((letters & bit(letter)) == 0) {
            return Optional.empty();
        }
        for (Word word : words) {
            if (word.letter() == letter) {
                return Optional.of(word.value());
            }
        }
        return Optional.empty();
    }

    /** Characters beyond A to Z share bits, which can only ask for a second look. */
    private static int bit(char letter) {
        return 1 << (letter - 'A');
    }

    boolean moves() {
        return hasAny("X", "Y", "Z", "A");
    }
}
