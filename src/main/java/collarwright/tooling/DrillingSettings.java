package collarwright.tooling;

import java.util.List;
import java.util.Optional;

/**
 * Which cutters there are and how they are chosen.
 *
 * @param cutters the shop's cutters from all named racks, ascending by as-drilled size, then by id
 * @param fit the rule of choice
 * @param nearestBand how far short of its need a hole may come under {@link Fit#NEAREST}, an angle
 * @param leastClearance how much wider than the thickest strut every hole has to be, 0 or more: a strut that hardly leans
 *     must still go in by hand
 * @param mostCutters how many different cutters a job may use, 1 or more; empty for any number
 */
public record DrillingSettings(
        List<Cutter> cutters, Fit fit, double nearestBand, double leastClearance, Optional<Integer> mostCutters) {
    /** Checks the numbers and keeps the list. */
    public DrillingSettings {
        cutters = List.copyOf(cutters);
        if (cutters.isEmpty() || !(nearestBand >= 0) || !(leastClearance >= 0)) {
            throw new IllegalArgumentException("a shop needs a cutter, and a band and a clearance of 0 or more");
        }
        if (mostCutters.isPresent() && mostCutters.get() < 1) {
            throw new IllegalArgumentException("at most " + mostCutters.get() + " cutters");
        }
    }

    /**
     * Settings without a least clearance, for any number of cutters.
     *
     * @param cutters the shop's cutters, ascending
     * @param fit the rule of choice
     * @param nearestBand an angle
     */
    public DrillingSettings(List<Cutter> cutters, Fit fit, double nearestBand) {
        this(cutters, fit, nearestBand, 0, Optional.empty());
    }

    /**
     * The same rules for other cutters.
     *
     * @param others the cutters, ascending
     * @return settings that differ in nothing else
     */
    public DrillingSettings with(List<Cutter> others) {
        return new DrillingSettings(others, fit, nearestBand, leastClearance, mostCutters);
    }
}
