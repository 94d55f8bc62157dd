package collarwright.machining;

import collarwright.tooling.Cutter;

/**
 * Everything that drilling the ends of struts needs beside the struts' lengths.
 *
 * @param cuts machine with a bed, program units, cutting data of the struts' material
 * @param bar the strut in its seat
 * @param drill the drill for the tie holes
 * @param label title and revision for the headers
 * @param overtravel how far the full diameter goes beyond the far side, 0 or more
 */
public record BedSettings(CutSettings cuts, StrutBar bar, Cutter drill, JobLabel label, double overtravel) {
    /** Checks the machine and the overtravel. */
    public BedSettings {
        if (cuts.machine().kind() != Machine.Kind.BED) {
            throw new IllegalArgumentException(cuts.machine().name() + ": no bed for struts");
        }
        if (!(overtravel >= 0 && Double.isFinite(overtravel))) {
            throw new IllegalArgumentException("overtravel is 0 or more");
        }
    }

    /**
     * Returns the machine.
     *
     * @return a machine of the kind BED
     */
    public Machine machine() {
        return cuts.machine();
    }

    /**
     * Returns stop and seat.
     *
     * @return those of the machine
     */
    public Bed bed() {
        return cuts.machine().bed().orElseThrow();
    }

    /**
     * Returns the steps in which the programs count.
     *
     * @return the grid
     */
    public Grid grid() {
        return cuts.grid();
    }

    /**
     * Returns how low the drill's point goes: its full diameter beyond the far side by the overtravel, so through both
     * walls of a tube and through all of a bar.
     *
     * @return Z on no grid yet
     */
    public double bottom() {
        return bar.lowest() - overtravel - drill.lead();
    }

    /**
     * Returns how long the drill's flutes have to be.
     *
     * @return from the highest crown to where the full diameter ends
     */
    public double flutes() {
        return bar.highest() - bar.lowest() + overtravel;
    }
}
