package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.Optional;

/**
 * The shop's side of a job.
 *
 * @param machine the machine that drills collars
 * @param programUnits millimetres or inches in programs
 * @param cutting speeds and feeds for the collar's material
 * @param strutBed the bed that drills the ends of struts; empty for a press
 * @param strip how collars are made from flat strip; empty for collars from pipe
 */
public record Shop(
        Machine machine,
        ProgramUnits programUnits,
        CuttingData cutting,
        Optional<StrutBed> strutBed,
        Optional<StripSettings> strip) {

    /**
     * A shop that drills the ends of struts on a press, and collars from pipe.
     *
     * @param machine the machine that drills collars
     * @param programUnits millimetres or inches in programs
     * @param cutting speeds and feeds for the collar's material
     */
    public Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting) {
        this(machine, programUnits, cutting, Optional.empty(), Optional.empty());
    }

    /**
     * A bed with what it drills.
     *
     * @param machine a machine of the kind BED
     * @param cutting speeds and feeds for the struts' material
     */
    public record StrutBed(Machine machine, CuttingData cutting) {
        /** Checks the kind. */
        public StrutBed {
            if (machine.kind() != Machine.Kind.BED) {
                throw new IllegalArgumentException(machine.name() + ": no bed for struts");
            }
        }
    }
}
