package collarwright.hub;

/**
 * One strut of a hub.
 *
 * @param strutType index into the strut types, shortest first
 * @param tip which end of the strut it is; {@link StrutTip#A} where both are alike
 * @param azimuth clockwise from above, from the hub's 0° line, in [0, 2π)
 * @param axialAngle between the strut and the hub's plane, positive where the strut leans inward
 */
public record HubStrut(int strutType, StrutTip tip, double azimuth, double axialAngle) {}
