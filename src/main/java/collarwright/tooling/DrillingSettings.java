package collarwright.tooling;

import collarwright.geometry.Interval;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which cutters there are and how they are chosen.
 *
 * @param cutters the shop's drills and saws from all named racks, ascending by as-drilled size, then by id
 * @param fit the rule of choice
 * @param nearestBand how far short of its need a hole may come under {@link Fit#NEAREST}, an angle
 * @param leastClearance how much wider than the thickest strut every hole has to be, 0 or more: a strut that hardly leans
 *     must still go in by hand
 * @param shared how far hub types may differ that share a pattern; empty if every hub type has its own
 * @param mostCutters how many different drills and saws a job may use, 1 or more; empty for any number
 * @param flip whether collars may be put on upside down, so that one drilling serves a hub type and its mirror image
 * @param boring which holes are bored, and with what
 */
public record DrillingSettings(
        List<Cutter> cutters,
        Fit fit,
        double nearestBand,
        double leastClearance,
        Optional<SharingLimits> shared,
        Optional<Integer> mostCutters,
        boolean flip,
        Boring boring) {
    /** Checks the numbers and keeps the list. */
    public DrillingSettings {
        cutters = List.copyOf(cutters);
        if ((cutters.isEmpty() && !boring.possible()) || !(nearestBand >= 0) || !(leastClearance >= 0)) {
            throw new IllegalArgumentException("a shop needs a cutter, and a band and a clearance of 0 or more");
        }
        if (mostCutters.isPresent() && mostCutters.get() < 1) {
            throw new IllegalArgumentException("at most " + mostCutters.get() + " cutters");
        }
    }

    /**
     * Settings of a shop that bores nothing.
     *
     * @param cutters the shop's drills and saws, ascending
     * @param fit the rule of choice
     * @param nearestBand an angle
     * @param leastClearance how much wider than the thickest strut every hole has to be
     * @param shared how far hub types may differ that share a pattern; empty if every hub type has its own
     * @param mostCutters how many different cutters a job may use; empty for any number
     * @param flip whether collars may be put on upside down
     */
    public DrillingSettings(
            List<Cutter> cutters,
            Fit fit,
            double nearestBand,
            double leastClearance,
            Optional<SharingLimits> shared,
            Optional<Integer> mostCutters,
            boolean flip) {
        this(cutters, fit, nearestBand, leastClearance, shared, mostCutters, flip, Boring.NONE);
    }

    /**
     * Settings for collars that are all put on with TOP outside.
     *
     * @param cutters the shop's cutters, ascending
     * @param fit the rule of choice
     * @param nearestBand an angle
     * @param leastClearance how much wider than the thickest strut every hole has to be
     * @param shared how far hub types may differ that share a pattern; empty if every hub type has its own
     * @param mostCutters how many different cutters a job may use; empty for any number
     */
    public DrillingSettings(
            List<Cutter> cutters,
            Fit fit,
            double nearestBand,
            double leastClearance,
            Optional<SharingLimits> shared,
            Optional<Integer> mostCutters) {
        this(cutters, fit, nearestBand, leastClearance, shared, mostCutters, false);
    }

    /**
     * Settings without a least clearance, for any number of cutters.
     *
     * @param cutters the shop's cutters, ascending
     * @param fit the rule of choice
     * @param nearestBand an angle
     */
    public DrillingSettings(List<Cutter> cutters, Fit fit, double nearestBand) {
        this(cutters, fit, nearestBand, 0, Optional.empty(), Optional.empty());
    }

    /**
     * The same settings where holes come out wider than given.
     *
     * @param oversize how much wider, with its limits; a measured as-drilled size stays as it is
     * @return the settings, cutters in the order of their new sizes
     */
    public DrillingSettings wider(Interval oversize) {
        return with(cutters.stream()
                .map(c -> c.wider(oversize))
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id))
                .toList());
    }

    /**
     * The same rules for other cutters.
     *
     * @param others the cutters, ascending
     * @return settings that differ in nothing else
     */
    public DrillingSettings with(List<Cutter> others) {
        return new DrillingSettings(others, fit, nearestBand, leastClearance, shared, mostCutters, flip, boring);
    }

    /**
     * The same settings, but for what makes holes of just the size needed.
     *
     * @param other which holes, and with what
     * @return settings that differ in nothing else
     */
    public DrillingSettings with(Boring other) {
        return new DrillingSettings(cutters, fit, nearestBand, leastClearance, shared, mostCutters, flip, other);
    }

    /**
     * The same settings, but for whether collars may be put on upside down.
     *
     * @param allowed whether they may
     * @return settings that differ in nothing else
     */
    public DrillingSettings flip(boolean allowed) {
        return new DrillingSettings(cutters, fit, nearestBand, leastClearance, shared, mostCutters, allowed, boring);
    }

    /**
     * The same settings with end mills.
     *
     * @param other which holes are bored, and with what
     * @return settings that differ in nothing else
     */
    public DrillingSettings boring(Boring other) {
        return new DrillingSettings(cutters, fit, nearestBand, leastClearance, shared, mostCutters, flip, other);
    }
}
