package collarwright.trial;

import collarwright.geometry.Interval;

/**
 * What a fit says about one unknown.
 *
 * @param value with its 95 % limits, from the profile of the sum of squares; without spread where it was given
 * @param standardError of the value while the other unknown is free too; 0 where it was given, infinite where the rows say
 *     nothing about it
 * @param given whether it was given and not fitted
 * @param atBound whether it stands on the end of what it can be, so that its limits reach to one side only
 */
public record Estimate(Interval value, double standardError, boolean given, boolean atBound) {}
