package collarwright.frame;

import collarwright.finding.Finding;
import collarwright.units.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a frame.
 *
 * @param frame the frame; empty after a stop
 * @param unit the unit that the file was read in; mm after a stop
 * @param findings all that was found
 */
public record FrameReading(Optional<FrameNet> frame, LengthUnit unit, List<Finding> findings) {
    /** Keeps the findings. */
    public FrameReading {
        findings = List.copyOf(findings);
    }
}
