package collarwright.machining;

import collarwright.collar.CollarBody;
import java.util.List;

/**
 * The pipe that collars are drilled in and cut from.
 *
 * @param title its name for people, such as {@code PVC-U pipe 160 × 4.7}
 * @param body outside radius, wall and width of each collar
 * @param outOfRound largest less smallest outside diameter at one place, 0 if not known
 * @param measured whether outside diameter and wall were measured on the pipe itself
 * @param lengths lengths it is sold in, ascending; empty if not known
 */
public record Workpiece(String title, CollarBody body, double outOfRound, boolean measured, List<Double> lengths) {
    /** Checks the sizes and keeps the lengths in order. */
    public Workpiece {
        lengths = lengths.stream().sorted().toList();
        if (!(outOfRound >= 0 && outOfRound < body.outerRadius()) || lengths.stream().anyMatch(l -> !(l > 0))) {
            throw new IllegalArgumentException(title + ": out-of-round is 0 or more, lengths are above 0");
        }
    }
}
