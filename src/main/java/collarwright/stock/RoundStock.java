package collarwright.stock;

import collarwright.geometry.Interval;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Optional;

/**
 * A round pipe, tube or bar as it is bought and, where the shop did so, measured.
 *
 * @param name the profile's name, or {@code "in the job"}
 * @param title its name for people, such as {@code PVC-U pipe 40 × 3.0}
 * @param material what it is made of
 * @param od outside diameter; nominal is the measured value (middle of the measured limits), else the nominal mean
 * @param wall wall thickness with its limits; empty for a solid bar
 * @param odMeasured whether the outside diameter was measured
 * @param wallMeasured whether the wall was measured
 * @param outOfRound largest less smallest diameter at one place, 0 if not known
 * @param lengths lengths it is sold in, ascending; empty if not known
 * @param source where the figures come from, such as the standard's number and table
 */
public record RoundStock(
        String name,
        String title,
        Material material,
        Interval od,
        Optional<Interval> wall,
        boolean odMeasured,
        boolean wallMeasured,
        double outOfRound,
        List<Double> lengths,
        String source) {
    /** The name of a stock that has no profile. */
    public static final String IN_PLACE = "in the job";

    private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

    /** Checks the values. */
    public RoundStock {
        lengths = lengths.stream().sorted().toList();
        if (!(od.min() > 0) || !(outOfRound >= 0 && outOfRound < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + ": the outside diameter is above 0, and out of round 0 or more");
        }
        if (!lengths.stream().allMatch(length -> length > 0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + ": a length it is sold in is above 0");
        }
        if (wall.isPresent() && !(wall.get().min() > 0 && wall.get().max() < od.min() / 2)) {
            throw new IllegalArgumentException(name + ": the wall is above 0 and below the radius");
        }
    }

    /**
     * Returns the outside radius to count with.
     *
     * @return half the nominal (measured) outside diameter
     */
    public double outerRadius() {
        return od.nominal() / 2;
    }

    /**
     * Returns what an inventory calls it: struts, collars and rings may all be given in place, and are not one stock.
     *
     * @return its name; material and size, such as {@code steel 26.7 x 2.6 mm}, where it was given in place
     */
    public String inventoryName() {
        if (!name.equals(IN_PLACE)) {
            return name;
        }
        String thick = wall.map(w -> " x " + Decimals.trimmed(w.nominal(), 1)).orElse("");
        return material.name() + " " + Decimals.trimmed(od.nominal(), 1) + thick + " mm";
    }

    /**
     * The same stock in other lengths.
     *
     * @param others lengths it is sold in
     * @return a stock that differs in nothing else
     */
    public RoundStock soldIn(List<Double> others) {
        return new RoundStock(name, title, material, od, wall, odMeasured, wallMeasured, outOfRound, others, source);
    }

    /**
     * Weighs a piece: length times cross-section times the density of its material, with nominal sizes.
     *
     * @param length of the piece
     * @return kg, holes not taken off
     */
    public double kg(double length) {
        double inside = outerRadius() - wall.map(Interval::nominal).orElse(outerRadius());
        double area = StrictMath.PI * (outerRadius() * outerRadius() - inside * inside);
        return area * length * material.densityKgPerM3() / CUBIC_MM_PER_CUBIC_M;
    }
}
