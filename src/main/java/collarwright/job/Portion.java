package collarwright.job;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a sphere that is kept, as rows of triangles from the apex. A vertex-up class I icosahedron of frequency n has
 * 3n rows.
 */
final class Portion {

    private static final Pattern FRACTION = Pattern.compile("(\\d{1,9})\\s*/\\s*(\\d{1,9})");

    private final int frequency;

    /**
     * The portions of one sphere.
     *
     * @param frequency n, 1 or more
     */
    Portion(int frequency) {
        this.frequency = frequency;
    }

    /** Rows of the whole sphere. */
    int all() {
        return 3 * frequency;
    }

    /**
     * Tells whether a text has the form of a portion.
     *
     * @param text as written
     * @return true for {@code 5/9} and {@code all}
     */
    static boolean readable(String text) {
        return text.strip().equals("all") || FRACTION.matcher(text.strip()).matches();
    }

    /**
     * Tells whether a text is a trade name of a dome of frequency 3, not its exact portion.
     *
     * @param text as written
     * @return true for {@code 3/8} and {@code 5/8}
     */
    static boolean tradeName(String text) {
        String plain = text.replaceAll("\\s", "");
        return plain.equals("3/8") || plain.equals("5/8");
    }

    /**
     * Finds the rows of a portion.
     *
     * @param text {@code k/m} or {@code all}
     * @return rows from 1 to 3n; empty if the portion is not a whole number of rows or lies outside
     */
    Optional<Integer> rows(String text) {
        if (text.strip().equals("all")) {
            return Optional.of(all());
        }
        Matcher match = FRACTION.matcher(text.strip());
        if (!match.matches()) {
            return Optional.empty();
        }
        // The trade's names for the two domes of frequency 3, which really are 4/9 and 5/9.
        String plain = match.group(1) + "/" + match.group(2);
        if (frequency == 3 && (plain.equals("3/8") || plain.equals("5/8"))) {
            return Optional.of(plain.equals("3/8") ? 4 : 5);
        }
        long above = Long.parseLong(match.group(1)) * all();
        long below = Long.parseLong(match.group(2));
        boolean whole = below > 0 && above % below == 0 && above / below >= 1 && above / below <= all();
        return whole ? Optional.of((int) (above / below)) : Optional.empty();
    }

    /**
     * Lists the portions on either side of one that does not exist.
     *
     * @param text {@code k/m}
     * @return one or two portions, the smaller first
     */
    List<String> near(String text) {
        Matcher match = FRACTION.matcher(text.strip());
        if (!match.matches() || new BigInteger(match.group(2)).signum() == 0) {
            return List.of(share(all() / 2), share(all()));
        }
        long below = Long.parseLong(match.group(1)) * all() / Long.parseLong(match.group(2));
        if (below < 1) {
            return List.of(share(1));
        }
        return below >= all() ? List.of(share(all())) : List.of(share((int) below), share((int) below + 1));
    }

    /**
     * Writes rows as a portion.
     *
     * @param rows 1 to 3n
     * @return such as {@code 5/9}
     */
    String share(int rows) {
        return StrictMath.max(1, rows) + "/" + all();
    }
}
