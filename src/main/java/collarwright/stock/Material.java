package collarwright.stock;

import java.util.Optional;

/**
 * What a stock is made of.
 *
 * @param name its name in job files and profiles, such as {@code pvc}
 * @param title its name for people
 * @param chlorinated whether it gives off corrosive, toxic gas under a laser or a plasma torch (PVC, CPVC, vinyl)
 * @param densityKgPerM3 mass by volume, kg/m³
 * @param strainLimit how far a strut of it may be bowed for a moment: change of length of its outside, by length
 * @param growth how much it grows by heat, for a note on paper; empty where nobody said
 */
public record Material(
        String name,
        String title,
        boolean chlorinated,
        double densityKgPerM3,
        double strainLimit,
        Optional<Growth> growth) {

    /** What a material stands of which nothing is said. Our choice, no source: steel tube stands it, unhurt. */
    public static final double USUAL_STRAIN_LIMIT = 0.001;

    /** Checks the values. */
    public Material {
        if (name.isBlank() || title.isBlank() || !(densityKgPerM3 > 0) || !(strainLimit > 0)) {
            throw new IllegalArgumentException("a material needs a name, a title, a density and a strain");
        }
    }

    /**
     * How much a material grows by heat.
     *
     * @param perMillionKelvin change of length for one degree, in millionths; 0 or more
     * @param source where it comes from
     */
    public record Growth(double perMillionKelvin, String source) {
        /** Checks the values. */
        public Growth {
            if (!(perMillionKelvin >= 0 && perMillionKelvin < Double.POSITIVE_INFINITY) || source.isBlank()) {
                throw new IllegalArgumentException("growth is 0 or more and has a source");
            }
        }
    }

    /**
     * A material of which nobody says how much it grows by heat.
     *
     * @param name its name in job files and profiles
     * @param title its name for people
     * @param chlorinated whether it gives off corrosive, toxic gas under a laser or a plasma torch
     * @param densityKgPerM3 mass by volume, kg/m³
     * @param strainLimit how far a strut of it may be bowed for a moment
     */
    public Material(String name, String title, boolean chlorinated, double densityKgPerM3, double strainLimit) {
        this(name, title, chlorinated, densityKgPerM3, strainLimit, Optional.empty());
    }

    /**
     * A material of which nobody says how far it may be strained.
     *
     * @param name its name in job files and profiles
     * @param title its name for people
     * @param chlorinated whether it gives off corrosive, toxic gas under a laser or a plasma torch
     * @param densityKgPerM3 mass by volume, kg/m³
     */
    public Material(String name, String title, boolean chlorinated, double densityKgPerM3) {
        this(name, title, chlorinated, densityKgPerM3, USUAL_STRAIN_LIMIT);
    }
}
