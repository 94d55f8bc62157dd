package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.Comparator;
import java.util.List;

/** Tells what is wrong with a program of ours that did not pass its replay. */
final class FaultyProgram {

    /** A broken program breaks a rule on most of its lines; more than this helps nobody: our choice, no source. */
    private static final int MOST = 25;

    private FaultyProgram() {}

    /** One stop for each fault, by line, the first 25 if there are more. */
    static List<Finding> findings(String file, List<Fault> faults) {
        return faults.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Fault::line))
                .limit(MOST)
                .map(fault -> Finding.stop(
                        Code.REHEARSAL_FAILED,
                        new Where.Text(file, fault.line(), 1),
                        fault.expected(),
                        fault.found(),
                        "do not run this program: it did not pass its own replay",
                        "report it with the job file: whatever wrote it is at fault"))
                .toList();
    }
}
