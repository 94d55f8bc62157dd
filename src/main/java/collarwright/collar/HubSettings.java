package collarwright.collar;

import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;
import java.util.Optional;

/**
 * What every hub is made of.
 *
 * @param collar the pipe that collars are cut from; has a wall
 * @param width of the collar along its axis
 * @param ring the pipe or bar of the centre ring
 * @param ringWidth of the centre ring along its axis
 * @param fix how the strut ends are held to the ring
 * @param endGap least distance that a strut's end face keeps from the ring
 * @param rims size of the 45° chamfer on both rims of every hole; 0 for sharp rims
 * @param heights at which the holes are drilled
 * @param trialPiece what a test collar showed; empty if the full wall is taken to bear
 */
public record HubSettings(
        RoundStock collar,
        double width,
        RoundStock ring,
        double ringWidth,
        Fix fix,
        double endGap,
        double rims,
        Heights heights,
        Optional<TrialPiece> trialPiece) {
    /** Checks the sizes. */
    public HubSettings {
        if (collar.wall().isEmpty() || !(width > 0 && ringWidth > 0 && endGap >= 0)) {
            throw new IllegalArgumentException("a hub needs a pipe with a wall, widths above 0 and a gap");
        }
    }

    /**
     * A hub of which no test collar was made.
     *
     * @param collar the pipe that collars are cut from; has a wall
     * @param width of the collar along its axis
     * @param ring the pipe or bar of the centre ring
     * @param ringWidth of the centre ring along its axis
     * @param fix how the strut ends are held to the ring
     * @param endGap least distance that a strut's end face keeps from the ring
     * @param rims size of the 45° chamfer on both rims of every hole; 0 for sharp rims
     */
    public HubSettings(
            RoundStock collar, double width, RoundStock ring, double ringWidth, Fix fix, double endGap, double rims) {
        this(collar, width, ring, ringWidth, fix, endGap, rims, Heights.MIDPLANE);
    }

    /**
     * A hub whose holes keep sharp rims.
     *
     * @param collar the pipe that collars are cut from; has a wall
     * @param width of the collar along its axis
     * @param ring the pipe or bar of the centre ring
     * @param ringWidth of the centre ring along its axis
     * @param fix how the strut ends are held to the ring
     * @param endGap least distance that a strut's end face keeps from the ring
     */
    public HubSettings(RoundStock collar, double width, RoundStock ring, double ringWidth, Fix fix, double endGap) {
        this(collar, width, ring, ringWidth, fix, endGap, 0);
    }

    /**
     * A hub of which no test collar was made.
     *
     * @param collar the pipe that collars are cut from; has a wall
     * @param width of the collar along its axis
     * @param ring the pipe or bar of the centre ring
     * @param ringWidth of the centre ring along its axis
     * @param fix how the strut ends are held to the ring
     * @param endGap least distance that a strut's end face keeps from the ring
     * @param rims size of the 45° chamfer on both rims of every hole
     * @param heights at which the holes are drilled
     */
    public HubSettings(
            RoundStock collar,
            double width,
            RoundStock ring,
            double ringWidth,
            Fix fix,
            double endGap,
            double rims,
            Heights heights) {
        this(collar, width, ring, ringWidth, fix, endGap, rims, heights, Optional.empty());
    }

    /**
     * The same hub cut from another pipe; its rims are eased as far as the new wall allows. What a test
     * collar showed is left behind: the full wall of the new pipe bears until it is tried, too.
     *
     * @param other the pipe; has a wall
     * @return the hub
     */
    public HubSettings cutFrom(RoundStock other) {
        double allowed = other.wall().map(w -> w.min() / 2 > rims ? rims : 0).orElse(0.0);
        return new HubSettings(other, width, ring, ringWidth, fix, endGap, allowed, heights);
    }

    /**
     * The same hub with what a test collar showed.
     *
     * @param piece the trial piece; only with sharp rims, since it has measured what the rims do
     * @return the hub
     */
    public HubSettings with(TrialPiece piece) {
        return new HubSettings(collar, width, ring, ringWidth, fix, endGap, rims, heights, Optional.of(piece));
    }

    /**
     * Returns the collar as a body.
     *
     * @return the ring of pipe
     */
    public CollarBody body() {
        Interval wall = collar.wall().orElseThrow();
        return new CollarBody(collar.outerRadius(), wall, width, rims, trialPiece.map(piece -> piece.bearingIn(wall)));
    }
}
