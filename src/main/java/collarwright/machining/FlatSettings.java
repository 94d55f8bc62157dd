package collarwright.machining;

import collarwright.tooling.Cutter;

/**
 * Everything that drilling flat strips needs beside the strips.
 *
 * <p>Frame: X0 and Y0 at the lower left corner of a strip that lies outer face up with TOP away from the operator, +X along
 * it, +Y toward TOP; Z0 on its upper face.
 *
 * @param cuts machine with a flat table, program units, cutting data of the collars' material
 * @param label title and revision for the headers
 * @param overtravel how far the full diameter goes beyond the strip, 0 or more
 * @param mark the drill for the dimples
 */
public record FlatSettings(CutSettings cuts, JobLabel label, double overtravel, MarkTool mark) {
    /** Checks the machine and the overtravel. */
    public FlatSettings {
        if (cuts.machine().kind() != Machine.Kind.FLAT) {
            throw new IllegalArgumentException(cuts.machine().name() + ": no flat table");
        }
        if (!(overtravel >= 0 && Double.isFinite(overtravel))) {
            throw new IllegalArgumentException("overtravel is 0 or more");
        }
    }

    /**
     * Returns the machine.
     *
     * @return a machine of the kind FLAT
     */
    public Machine machine() {
        return cuts.machine();
    }

    /**
     * Returns the table.
     *
     * @return clamps and the board below the sheet
     */
    public Bed table() {
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
     * Returns how many plugs a hole saw holds.
     *
     * @param task what it drills
     * @return holes until it is full, 1 or more; 0 for what is no hole saw, or only sets dimples
     */
    public int plugs(FlatTask task) {
        double thickness = task.strip().body().wall().max();
        return task.marks() ? 0 : SawPlugs.most(thickness, task.cutter(), overtravel);
    }

    /**
     * Returns where a cutter may travel.
     *
     * @param cutter the cutter
     * @return Z above the strip, on no grid yet
     */
    public double clear(Cutter cutter) {
        return table().clampHeight() + machine().travel().clearGap() + cutter.lead();
    }
}
