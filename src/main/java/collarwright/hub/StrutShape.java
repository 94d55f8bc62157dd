package collarwright.hub;

/**
 * A kind of strut before it has a size: all members of one chord factor.
 *
 * @param chordFactor chord of the unit sphere
 * @param axialAngle angle between the strut and the hub's plane, the same at both ends on a sphere
 * @param count how many there are in the dome
 */
public record StrutShape(double chordFactor, double axialAngle, int count) {}
