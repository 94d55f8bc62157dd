package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.machining.StickRule;
import java.util.Optional;

/**
 * The shop's side of a job.
 *
 * @param machine the machine that drills collars
 * @param programUnits millimetres or inches in programs
 * @param cutting speeds and feeds for the collar's material
 * @param batch how collars are laid on sticks and checked
 * @param times how long the work takes
 * @param strutBed the bed that drills the ends of struts; empty for a press
 * @param strip how collars are made from flat strip; empty for collars from pipe
 */
public record Shop(
        Machine machine,
        ProgramUnits programUnits,
        CuttingData cutting,
        Batch batch,
        ShopTimes times,
        Optional<StrutBed> strutBed,
        Optional<StripSettings> strip) {

    /**
     * How a batch is run.
     *
     * @param sticks whether patterns may lie on one stick
     * @param checkEvery one piece out of so many is measured after the first, 1 or more
     */
    public record Batch(StickRule sticks, int checkEvery) {

        /** Mixed sticks, and every tenth piece measured: our choice, no source. */
        public static final Batch USUAL = new Batch(StickRule.MIXED, 10);

        /** Checks the interval. */
        public Batch {
            if (checkEvery < 1) {
                throw new IllegalArgumentException("one piece out of " + checkEvery + " cannot be measured");
            }
        }
    }

    /**
     * A shop that runs its batches as usual in the usual times, drills the ends of struts on a press, and collars from
     * pipe.
     *
     * @param machine the machine that drills collars
     * @param programUnits millimetres or inches in programs
     * @param cutting speeds and feeds for the collar's material
     */
    public Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting) {
        this(machine, programUnits, cutting, Batch.USUAL, ShopTimes.USUAL, Optional.empty(), Optional.empty());
    }

    /**
     * Returns whether patterns may lie on one stick.
     *
     * @return the rule
     */
    public StickRule sticks() {
        return batch.sticks();
    }

    /**
     * Returns how often a piece is measured.
     *
     * @return one out of so many
     */
    public int checkEvery() {
        return batch.checkEvery();
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
