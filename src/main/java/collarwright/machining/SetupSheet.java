package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.List;
import java.util.Optional;

/**
 * What the operator has to know to load and run one kind of stick; a traveller prints it.
 *
 * @param machine the machine's title
 * @param load what lies where, runs, stick length and the first collar's place
 * @param zero where X, Y, Z and A are zero and where TOP faces
 * @param stick the stick's lengths
 * @param steps the cutters in their order, each with its file
 * @param notes what else to watch, the rotary direction test by its file name first
 */
public record SetupSheet(String machine, Load load, Zero zero, Stick stick, List<Step> steps, List<String> notes) {
    /** Keeps the lists. */
    public SetupSheet {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /**
     * Where the axes are zero, in words.
     *
     * @param x X0
     * @param y Y0
     * @param z Z0, with the value to set when the tip touches the crown
     * @param a A0, with the side from which it is approached
     * @param top where TOP faces
     */
    public record Zero(String x, String y, String z, String a, String top) {}

    /**
     * The stick's lengths.
     *
     * @param needed least length of the stick
     * @param inChuck length inside the chuck
     * @param stickOut how far it stands out of the jaws
     * @param firstEdge X of the first collar's edge at the chuck
     * @param firstMiddle X of the first collar's mid-plane
     * @param pitch from collar to collar
     */
    public record Stick(
            double needed, double inChuck, double stickOut, double firstEdge, double firstMiddle, double pitch) {}

    /**
     * One cutter with its file; several steps in a row may have one file.
     *
     * @param order from 1
     * @param file the program
     * @param airFile its air-cut version, if the machine's travel allows one
     * @param cutter the cutter
     * @param tool its number in the programs of the job, from 1
     * @param cut speed and feed with their formulas
     * @param clear clear height, Z
     * @param bottom deepest Z of the cutter's lowest point
     * @param depth the same below the crown
     * @param stickOut how far the cutter's lowest point has to stand out of its holder, so that the holder stays above
     *     jaws and pipe by the clear gap when the hole is deepest
     * @param operations holes or dimples made
     * @param effort running time, turns and travel
     */
    public record Step(
            int order,
            String file,
            Optional<String> airFile,
            Cutter cutter,
            int tool,
            Cut cut,
            double clear,
            double bottom,
            double depth,
            double stickOut,
            int operations,
            ProgramFile.Effort effort) {}

    /**
     * Returns how many files are run on a stick.
     *
     * @return as many as steps, or one where a file has all cutters
     */
    public int files() {
        return (int) steps.stream().map(Step::file).distinct().count();
    }

    /**
     * Returns what all files on one stick take.
     *
     * @return time, turns and travel with the least possible; loading, tool changes, pauses, and the way back to the
     *     start of the next file not counted
     */
    public ProgramFile.Effort onOneStick() {
        return steps.stream().map(Step::effort).reduce(ProgramFile.Effort.NONE, ProgramFile.Effort::plus);
    }

    /**
     * Returns what all files on all sticks of this kind take.
     *
     * @return that of one stick, times the runs of the load
     */
    public ProgramFile.Effort inAll() {
        return onOneStick().times(load.runs());
    }
}
