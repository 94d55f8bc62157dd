package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;

/**
 * The shop's side of a job.
 *
 * @param machine the machine that drills
 * @param programUnits millimetres or inches in programs
 * @param cutting speeds and feeds for the collar's material
 * @param times how long the work takes
 */
public record Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting, ShopTimes times) {

    /**
     * A shop with the usual times.
     *
     * @param machine the machine that drills
     * @param programUnits millimetres or inches in programs
     * @param cutting speeds and feeds for the collar's material
     */
    public Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting) {
        this(machine, programUnits, cutting, ShopTimes.USUAL);
    }
}
