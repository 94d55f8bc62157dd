package collarwright.trial;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;

/**
 * What a ladder of holes is laid out for.
 *
 * @param body the test collar
 * @param strut diameter of the strut that will be leaned, with its limits
 * @param largestNeed the largest lean that the job needs
 * @param web least web between holes at the inner wall and to the edge, in hole diameters
 */
public record LadderNeed(CollarBody body, Interval strut, double largestNeed, double web) {

    /** The collar as the fit sees it. */
    TrialCollar collar() {
        return new TrialCollar(body.outerRadius(), body.wall().nominal());
    }
}
