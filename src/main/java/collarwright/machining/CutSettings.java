package collarwright.machining;

/**
 * What speeds and feeds depend on beside the cutter.
 *
 * @param machine the machine with its spindle and its highest feed
 * @param units unit of lengths in the programs
 * @param cutting cutting data of the material
 */
public record CutSettings(Machine machine, ProgramUnits units, CuttingData cutting) {

    /**
     * Returns the steps in which the programs count.
     *
     * @return the grid of lengths and angles
     */
    public Grid grid() {
        return Grid.of(machine.post(), units);
    }
}
