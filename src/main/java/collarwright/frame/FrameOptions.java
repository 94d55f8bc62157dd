package collarwright.frame;

import collarwright.units.LengthUnit;
import java.util.Optional;

/**
 * How a frame's file is to be read.
 *
 * @param unit of its numbers; empty where the file has to say it
 * @param merge vertices nearer than this are one node, mm, 0 or more
 * @param upY whether the file's y points up; otherwise its z does
 */
public record FrameOptions(Optional<LengthUnit> unit, double merge, boolean upY) {

    /** What is merged where nothing is said, mm. Our choice, no source: far below what a saw can do. */
    public static final double USUAL_MERGE = 0.1;

    /** Checks the tolerance. */
    public FrameOptions {
        if (!(merge >= 0 && merge < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no tolerance: " + merge);
        }
    }
}
