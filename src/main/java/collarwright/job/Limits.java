package collarwright.job;

/**
 * The limits that checks hold a plan to. The defaults are our choice, without a source.
 *
 * @param webStop least web between holes at the inner wall and to the edge, in hole diameters; below it the plan stops
 * @param webWarn the same, below it the plan warns
 * @param engagementStop least engagement of a strut inside the inner rim, in strut diameters; below it the plan stops
 * @param engagementWarn the same, below it the plan warns
 * @param slackWarn largest slack without a warning, an angle
 * @param overtravel how far a drill goes beyond the full diameter's break-through
 * @param workingClearance how far a strut's end has to be clear of a hole so that it can be aimed at it
 */
public record Limits(
        double webStop,
        double webWarn,
        double engagementStop,
        double engagementWarn,
        double slackWarn,
        double overtravel,
        double workingClearance) {

    /** The default limits. */
    public static final Limits DEFAULT = new Limits(0, 0.5, 0, 0.5, StrictMath.PI / 90, 1, 2);

    /** Checks the ranges. */
    public Limits {
        if (!(webWarn >= webStop
                && engagementWarn >= engagementStop
                && slackWarn >= 0
                && overtravel >= 0
                && workingClearance >= 0)) {
            throw new IllegalArgumentException("a warning limit lies below its stop limit, or a limit is negative");
        }
    }
}
