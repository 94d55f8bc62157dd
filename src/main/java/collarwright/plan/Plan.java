package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import collarwright.tooling.Placement;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
     * Returns how the hubs of a type sit on their pattern.
     *
     * @param hubType index of the hub type
     * @return the placement
     */
    public Placement placement(int hubType) {
        return book.placements().get(hubType);
    }

    /**
     * Returns where uphill is on a node's collar.
     *
     * @param node node index
     * @return azimuth of "up the dome" from the pattern's 0° line, clockwise seen with TOP toward the eye, in [0, 2π)
     */
    public double turn(int node) {
        return placement(hubs.typeOf(node)).onPattern(hubs.turnOf(node));
    }

    /**
     * Returns the hole that the end a of a member goes into.
     *
     * @param member member index
     * @return hole number on the pattern, from 1
     */
    public int holeAtA(int member) {
        return placement(hubs.typeOf(hubs.nodeAtA(member))).holes().get(hubs.holeAtA(member) - 1) + 1;
    }

    /**
     * Returns the hole that the end b of a member goes into.
     *
     * @param member member index
     * @return hole number on the pattern, from 1
     */
    public int holeAtB(int member) {
        return placement(hubs.typeOf(hubs.nodeAtB(member))).holes().get(hubs.holeAtB(member) - 1) + 1;
    }

    /**
     * Tells whether a hub takes its collar upside down, TOP toward the inside of the dome.
     *
     * @param node node index
     * @return true if it is turned over
     */
    public boolean flipped(int node) {
        return placement(hubs.typeOf(node)).flipped();
    }

    /**
     * Lists the hub types that a pattern serves.
     *
     * @param pattern index of the pattern
     * @return indices of the hub types, ascending
     */
    public List<Integer> served(int pattern) {
        return IntStream.range(0, hubs.types().size())
                .filter(type -> placement(type).pattern() == pattern)
                .boxed()
                .toList();
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
