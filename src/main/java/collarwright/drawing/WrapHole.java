package collarwright.drawing;

import collarwright.tooling.Hole;

/**
 * One hole of a wrap template: where it lies on the collar and on the paper.
 *
 * @param hole the hole of the pattern
 * @param outline its shape on the paper
 * @param arcOnCollar from the 0° line to its axis, clockwise from above, along the collar's outside
 * @param arcOnPaper the same along the paper; on the face of the paper, TOP up, it is counted to the left
 * @param fromLeftEnd from the paper's left end to its axis, to the right
 */
public record WrapHole(Hole hole, HoleOutline outline, double arcOnCollar, double arcOnPaper, double fromLeftEnd) {}
