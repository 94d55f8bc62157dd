package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.machining.CutMeans;
import collarwright.stock.Material;
import java.util.Optional;

/**
 * How index plates are made.
 *
 * @param sizes bore, pin and rim
 * @param material what they are cut from
 * @param process what cuts them
 * @param kerf width of the cut that lines allow for, and lead-ins
 * @param count plates of each pattern, 1 or more
 * @param sheet what they are nested on
 */
public record PlateSettings(
        Sizes sizes, Material material, CutMeans process, Kerf kerf, int count, SheetPacker.Stock sheet) {

    /** Checks the count, and that nothing chlorinated is burnt. */
    public PlateSettings {
        if (count < 1 || (process.burns() && material.chlorinated())) {
            throw new IllegalArgumentException(count + " plates of " + material.name() + " by " + process.word());
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
