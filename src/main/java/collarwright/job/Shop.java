package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.machining.StickRule;

/**
 * The shop's side of a job.
 *
 * @param machine the machine that drills
 * @param programUnits millimetres or inches in programs
 * @param cutting speeds and feeds for the collar's material
 * @param batch how collars are laid on sticks and checked
 * @param times how long the work takes
 */
public record Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting, Batch batch, ShopTimes times) {

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
     * A shop that runs its batches as usual, in the usual times.
     *
     * @param machine the machine that drills
     * @param programUnits millimetres or inches in programs
     * @param cutting speeds and feeds for the collar's material
     */
    public Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting) {
        this(machine, programUnits, cutting, Batch.USUAL, ShopTimes.USUAL);
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
}
