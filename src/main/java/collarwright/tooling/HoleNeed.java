package collarwright.tooling;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;

/**
 * What a hole has to fit.
 *
 * @param body the collar
 * @param strut strut diameter with its limits
 * @param lean the lean that is needed, 0 or more
 */
public record HoleNeed(CollarBody body, Interval strut, double lean) {}
