package collarwright.tooling;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which holes are made to just the size needed, and with what: an end mill goes round in them by a helix, or a tube cutter
 * along their outline.
 *
 * @param rule which holes
 * @param endMills the shop's end mills from all named racks, or the machine's tube cutter, whose size is its kerf
 */
public record Boring(Rule rule, List<Cutter> endMills) {

    /** A helix of a smaller radius, as a part of the end mill's diameter, only pushes chips: our choice, no source. */
    public static final double LEAST_HELIX = 0.1;

    /**
     * A wider end mill, as a part of the hole, goes round on so small a circle that its centre hardly moves and the hole takes
     * long: our choice, no source.
     */
    public static final double EASY = 0.6;

    /** Steps of bored sizes: our choice, no source. */
    public static final double STEP = 0.01;

    /** No end mill in the racks. */
    public static final Boring NONE = new Boring(Rule.NO_FIT, List.of());

    /** Keeps the list and checks the kind. */
    public Boring {
        endMills = List.copyOf(endMills);
        if (endMills.stream().anyMatch(c -> !c.kind().goesRound() || c.bores())) {
            throw new IllegalArgumentException("only end mills of a rack and tube cutters make any size");
        }
    }

    /** Which holes are bored. */
    public enum Rule {
        /** Those that no drill and no saw of the racks fits. */
        NO_FIT,
        /** All that an end mill fits. */
        ALWAYS,
        /** None. */
        NEVER
    }

    /**
     * Tells whether a hole can be bored at all.
     *
     * @return true if the rule allows it and there is an end mill
     */
    public boolean possible() {
        return rule != Rule.NEVER && !endMills.isEmpty();
    }

    /**
     * Bores a hole.
     *
     * @param least the least diameter that serves; it is rounded up to {@link #STEP}
     * @param depth how deep the wall goes down at the hole's side, from the crown
     * @return the thickest end mill up to {@link #EASY} of the hole, else the thinnest whose helix is not too small (of
     *     equal ones the first id), of those with flutes long enough if there is one, with the size that it bores; empty if
     *     the rule or the racks allow none
     */
    public Optional<Cutter> cutter(double least, double depth) {
        if (!possible() || !Double.isFinite(least)) {
            return Optional.empty();
        }
        double diameter = rounded(least);
        return endMills.stream()
                .filter(c -> diameter - c.size() >= 2 * LEAST_HELIX * c.size())
                .min(Comparator.comparing((Cutter c) -> c.depth() < depth)
                        .thenComparing(c -> c.size() > EASY * diameter)
                        .thenComparingDouble(c -> c.size() > EASY * diameter ? c.size() : -c.size())
                        .thenComparing(Cutter::id))
                .map(c -> Cutter.bored(c, diameter));
    }

    private static double rounded(double least) {
        double steps = StrictMath.ceil(least / STEP - 1e-9); // a division leaves a little beyond a whole number
        double up = steps / (1 / STEP);
        return up < least ? (steps + 1) / (1 / STEP) : up;
    }
}
