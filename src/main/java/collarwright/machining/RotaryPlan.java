package collarwright.machining;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import java.util.List;

/**
 * All programs of a job for a machine that turns the pipe.
 *
 * <p>Nothing here has been rehearsed yet.
 *
 * @param programs by pattern, load and order, each followed by its air-cut version; the rotary direction test last;
 *     empty if any finding stops the work, since half a set of programs cuts metal
 * @param setups one for each pattern and load
 * @param findings stops, warnings and notes
 */
public record RotaryPlan(List<ProgramFile> programs, List<SetupSheet> setups, List<Finding> findings) {
    /** Checks that no program stands beside a stop. */
    public RotaryPlan {
        programs = List.copyOf(programs);
        setups = List.copyOf(setups);
        findings = List.copyOf(findings);
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP) && !(programs.isEmpty() && setups.isEmpty())) {
            throw new IllegalArgumentException("no program may stand beside a stop");
        }
    }
}
