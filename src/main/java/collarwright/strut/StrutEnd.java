package collarwright.strut;

import java.util.Optional;

/**
 * One end of a strut.
 *
 * @param axialAngle between the strut and the hub's plane, positive where the strut leans inward
 * @param setback along the strut, from the node to the cut end
 * @param drill from this cut end to the axis of its tie hole; empty if none is drilled
 */
public record StrutEnd(double axialAngle, double setback, Optional<Double> drill) {}
