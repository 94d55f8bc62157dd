package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The layout of a stick: which collar lies at each place from the chuck, and how many sticks are run like this.
 *
 * @param id its own short name, such as {@code LA}
 * @param patterns the pattern of each collar, the one at the chuck first; one or more
 * @param runs sticks of this kind, 1 or more
 * @param firstEdge X of the first collar's edge at the chuck
 * @param pitch from collar to collar: width and parting kerf
 * @param stickLength least length of a stick, chuck end and end trim included
 * @param fromLength the stock length it is cut from, if stock lengths are known
 * @param sticksPerLength sticks that come out of one such stock length, at least 1
 */
public record Load(
        String id,
        List<String> patterns,
        int runs,
        double firstEdge,
        double pitch,
        double stickLength,
        Optional<Double> fromLength,
        int sticksPerLength) {

    /** Keeps the list and checks that there is something to run. */
    public Load {
        patterns = List.copyOf(patterns);
        if (patterns.isEmpty() || runs < 1) {
            throw new IllegalArgumentException(id + ": a stick has a collar or more and is run once or more");
        }
    }

    /**
     * Neighbours of one pattern on a stick.
     *
     * @param first place of the first, from 1 at the chuck
     * @param last place of the last
     * @param pattern their pattern
     */
    public record Stretch(int first, int last, String pattern) {
        /**
         * Returns it as programs and papers say it.
         *
         * @return such as {@code 1-3 CA} or {@code 4 CB}
         */
        public String text() {
            return (first == last ? first : first + "-" + last) + " " + pattern;
        }
    }

    /**
     * Returns how many collars lie on the stick.
     *
     * @return 1 or more
     */
    public int collars() {
        return patterns.size();
    }

    /**
     * Returns which pattern a collar gets.
     *
     * @param collar from 1, at the chuck
     * @return the pattern's id
     */
    public String pattern(int collar) {
        return patterns.get(collar - 1);
    }

    /**
     * Returns whether patterns are mixed on it.
     *
     * @return true if not all collars are of one pattern
     */
    public boolean mixed() {
        return patterns.stream().distinct().count() > 1;
    }

    /**
     * Returns what lies where, neighbours of one pattern taken together.
     *
     * @return from the chuck outward
     */
    public List<Stretch> stretches() {
        List<Stretch> stretches = new ArrayList<>();
        int first = 1;
        for (int collar = 1; collar <= collars(); collar++) {
            if (collar == collars() || !pattern(collar).equals(pattern(collar + 1))) {
                stretches.add(new Stretch(first, collar, pattern(collar)));
                first = collar + 1;
            }
        }
        return stretches;
    }

    /**
     * Returns what lies where in words.
     *
     * @return such as {@code 1-3 CA, 4 CB}
     */
    public String laid() {
        return String.join(", ", stretches().stream().map(Stretch::text).toList());
    }

    /**
     * Returns where a collar starts.
     *
     * @param collar from 1, at the chuck
     * @return X of its edge at the chuck
     */
    public double edge(int collar) {
        return firstEdge + (collar - 1) * pitch;
    }
}
