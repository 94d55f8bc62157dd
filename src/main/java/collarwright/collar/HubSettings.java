package collarwright.collar;

import collarwright.stock.RoundStock;

/**
 * What every hub is made of.
 *
 * @param collar the pipe that collars are cut from; has a wall
 * @param width of the collar along its axis
 * @param ring the pipe or bar of the centre ring
 * @param ringWidth of the centre ring along its axis
 * @param fix how the strut ends are held to the ring
 * @param endGap least distance that a strut's end face keeps from the ring
 */
public record HubSettings(RoundStock collar, double width, RoundStock ring, double ringWidth, Fix fix, double endGap) {
    /** Checks the sizes. */
    public HubSettings {
        if (collar.wall().isEmpty() || !(width > 0 && ringWidth > 0 && endGap >= 0)) {
            throw new IllegalArgumentException("a hub needs a pipe with a wall, widths above 0 and a gap");
        }
    }

    /**
     * Returns the collar as a body.
     *
     * @return the ring of pipe
     */
    public CollarBody body() {
        return new CollarBody(collar.outerRadius(), collar.wall().orElseThrow(), width);
    }
}
