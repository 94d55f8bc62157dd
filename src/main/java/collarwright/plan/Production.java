package collarwright.plan;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.Job;
import collarwright.machining.JobLabel;
import collarwright.machining.MarkTool;
import collarwright.machining.PatternRun;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.Workpiece;
import collarwright.rehearsal.Rehearsal;
import collarwright.stock.RoundStock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A plan with the programs that make it.
 *
 * @param plan the plan
 * @param rotary the programs; none for a press or where the plan is stopped
 * @param findings of both, stops first
 */
public record Production(Plan plan, RotaryPlan rotary, List<Finding> findings) {

    /** Keeps the findings. */
    public Production {
        findings = List.copyOf(findings);
    }

    /**
     * Plans a job and its programs.
     *
     * @param job the job
     * @param collarStocks pipes that may be offered where the job's collar is too small
     * @return plan and programs with all findings, also where one stops them
     */
    public static Production of(Job job, List<RoundStock> collarStocks) {
        Plan plan = Planner.plan(job, collarStocks);
        List<PatternRun> runs = runs(plan);
        RotarySettings settings = settings(job);
        RotaryPlan rotary = RotaryJob.plan(settings, runs, job.shop().sticks());
        List<Finding> findings = new ArrayList<>(plan.findings());
        rotary.findings().stream().filter(f -> !findings.contains(f)).forEach(findings::add);
        findings.addAll(Rehearsal.rehearse(rotary, settings, rotary.programs().isEmpty() ? List.of() : runs));
        findings.sort(Comparator.comparing(Finding::level));
        return new Production(plan, rotary, findings);
    }

    private static List<PatternRun> runs(Plan plan) {
        return plan.book().patterns().stream()
                .map(p -> new PatternRun(p, plan.job().order().made(p.count())))
                .toList();
    }

    /**
     * Returns what the machining of a job has to know beside its patterns.
     *
     * @param job the job
     * @return its settings
     */
    public static RotarySettings settings(Job job) {
        return new RotarySettings(
                job.shop().machine(),
                job.shop().programUnits(),
                job.shop().cutting(),
                Workpiece.of(job.hub().collar(), job.hub().body()),
                new JobLabel(job.title(), job.revision()),
                job.limits().overtravel(),
                MarkTool.from(job.drilling().cutters()));
    }

    /**
     * The same production with other findings, also in its plan.
     *
     * @param all what a person has to know, stops first
     * @return a production that differs in nothing else
     */
    public Production with(List<Finding> all) {
        return new Production(plan.with(all), rotary, all);
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
