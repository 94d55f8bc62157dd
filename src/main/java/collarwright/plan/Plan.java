package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import java.util.List;
import java.util.Optional;

/**
 * Everything that is computed of a job before it is drawn or printed.
 *
 * @param job the job
 * @param hubs the dome and its hubs
 * @param struts the struts and the size of the dome
 * @param book hole sizes and patterns
 * @param assembly whether and how it goes together; empty where holes have no cutter or a check stops
 * @param checks all checks, the worst margin first within each kind
 * @param findings what a person has to know, stops first
 */
public record Plan(
        Job job,
        Hubs hubs,
        StrutLayout struts,
        PatternBook book,
        Optional<Assembly> assembly,
        List<Check> checks,
        List<Finding> findings) {

    /** Keeps the lists. */
    public Plan {
        checks = List.copyOf(checks);
        findings = List.copyOf(findings);
    }

    /**
     * The same plan with other findings, such as those of its programs.
     *
     * @param all what a person has to know, stops first
     * @return a plan that differs in nothing else
     */
    public Plan with(List<Finding> all) {
        return new Plan(job, hubs, struts, book, assembly, checks, all);
    }

    /**
     * Tells whether nothing stops the work.
     *
     * @return true if no finding is a stop
     */
    public boolean makeable() {
        return findings.stream().noneMatch(f -> f.level() == Level.STOP);
    }
}
