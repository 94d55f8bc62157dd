package collarwright.testing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of the outside interpreter's listing: a call with its words.
 *
 * @param block the N number of the block it came from, if that block had one
 * @param name such as DWELL, COMMENT or STRAIGHT_FEED
 * @param words what stands between the brackets, as printed, parted at commas and blanks
 */
public record CanonicalCall(OptionalInt block, String name, List<String> words) {
    // "   30 N80    STRAIGHT_FEED(20.0000, 0.0000, -1.0000, 60.5000, 0.0000, 0.0000)"
    private static final Pattern LINE = Pattern.compile("\\s*\\d+ N(\\d+|\\.+)\\s+([A-Z0-9_]+)\\((.*)\\)\\s*");

    /** Copies the words. */
    public CanonicalCall {
        words = List.copyOf(words);
    }

    static Optional<CanonicalCall> parse(String line) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String block = matcher.group(1);
        OptionalInt number = block.startsWith(".") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(block));
        return Optional.of(new CanonicalCall(number, matcher.group(2), wordsOf(matcher.group(3))));
    }

    private static List<String> wordsOf(String inside) {
        if (inside.startsWith("\"")) {
            return List.of(inside.substring(1, Math.max(1, inside.length() - 1)));
        }
        return Arrays.stream(inside.split("[, ]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    double number(int index) {
        return Double.parseDouble(words.get(index));
    }
}
