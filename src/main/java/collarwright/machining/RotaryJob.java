package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Turns patterns into programs for a machine that turns the pipe, with the collars of an order laid on sticks.
 *
 * <p>Frame: see the package. For each layout of a stick: a program that sets the dimples, then one program per cutter,
 * smallest first, each with an air-cut version; at the end one rotary direction test for the machine.
 */
public final class RotaryJob {

    private static final Comparator<Cutter> SMALLEST_FIRST =
            Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal()).thenComparing(Cutter::id);

    private final RotarySettings settings;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<Cutter, Cut> cuts = new LinkedHashMap<>();
    private final List<ProgramFile> programs = new ArrayList<>();
    private final List<SetupSheet> setups = new ArrayList<>();
    private final ProgramNames names;
    private final Map<String, CollarLayout> layouts = new LinkedHashMap<>();
    private SweepOrder order;
    private StickCount count = StickCount.NONE;

    private RotaryJob(RotarySettings settings) {
        this.settings = settings;
        this.names = new ProgramNames(settings.machine());
        this.order = new SweepOrder(settings, layouts);
    }

    /**
     * Plans all programs of a job, patterns mixed on the sticks.
     *
     * @param settings machine, pipe, cutting data
     * @param runs patterns in the order of the job with the collars to make
     * @return the same as with {@link StickRule#MIXED}
     */
    public static RotaryPlan plan(RotarySettings settings, List<PatternRun> runs) {
        return plan(settings, runs, StickRule.MIXED);
    }

    /**
     * Plans all programs of a job.
     *
     * @param settings machine, pipe, cutting data
     * @param runs patterns in the order of the job with the collars to make
     * @param rule whether patterns may lie on one stick
     * @return for a tube cutter one program a stick; else programs, setups and all findings: stops are SPINDLE_RANGE, PROFILE_WRONG (no cutting data), CUTTER_REACH,
     *     FAR_WALL, HOLE_TOO_WIDE, WEB_TO_EDGE, CLAMP_ZONE, STICK_TOO_SHORT, MACHINE_TRAVEL, MACHINE_UNABLE; a press gives no
     *     programs but the findings on its cutters, SPINDLE_RANGE and PROFILE_WRONG among them as warnings; no pattern
     *     gives nothing
     */
    public static RotaryPlan plan(RotarySettings settings, List<PatternRun> runs, StickRule rule) {
        if (runs.isEmpty()) {
            return new RotaryPlan(List.of(), List.of(), List.of());
        }
        if (settings.machine().kind() == Machine.Kind.TUBE) {
            return TubeJob.plan(settings, runs, rule);
        }
        RotaryJob job = new RotaryJob(settings);
        degreesInInches(settings).ifPresent(job.findings::add);
        job.checkCutters(runs);
        if (!settings.machine().programmed()) {
            return job.result();
        }
        runs.forEach(job::lay);
        job.order = new SweepOrder(settings, job.layouts);
        List<Load> loads = job.loads(runs, rule);
        job.findings.addAll(FreeEnd.check(settings, loads));
        if (job.stopped()) {
            return job.result();
        }
        try {
            loads.forEach(job::write);
            job.programs.add(DirectionTest.program(settings, List.copyOf(job.cuts.keySet()), job.names));
        } catch (JobException e) {
            job.findings.addAll(e.findings());
        }
        return job.result();
    }

    /** A control that takes Y for a length would convert its degrees as well. */
    static Optional<Finding> degreesInInches(RotarySettings settings) {
        boolean degrees = settings.machine().rotary().form().word() == RotaryForm.Word.Y_DEGREES;
        if (!settings.machine().programmed() || !degrees || settings.units() != ProgramUnits.INCH) {
            return Optional.empty();
        }
        return Optional.of(Finding.stop(
                Code.MACHINE_UNABLE,
                new Where.Part("machine " + settings.machine().name()),
                "programs in millimetres, where a Y word turns the pipe by degrees",
                "programs in inches: the control would turn the pipe 25.4 times as far",
                "write program-units = \"mm\" in the job",
                "or let Y count a length: rotary.form = \"Y-mm\", if the machine does"));
    }

    private void checkCutters(List<PatternRun> runs) {
        Set<Cutter> cutters = new TreeSet<>(SMALLEST_FIRST);
        runs.forEach(r -> r.pattern().holes().forEach(h -> cutters.add(h.cutter())));
        CutPlanner planner = new CutPlanner(settings);
        if (settings.machine().programmed()) {
            planner.plan(settings.mark().cutter())
                    .ifPresent(c -> cuts.put(settings.mark().cutter(), c));
        }
        for (Cutter cutter : cutters) {
            if (cutter.bores()) {
                findings.addAll(BoreStops.check(settings, cutter));
            }
            if (!cuts.containsKey(cutter.tool())) {
                planner.plan(cutter.tool()).ifPresent(c -> cuts.put(cutter.tool(), c));
            }
            checkDepth(cutter);
        }
        if (settings.machine().programmed()) {
            checkTravel(settings.mark().cutter(), CollarLayout.markBottom(settings));
        }
        findings.addAll(planner.findings());
    }

    private void checkDepth(Cutter cutter) {
        List<Finding> depth = HoleDepth.check(settings.work(), cutter, settings.overtravel());
        findings.addAll(depth);
        if (!depth.isEmpty()) {
            return;
        }
        if (settings.machine().programmed()) {
            checkTravel(
                    cutter,
                    HoleDepth.of(settings.work(), cutter, settings.overtravel()).bottom());
        }
        HoleDepth.lowPlaces(settings.work(), cutter, settings.overtravel()).ifPresent(findings::add);
    }

    private void checkTravel(Cutter cutter, double bottom) {
        Machine.Travel travel = settings.machine().travel();
        double clear = Heights.of(settings, cutter).clear();
        if (bottom < travel.minZ() || clear > travel.maxZ()) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    new Where.Part("cutter " + cutter.id()),
                    "Z between " + Sizes.both(travel.minZ()) + " and " + Sizes.both(travel.maxZ()) + ", the travel of "
                            + settings.machine().name(),
                    "Z " + Sizes.both(bottom) + " at the bottom of the hole, " + Sizes.both(clear)
                            + " where the pipe turns, above jaws that stand out "
                            + Sizes.both(settings.machine().rotary().jawHeight()),
                    "use a machine with more Z travel, or a shorter cutter",
                    "use a smaller pipe, or jaws that stand out less (rotary.jaw-height)"));
        }
    }

    private void lay(PatternRun run) {
        CollarLayout layout = new CollarLayout(settings, run);
        layouts.put(run.pattern().id(), layout);
        layout.findings().stream().filter(f -> !findings.contains(f)).forEach(findings::add);
    }

    private List<Load> loads(List<PatternRun> runs, StickRule rule) {
        Map<String, StickRoom.Span> spans = new LinkedHashMap<>();
        layouts.forEach((pattern, layout) -> spans.put(pattern, layout.span()));
        StickPlan plan = StickPlan.plan(new StickRoom(settings, spans), runs, rule, order::turning);
        findings.addAll(plan.findings());
        count = plan.count();
        return plan.loads();
    }

    private void write(Load load) {
        List<ProgramTask> tasks = tasks(load);
        List<SetupSheet.Step> steps = new ArrayList<>();
        if (settings.machine().post().layout().habits().allInOneFile()) {
            steps.addAll(write(tasks, 1, 1));
        } else {
            for (int i = 0; i < tasks.size(); i++) {
                steps.addAll(write(List.of(tasks.get(i)), i + 1, tasks.size()));
            }
        }
        setups.add(Setups.sheet(settings, tasks, steps));
    }

    private List<ProgramTask> tasks(Load load) {
        Set<Cutter> cutters = new TreeSet<>(SMALLEST_FIRST);
        for (Load.Stretch stretch : load.stretches()) {
            cutters.addAll(Objects.requireNonNull(layouts.get(stretch.pattern()), "laid before")
                    .cutters());
        }
        List<ProgramTask> tasks = new ArrayList<>();
        tasks.add(task(load, settings.mark().cutter(), true));
        cutters.forEach(c -> tasks.add(task(load, c, false)));
        return tasks;
    }

    private ProgramTask task(Load load, Cutter cutter, boolean marks) {
        Cut cut = Objects.requireNonNull(cuts.get(cutter), "checked before");
        List<Operation> operations = order.operations(load, cutter, marks);
        return new ProgramTask(
                load,
                cutter,
                noted(cut, operations),
                Heights.of(settings, cutter),
                operations,
                List.copyOf(cuts.keySet()).indexOf(cutter) + 1);
    }

    /** With the feed of the cutter's centre for each size that it bores. */
    private Cut noted(Cut cut, List<Operation> operations) {
        List<String> formulas = new ArrayList<>(cut.formulas());
        operations.stream()
                .filter(Operation.Bore.class::isInstance)
                .map(o -> new BorePath((Operation.Bore) o, settings.grid()).words(cut))
                .distinct()
                .sorted()
                .forEach(formulas::add);
        return new Cut(cut.rpm(), cut.feedMmPerMin(), cut.peck(), formulas, cut.source());
    }

    private List<SetupSheet.Step> write(List<ProgramTask> tasks, int order, int files) {
        ProgramWriter writer = new ProgramWriter(settings, tasks, order, files);
        ProgramFile cut = writer.cut(names);
        programs.add(cut);
        Optional<ProgramFile> air = writer.air(names);
        air.ifPresent(programs::add);
        if (air.isEmpty()) {
            findings.add(noAirCut(cut, writer.lift()));
        }
        List<SetupSheet.Step> steps = new ArrayList<>();
        for (ProgramTask task : tasks) {
            steps.add(new SetupSheet.Step(
                    order + steps.size(),
                    cut.name(),
                    air.map(ProgramFile::name),
                    task.cutter(),
                    task.tool(),
                    task.cut(),
                    task.heights().clear(),
                    task.deepest(),
                    task.heights().crown() - task.deepest(),
                    task.heights().clear() - task.cutter().lead() - task.deepest(),
                    task.operations().size(),
                    writer.effort(task)));
        }
        return steps;
    }

    private Finding noAirCut(ProgramFile file, double lift) {
        return Finding.warn(
                Code.MACHINE_TRAVEL,
                new Where.Part("program " + file.name()),
                "room for an air cut, " + Sizes.both(lift) + " higher",
                "Z travel ends at " + Sizes.both(settings.machine().travel().maxZ()),
                "run the program first with no pipe in the chuck");
    }

    private boolean stopped() {
        return findings.stream().anyMatch(f -> f.level() == Level.STOP);
    }

    private RotaryPlan result() {
        return stopped()
                ? new RotaryPlan(List.of(), List.of(), findings)
                : new RotaryPlan(programs, setups, count, findings);
    }
}
