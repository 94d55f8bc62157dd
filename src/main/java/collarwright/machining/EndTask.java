package collarwright.machining;

import collarwright.hub.StrutTip;
import java.util.List;

/**
 * What one program does to one strut.
 *
 * @param stops the strut type with its holes
 * @param atStop the end that lies against the stop
 * @param holes one, or both in line
 * @param cut how the drill turns and feeds
 * @param heights crown, R plane and clear height
 */
public record EndTask(EndStops stops, StrutTip atStop, List<EndHole> holes, Cut cut, Heights heights) {
    /** Number of the one drill on a machine that changes cutters. */
    public static final int TOOL = 1;

    /** Checks that there is something to drill. */
    public EndTask {
        holes = List.copyOf(holes);
        if (holes.isEmpty() || holes.size() > 2) {
            throw new IllegalArgumentException(stops.type() + ": one hole or two");
        }
    }

    /**
     * Tells whether both holes are drilled in one line from one stop.
     *
     * @return false if the strut is turned end for end between two programs
     */
    public boolean inLine() {
        return holes.size() == 2;
    }

    /**
     * Returns how far the drill has to stand out of its holder, so that the holder stays above the clamps.
     *
     * @param lead how far the drill's point stands out beyond its full diameter
     * @return from the holder to the point, mm
     */
    public double stickOut(double lead) {
        return heights.clear() - lead - deepest();
    }

    /**
     * Returns the deepest Z.
     *
     * @return the least bottom
     */
    public double deepest() {
        return holes.stream().mapToDouble(EndHole::bottom).min().orElseThrow();
    }
}
