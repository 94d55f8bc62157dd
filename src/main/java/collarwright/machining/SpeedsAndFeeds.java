package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.Optional;

/**
 * How fast a cutter turns and feeds on a machine, the same for programs and for people's papers.
 *
 * <p>rpm = 1000 · v / (π · D), v the surface speed in m/min and D the marked size in mm; feed = advance per turn · rpm;
 * both held within what cutter and machine can do. Source of the formula: definition of surface speed.
 */
public final class SpeedsAndFeeds {

    /** How far over the cutting data a speed may rise, as a factor: our choice, no source. */
    public static final double OVER = 1.25;

    private SpeedsAndFeeds() {}

    /**
     * Works out speed and feed of one cutter.
     *
     * @param settings machine, cutting data and unit; a press is fed by hand, so no highest feed holds it
     * @param cutter the cutter
     * @return speed, feed, peck, the two formulas in words and the source of the data; empty if the cutting data have no
     *     row for the cutter, or if the spindle cannot turn it: a program's spindle within the cutter's range and a
     *     quarter over the cutting data, a press within the cutter's range. {@link RotaryJob#plan} has the findings.
     */
    public static Optional<Cut> of(RotarySettings settings, Cutter cutter) {
        return new CutPlanner(settings).plan(cutter);
    }
}
