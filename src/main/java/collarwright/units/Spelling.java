package collarwright.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the names that a misspelt word may have meant. */
public final class Spelling {

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,3})[- ])?(\\d{1,3})/(\\d{1,3})");

    private Spelling() {}

    /**
     * Lists the known names nearest to a word.
     *
     * @param word what was written
     * @param known what could have been written
     * @param most how many names at most
     * @return the nearest first, those equally near in the order of the alphabet; empty if nothing is near
     */
    public static List<String> nearest(String word, Collection<String> known, int most) {
        String plain = decimal(word.toLowerCase(Locale.ROOT));
        // A third of the letters may be wrong, in a short word one; a name that begins with the word is near too.
        int reach = plain.length() < 4 ? 1 : StrictMath.max(2, plain.length() / 3);
        return known.stream()
                .filter(name -> distance(plain, name.toLowerCase(Locale.ROOT)) <= reach || prefixed(plain, name))
                .sorted(Comparator.<String>comparingInt(name -> distance(plain, name.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(most)
                .toList();
    }

    // Sizes in names are written with decimals: 1-1/4 and 1 1/4 are 1.25.
    private static String decimal(String word) {
        Matcher fraction = FRACTION.matcher(word);
        if (!fraction.find() || Integer.parseInt(fraction.group(3)) == 0) {
            return word;
        }
        double whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
        double size = whole + Double.parseDouble(fraction.group(2)) / Integer.parseInt(fraction.group(3));
        return word.substring(0, fraction.start()) + Decimals.trimmed(size, 4) + word.substring(fraction.end());
    }

    private static boolean prefixed(String plain, String name) {
        String other = name.toLowerCase(Locale.ROOT);
        return plain.length() >= 3 && (other.startsWith(plain) || (plain.startsWith(other) && other.length() >= 3));
    }

    /**
     * Counts the steps from one word to another: a letter put in, left out or changed, or two neighbours swapped.
     *
     * @param from one word
     * @param to the other
     * @return 0 for the same word
     */
    static int distance(String from, String to) {
        int[] before = new int[to.length() + 1];
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] next = new int[to.length() + 1];
            next[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = row[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                next[j] = StrictMath.min(change, StrictMath.min(row[j], next[j - 1]) + 1);
                if (swapped(from, i, to, j)) {
                    next[j] = StrictMath.min(next[j], before[j - 2] + 1);
                }
            }
            before = row;
            row = next;
        }
        return row[to.length()];
    }

    private static boolean swapped(String from, int i, String to, int j) {
        return i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
    }
}
