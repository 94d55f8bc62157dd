package collarwright.machining;

/**
 * Everything that rotary drilling needs beside the patterns.
 *
 * @param machine the machine; a press gives no programs
 * @param units unit of lengths in the programs
 * @param cutting speeds and feeds for the pipe's material
 * @param work the pipe
 * @param label title and revision for the headers
 * @param overtravel how far the cutting edge goes beyond the point where the full diameter is through, 0 or more
 * @param mark the drill for the dimples
 */
public record RotarySettings(
        Machine machine,
        ProgramUnits units,
        CuttingData cutting,
        Workpiece work,
        JobLabel label,
        double overtravel,
        MarkTool mark) {
    /** Checks the overtravel. */
    public RotarySettings {
        if (!(overtravel >= 0 && Double.isFinite(overtravel))) {
            throw new IllegalArgumentException("overtravel is 0 or more");
        }
    }

    /**
     * Returns what speeds and feeds depend on.
     *
     * @return machine, units and cutting data
     */
    public CutSettings cuts() {
        return new CutSettings(machine, units, cutting);
    }

    /**
     * Returns the steps in which the programs count.
     *
     * @return the grid of lengths and angles
     */
    public Grid grid() {
        return Grid.of(machine.post(), units);
    }
}
