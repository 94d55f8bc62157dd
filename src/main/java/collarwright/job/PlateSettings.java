package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.machining.CutMeans;
import collarwright.stock.Material;
import java.util.Optional;

/**
 * How index plates and saddles are made.
 *
 * @param sizes bore, pin and rim
 * @param material what they are cut from
 * @param process what cuts them
 * @param kerf width of the cut that lines allow for, and lead-ins
 * @param counts how many
 * @param sheet what they are nested on
 */
public record PlateSettings(
        Sizes sizes, Material material, CutMeans process, Kerf kerf, Counts counts, SheetPacker.Stock sheet) {

    /** Checks that nothing chlorinated is burnt. */
    public PlateSettings {
        if (process.burns() && material.chlorinated()) {
            throw new IllegalArgumentException("plates of " + material.name() + " by " + process.word());
        }
    }

    /**
     * How many are made.
     *
     * @param plates of each pattern, 1 or more
     * @param saddles for each cutter, 0 for none
     */
    public record Counts(int plates, int saddles) {
        /** Checks the counts. */
        public Counts {
            if (plates < 1 || saddles < 0) {
                throw new IllegalArgumentException(plates + " plates, " + saddles + " saddles");
            }
        }
    }

    /**
     * Sizes of a plate.
     *
     * @param bore diameter for the mandrel
     * @param pin diameter of the pin
     * @param diameter of the rim; empty for six pins more than the collar
     */
    public record Sizes(double bore, double pin, Optional<Double> diameter) {}

    /**
     * What lines allow for.
     *
     * @param inside kerf in holes, 0 for nominal lines
     * @param outside kerf along edges
     * @param leadIn length of lead-ins, 0 for none
     */
    public record Kerf(double inside, double outside, double leadIn) {}
}
