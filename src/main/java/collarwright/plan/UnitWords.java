package collarwright.plan;

import collarwright.finding.Finding;
import collarwright.job.Job;
import collarwright.machining.ProgramUnits;
import collarwright.units.InchesFirst;
import java.util.List;

/** Says lengths in the unit that a job's shop works in: inches first, with millimetres behind, where that is inches. */
public final class UnitWords {

    private UnitWords() {}

    /**
     * Tells whether a job's shop works in inches.
     *
     * @param job the job
     * @return true if its programs are in inches
     */
    public static boolean inches(Job job) {
        return job.shop().programUnits() == ProgramUnits.INCH;
    }

    /**
     * Words a sentence for a job's shop.
     *
     * @param job the job
     * @param text lengths in mm
     * @return the same in an mm job; with inches first in an inch job
     */
    public static String of(Job job, String text) {
        return inches(job) ? InchesFirst.of(text) : text;
    }

    /**
     * Words findings for a job's shop.
     *
     * @param job the job
     * @param findings in any order
     * @return the same findings in the same order
     */
    public static List<Finding> of(Job job, List<Finding> findings) {
        return findings.stream()
                .map(f -> new Finding(
                        f.level(),
                        f.code(),
                        f.where(),
                        of(job, f.expected()),
                        of(job, f.found()),
                        f.hints().stream().map(hint -> of(job, hint)).toList()))
                .toList();
    }
}
