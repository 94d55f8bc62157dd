package collarwright.job;

import collarwright.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a job file.
 *
 * @param job the job; empty if a finding stops it
 * @param findings everything that is wrong or doubtful, in the order of the text; warnings stay with a good job
 */
public record JobReading(Optional<Job> job, List<Finding> findings) {
    /** Keeps the list. */
    public JobReading {
        findings = List.copyOf(findings);
    }
}
