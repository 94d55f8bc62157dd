package collarwright.machining;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import java.util.List;

/**
 * All programs for flat strips. Nothing here has been rehearsed yet.
 *
 * @param programs by strip and cutter, each followed by its air cut; empty if any finding stops the work
 * @param findings stops, warnings and notes
 */
public record FlatPlan(List<BenchProgram<FlatTask>> programs, List<Finding> findings) {

    /** Nothing to drill by program. */
    public static final FlatPlan NONE = new FlatPlan(List.of(), List.of());

    /** Checks that no program stands beside a stop. */
    public FlatPlan {
        programs = List.copyOf(programs);
        findings = List.copyOf(findings);
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP) && !programs.isEmpty()) {
            throw new IllegalArgumentException("no program may stand beside a stop");
        }
    }
}
