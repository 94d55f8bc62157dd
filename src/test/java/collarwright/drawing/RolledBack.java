package collarwright.drawing;

import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A printed wrap, rolled round its collar in space as a person does it: printed face out, TOP up. It knows nothing of
 * azimuths to the left or right; it only holds the paper against the pipe.
 *
 * <p>The pipe stands on z, TOP is +z. The paper's 0° line is laid on +x. A reader who looks at the pipe from outside there
 * looks along −x with z up, so his right hand points along (−x) × z = +y.
 *
 * @param zero x of the 0° line on the sheet
 * @param middle y of the collar's mid-plane on the sheet
 * @param paperRadius radius of the middle of the paper
 */
public record RolledBack(double zero, double middle, double paperRadius) {

    /** A point in space. */
    public record Space(double x, double y, double z) {}

    /** Lays a point of the sheet onto the paper's middle, then straight in to the pipe's surface. */
    public Space place(Point p, double pipeRadius) {
        double turn = (p.x() - zero) / paperRadius;
        return new Space(pipeRadius * StrictMath.cos(turn), pipeRadius * StrictMath.sin(turn), p.y() - middle);
    }

    /**
     * Where the axis of a hole meets the pipe: azimuth clockwise seen from above, that is from +x toward −y.
     *
     * @param hole as planned
     */
    public static Space planned(Hole hole, double pipeRadius) {
        return new Space(
                pipeRadius * StrictMath.cos(hole.azimuth()),
                -pipeRadius * StrictMath.sin(hole.azimuth()),
                hole.height());
    }

    /** How far the marked axes are from the planned ones, hole by hole, each taken to the nearest mark. */
    public List<Double> misses(List<Point> marks, List<Hole> holes, double pipeRadius) {
        List<Double> misses = new ArrayList<>();
        for (Hole hole : holes) {
            Space planned = planned(hole, pipeRadius);
            misses.add(marks.stream()
                    .map(mark -> place(mark, pipeRadius))
                    .map(at -> distance(at, planned))
                    .min(Comparator.naturalOrder())
                    .orElseThrow());
        }
        return misses;
    }

    /** Straight distance. */
    public static double distance(Space a, Space b) {
        return StrictMath.sqrt(
                StrictMath.pow(a.x() - b.x(), 2) + StrictMath.pow(a.y() - b.y(), 2) + StrictMath.pow(a.z() - b.z(), 2));
    }
}
