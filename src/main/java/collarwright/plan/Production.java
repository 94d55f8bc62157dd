package collarwright.plan;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.Job;
import collarwright.machining.BedSettings;
import collarwright.machining.CutSettings;
import collarwright.machining.EndJob;
import collarwright.machining.EndPlan;
import collarwright.machining.EndStops;
import collarwright.machining.JobLabel;
import collarwright.machining.MarkTool;
import collarwright.machining.PatternRun;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.StrutBar;
import collarwright.machining.TieDrill;
import collarwright.machining.Workpiece;
import collarwright.rehearsal.EndRehearsal;
import collarwright.rehearsal.Rehearsal;
import collarwright.stock.RoundStock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plan with the programs that make it.
 *
 * @param plan the plan
 * @param rotary the programs; none for a press or where the plan is stopped
 * @param ends the programs for the ends of struts; none for a press or where the plan is stopped
 * @param strips collars from flat strip; none where they are cut from pipe
 * @param stock what is cut from which stick
 * @param findings of all of them, stops first
 */
public record Production(
        Plan plan, RotaryPlan rotary, EndPlan ends, StripWork strips, StockWork stock, List<Finding> findings) {

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
        if (settings.machine().tube().isPresent()) {
            findings.addAll(TubeLean.check(job, plan.book().patterns()));
        }
        EndPlan ends = ends(plan, findings);
        StripWork strips = StripWork.of(plan);
        strips.findings().stream().filter(f -> !findings.contains(f)).forEach(findings::add);
        findings.addAll(PlateWork.of(plan).findings());
        InsideReach.check(job).ifPresent(findings::add);
        StockWork stock = StockWork.of(plan, rotary.setups());
        findings.addAll(stock.findings());
        findings.sort(Comparator.comparing(Finding::level));
        return new Production(plan, rotary, ends, strips, stock, findings);
    }

    private static EndPlan ends(Plan plan, List<Finding> findings) {
        Optional<BedSettings> settings = bed(plan.job());
        List<EndStops> struts = stops(plan);
        if (settings.isEmpty() || struts.isEmpty()) {
            return EndPlan.NONE;
        }
        EndPlan ends = EndJob.plan(settings.get(), struts);
        ends.findings().stream().filter(f -> !findings.contains(f)).forEach(findings::add);
        findings.addAll(
                EndRehearsal.rehearse(ends, settings.get(), ends.programs().isEmpty() ? List.of() : struts));
        return ends;
    }

    /**
     * Lists where the tie holes of all strut types are drilled.
     *
     * @param plan the plan
     * @return in the order of the strut types; empty where none are drilled before they are put in, or where a strut is too
     *     short for its two
     */
    public static List<EndStops> stops(Plan plan) {
        double least = plan.job()
                .strut()
                .tieHole()
                .map(t -> 2 * t.fromEnd() + t.diameter())
                .orElse(Double.POSITIVE_INFINITY);
        if (FlatEntry.inside(plan) || plan.struts().types().stream().anyMatch(t -> t.cut() < least)) {
            return List.of();
        }
        return plan.struts().types().stream()
                .flatMap(t -> EndStops.of(t, plan.job().order().made(t.count())).stream())
                .toList();
    }

    /**
     * Returns what drilling the ends of struts has to know beside their lengths.
     *
     * @param job the job
     * @return empty where struts are drilled on a press, or not at all
     */
    public static Optional<BedSettings> bed(Job job) {
        return job.shop()
                .strutBed()
                .flatMap(bed -> job.strut()
                        .tieHole()
                        .map(tie -> new BedSettings(
                                new CutSettings(bed.machine(), job.shop().programUnits(), bed.cutting()),
                                new StrutBar(job.strut().stock()),
                                TieDrill.from(tie, job.drilling().cutters()),
                                new JobLabel(job.title(), job.revision()),
                                job.limits().overtravel())));
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
        return new Production(plan.with(all), rotary, ends, strips, stock, all);
    }

    /**
     * Returns what the order asks of machines that run programs.
     *
     * @return of all of them together
     */
    public WorkTime.Machines machines() {
        return new WorkTime.Machines(rotary.summary(), ends, strips.programs());
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
