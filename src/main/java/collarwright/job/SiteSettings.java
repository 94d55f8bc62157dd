package collarwright.job;

import java.util.Optional;

/**
 * How a kit is packed for the site.
 *
 * @param bundleKg the most that a bundle weighs, kg, above 0
 * @param labels the label sheet; empty for the usual one of the job's units
 */
public record SiteSettings(double bundleKg, Optional<LabelSheet> labels) {

    /** The lightest limit of a bundle, kg. Our choice, no source. */
    public static final double LEAST_KG = 1;

    /** The heaviest limit of a bundle, kg. Our choice, no source. */
    public static final double MOST_KG = 1000;

    /** Bundles of 15 kg at most, which one person carries: our choice, no source. */
    public static final SiteSettings USUAL = new SiteSettings(15, Optional.empty());

    /** Checks the limit. */
    public SiteSettings {
        if (!(bundleKg >= LEAST_KG && bundleKg <= MOST_KG)) {
            throw new IllegalArgumentException("bundles of " + bundleKg + " kg");
        }
    }
}
