package collarwright.tooling;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The few cutters that serve all holes best, where a shop wants to change tools seldom.
 *
 * <p>Exact: of all choices of at most so many cutters it is the one whose worst miss is least; of several, the one whose
 * misses, each counted once for every hole, add up to the least; then the one of fewer cutters; then the one with the
 * smaller cutter at the first need, in the order of required sizes, where they differ.
 *
 * <p>Steps: 1. put the needs in the order of their required sizes. The holes that share a cutter then stand together: a
 * cutter that is right for a larger need reaches for a smaller one too, and misses grow with a cutter's distance from the
 * need (true for all needs in one collar with one strut). 2. From the last need back, for one cutter more each time, find
 * the least worst miss over all ways to split. 3. Do the same for the sum, with misses above that worst one left out.
 *
 * @param cutters the chosen ones, ascending by as-drilled size, then by id
 * @param worst the largest miss of any hole, an angle
 * @param total all misses added up, each counted for every hole
 */
public record CutterChoice(List<Cutter> cutters, double worst, double total) {

    private static final Comparator<Cutter> BY_SIZE =
            Comparator.<Cutter>comparingDouble(c -> c.asDrilled().nominal()).thenComparing(Cutter::id);

    /** Keeps the list. */
    public CutterChoice {
        cutters = List.copyOf(cutters);
    }

    /**
     * Chooses.
     *
     * @param needs what the holes ask, in any order
     * @param cutters what there is
     * @param most how many cutters may be taken, 1 or more
     * @return the choice; empty if no so many cutters serve every need, or if there is no need
     */
    public static Optional<CutterChoice> of(List<CutterNeed> needs, List<Cutter> cutters, int most) {
        if (most < 1) {
            throw new IllegalArgumentException("at most " + most + " cutters");
        }
        List<CutterNeed> sorted = needs.stream()
                .sorted(Comparator.comparingDouble(CutterNeed::required))
                .toList();
        List<Cutter> rack = cutters.stream().sorted(BY_SIZE).toList();
        if (sorted.isEmpty() || rack.isEmpty()) {
            return Optional.empty();
        }
        double[][] misses = misses(sorted, rack);
        int groups = StrictMath.min(most, StrictMath.min(sorted.size(), rack.size()));
        double worst = new Splits(misses, StrictMath::max).solve(groups)[groups][0];
        if (worst == Double.POSITIVE_INFINITY) {
            return Optional.empty();
        }
        Splits sums = new Splits(weighed(misses, sorted, worst), Double::sum);
        double[][] totals = sums.solve(groups);
        int fewest = IntStream.rangeClosed(1, groups)
                .filter(k -> totals[k][0] == totals[groups][0])
                .findFirst()
                .orElse(groups);
        List<Cutter> chosen = sums.trace(totals, fewest)
                .distinct()
                .sorted()
                .mapToObj(rack::get)
                .toList();
        return Optional.of(new CutterChoice(chosen, worst, totals[fewest][0]));
    }

    /**
     * Leaves a shop only the cutters that serve best.
     *
     * @param needs what the holes ask
     * @param drilling the cutters and how many may be taken
     * @return the settings with the chosen cutters; unchanged if any number may be taken, or if even all of them do not
     *     serve every need
     */
    public static DrillingSettings narrowed(List<CutterNeed> needs, DrillingSettings drilling) {
        return drilling.mostCutters()
                .flatMap(most -> of(drilled(needs, drilling), drilling.cutters(), most))
                .map(choice -> drilling.with(choice.cutters()))
                .orElse(drilling);
    }

    /**
     * Leaves out the holes that only boring serves: an end mill is not counted among the cutters.
     *
     * @param needs what the holes ask
     * @param drilling the cutters, and whether holes are bored
     * @return the needs that a drill or a saw serves; all of them if nothing is bored
     */
    public static List<CutterNeed> drilled(List<CutterNeed> needs, DrillingSettings drilling) {
        if (!drilling.boring().possible()) {
            return needs;
        }
        return needs.stream()
                .filter(n -> drilling.cutters().stream()
                        .anyMatch(c -> n.miss().apply(c).isPresent()))
                .toList();
    }

    /**
     * Finds how far off the holes are when each gets the cutter that is best for it.
     *
     * @param needs what the holes ask
     * @param cutters what there is
     * @return the worst of the least misses; empty if a need has no cutter
     */
    public static OptionalDouble unlimited(List<CutterNeed> needs, List<Cutter> cutters) {
        double worst = 0;
        for (double[] row : misses(needs, cutters)) {
            worst = StrictMath.max(worst, Arrays.stream(row).min().orElse(Double.POSITIVE_INFINITY));
        }
        return worst < Double.POSITIVE_INFINITY ? OptionalDouble.of(worst) : OptionalDouble.empty();
    }

    private static double[][] misses(List<CutterNeed> needs, List<Cutter> rack) {
        return needs.stream()
                .map(need -> rack.stream()
                        .mapToDouble(c -> need.miss().apply(c).orElse(Double.POSITIVE_INFINITY))
                        .toArray())
                .toArray(double[][]::new);
    }

    private static double[][] weighed(double[][] misses, List<CutterNeed> needs, double worst) {
        return IntStream.range(0, needs.size())
                .mapToObj(i -> Arrays.stream(misses[i])
                        .map(m -> m <= worst ? m * needs.get(i).holes() : Double.POSITIVE_INFINITY)
                        .toArray())
                .toArray(double[][]::new);
    }
}
