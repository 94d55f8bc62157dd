package collarwright.machining;

/**
 * The stop and the seat of a machine that drills the ends of struts; or the table of a flat machine, which has no stop.
 *
 * <p>Frame: X0 is the face of the stop, +X goes along the strut; Z0 is the axis of a strut of nominal diameter in its
 * seat, which is flat or a V that opens by 40° or more.
 *
 * @param clampHeight how far clamps stand out above the strut
 * @param stopClear least distance of the drill's side from the stop, whenever it is below the clear height
 * @param under room below the strut where a drill comes through; of a flat table, how deep the board below the sheet may be cut
 */
public record Bed(double clampHeight, double stopClear, double under) {
    /** Checks the lengths. */
    public Bed {
        if (!(clampHeight >= 0 && stopClear >= 0 && under >= 0 && Double.isFinite(clampHeight + stopClear + under))) {
            throw new IllegalArgumentException("bed: lengths at the stop and the seat are 0 or more");
        }
    }
}
