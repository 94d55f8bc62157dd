package collarwright.machining;

import collarwright.tooling.Cutter;
import collarwright.tooling.FlatStrip;
import java.util.List;

/**
 * What one program does with one cutter to one strip.
 *
 * @param strip the strip
 * @param cutter the cutter
 * @param cut how it turns and feeds
 * @param heights upper face (0), R plane and clear height
 * @param points where it drills, in order
 * @param marks whether it only sets dimples
 * @param tool the cutter's number in the job, from 1
 */
public record FlatTask(
        FlatStrip strip, Cutter cutter, Cut cut, Heights heights, List<FlatPoint> points, boolean marks, int tool) {
    /** Checks that there is something to drill. */
    public FlatTask {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException(strip.pattern() + ": one hole or more");
        }
    }

    /**
     * A hole or a dimple.
     *
     * @param title its name for people
     * @param x along the strip
     * @param y across it
     * @param bottom Z of the cutter's lowest point
     */
    public record FlatPoint(String title, double x, double y, double bottom) {}

    /**
     * Returns how far the cutter has to stand out of its holder, so that the holder stays above the clamps.
     *
     * @return from the holder to the cutter's lowest point, mm
     */
    public double stickOut() {
        return heights.clear() - cutter.lead() - deepest();
    }

    /**
     * Returns the deepest Z.
     *
     * @return the least bottom
     */
    public double deepest() {
        return points.stream().mapToDouble(FlatPoint::bottom).min().orElseThrow();
    }
}
