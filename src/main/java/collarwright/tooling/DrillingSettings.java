package collarwright.tooling;

import java.util.List;

/**
 * Which cutters there are and how they are chosen.
 *
 * @param cutters the shop's cutters from all named racks, ascending by as-drilled size, then by id
 * @param fit the rule of choice
 * @param nearestBand how far short of its need a hole may come under {@link Fit#NEAREST}, an angle
 */
public record DrillingSettings(List<Cutter> cutters, Fit fit, double nearestBand) {
    /** Checks the band and keeps the list. */
    public DrillingSettings {
        cutters = List.copyOf(cutters);
        if (cutters.isEmpty() || !(nearestBand >= 0)) {
            throw new IllegalArgumentException("a shop needs a cutter, and a band of 0 or more");
        }
    }
}
