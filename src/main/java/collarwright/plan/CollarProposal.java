package collarwright.plan;

import collarwright.stock.RoundStock;
import java.util.List;

/**
 * A collar with its ring that would do for a job.
 *
 * @param collar the pipe
 * @param width of the collar along its axis
 * @param ring the pipe or bar of the centre ring
 * @param ringWidth of the ring along its axis
 * @param endGap least distance that a strut's end face keeps from the ring, the smallest that satisfies every check
 * @param slack the most that a hole lets a strut lean further than needed
 * @param step what the next larger cutter of the rack lets a strut lean further, at the hole where that is most: a thicker
 *     wall makes it finer
 * @param margins of each kind of check the one with the least margin, in the order of their codes
 */
public record CollarProposal(
        RoundStock collar,
        double width,
        RoundStock ring,
        double ringWidth,
        double endGap,
        double slack,
        double step,
        List<Check> margins) {
    /** Keeps the list. */
    public CollarProposal {
        margins = List.copyOf(margins);
    }
}
