package collarwright.hub;

/**
 * A kind of strut before it has a size: all members of one chord factor, with the same two ends and the same twist.
 *
 * @param chordFactor distance of its nodes in the dome's unit
 * @param axialA angle between the strut and the hub's plane at end a, positive where it leans inward; not larger than
 *     at end b
 * @param axialB the same at end b
 * @param twist from the tie hole at end a to the one at end b about the strut, clockwise looking from a to b, in (−π/2,
 *     π/2]; a tie hole is square to the strut and tangent to its hub
 * @param count how many there are in the dome
 */
public record StrutShape(double chordFactor, double axialA, double axialB, double twist, int count) {

    /**
     * Returns the axial angle at an end.
     *
     * @param end which end
     * @return angle
     */
    public double axialAngle(StrutTip end) {
        return end == StrutTip.A ? axialA : axialB;
    }
}
