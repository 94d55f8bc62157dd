package collarwright.job;

import collarwright.finding.Finding;
import java.util.List;
import java.util.Optional;

/** Opens the file of a frame that a job names. */
@FunctionalInterface
public interface FrameFiles {

    /** There are none. */
    FrameFiles NONE = name -> new Opened(Optional.empty(), List.of());

    /**
     * Opens a file.
     *
     * @param name as the job names it, beside the job
     * @return its content
     */
    Opened open(String name);

    /**
     * What came of opening a file.
     *
     * @param bytes its content; empty where it could not be read
     * @param findings why it could not; none where there is no such file
     */
    record Opened(Optional<byte[]> bytes, List<Finding> findings) {
        /** Keeps the findings. */
        public Opened {
            findings = List.copyOf(findings);
        }
    }
}
