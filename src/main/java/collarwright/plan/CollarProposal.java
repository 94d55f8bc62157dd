package collarwright.plan;

import collarwright.stock.RoundStock;

/**
 * A collar with its ring that would do for a job.
 *
 * @param collar the pipe
 * @param width of the collar along its axis
 * @param ring the pipe or bar of the centre ring
 * @param ringWidth of the ring along its axis
 * @param slack the most that a hole lets a strut lean further than needed: a thicker wall makes the steps of a rack finer
 * @param tightest the check with the least margin in hole or strut diameters or millimetres
 */
public record CollarProposal(
        RoundStock collar, double width, RoundStock ring, double ringWidth, double slack, Check tightest) {}
