package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Turns flat strips into drilling programs: for each strip a program that sets the dimples of the 0° line and of TOP, then
 * one for each cutter, smallest first.
 */
public final class FlatJob {

    private static final Comparator<Cutter> SMALLEST_FIRST =
            Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal()).thenComparing(Cutter::id);

    /** From the TOP edge to the dimples, and between them: the same as on the stick. */
    private static final double FROM_TOP_EDGE = 5;

    private static final double ARC = 6;

    private final FlatSettings settings;
    private final ProgramNames names;
    private final Map<Cutter, Cut> cuts = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<BenchProgram<FlatTask>> programs = new ArrayList<>();

    private FlatJob(FlatSettings settings) {
        this.settings = settings;
        this.names = new ProgramNames(settings.machine());
    }

    /**
     * Plans all programs.
     *
     * @param settings machine and material
     * @param strips the strips, in the order of the patterns
     * @return programs and all findings: stops are SPINDLE_RANGE, PROFILE_WRONG (no cutting data), CUTTER_REACH,
     *     MACHINE_TRAVEL, MACHINE_UNABLE; nothing for no strip
     */
    public static FlatPlan plan(FlatSettings settings, List<FlatStrip> strips) {
        if (strips.isEmpty()) {
            return FlatPlan.NONE;
        }
        FlatJob job = new FlatJob(settings);
        job.cutters(strips);
        strips.forEach(job::checkStrip);
        if (!job.stopped()) {
            try {
                strips.forEach(job::strip);
            } catch (JobException e) {
                job.findings.addAll(e.findings());
            }
        }
        return new FlatPlan(job.stopped() ? List.of() : job.programs, job.findings);
    }

    private boolean stopped() {
        return findings.stream().anyMatch(f -> f.level() == Level.STOP);
    }

    private void cutters(List<FlatStrip> strips) {
        Map<Cutter, FlatStrip> used = new TreeMap<>(SMALLEST_FIRST);
        used.put(settings.mark().cutter(), strips.get(0));
        strips.forEach(s -> s.holes().forEach(h -> used.putIfAbsent(h.hole().cutter(), s)));
        CutPlanner planner = new CutPlanner(settings.cuts());
        used.forEach((cutter, strip) -> {
            if (cutter.bores()) {
                findings.add(BoreStops.stop(cutter, "a flat strip, whose holes are drilled"));
            }
            planner.plan(cutter).ifPresent(c -> cuts.put(cutter, c));
            checkDepth(cutter, strip);
        });
        findings.addAll(planner.findings());
    }

    private void checkDepth(Cutter cutter, FlatStrip strip) {
        boolean drills = strip.holes().stream().anyMatch(h -> h.hole().cutter().equals(cutter));
        double bottom = drills ? bottom(cutter, strip) : -settings.mark().depth();
        double thinnest = strip.body().wall().min();
        Where where = new Where.Part("cutter " + cutter.id());
        if (drills && strip.body().wall().max() + settings.overtravel() > cutter.depth()) {
            findings.add(Finding.stop(
                    Code.CUTTER_REACH,
                    where,
                    "a cutting depth of " + Sizes.both(strip.body().wall().max() + settings.overtravel()) + " or more",
                    Sizes.both(cutter.depth()),
                    "use a deeper " + cutter.kind().title()));
        }
        double below = -bottom - thinnest;
        if (below > settings.table().under()) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    where,
                    "a board of " + Sizes.both(below) + " or more below the strip to drill into",
                    Sizes.both(settings.table().under()) + " by the machine's profile (table.board)",
                    "lay a thicker board below, and say so in the profile",
                    "or use a cutter with a shorter point or pilot"));
        }
        Machine.Travel travel = settings.machine().travel();
        double clear = settings.clear(cutter);
        if (bottom < travel.minZ() || clear > travel.maxZ()) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    where,
                    "Z between " + Sizes.both(travel.minZ()) + " and " + Sizes.both(travel.maxZ()) + ", the travel of "
                            + settings.machine().name(),
                    "Z " + Sizes.both(bottom) + " at the bottom of the hole, " + Sizes.both(clear)
                            + " where the cutter is clear",
                    "use a machine that reaches so far"));
        }
    }

    private void checkStrip(FlatStrip strip) {
        Machine.Travel travel = settings.machine().travel();
        Machine.Reach across = travel.across().orElseThrow();
        boolean fits = strip.holes().stream()
                .allMatch(h -> h.x() >= travel.minX() && h.x() <= travel.maxX() && across.holds(h.y(), 0));
        if (!fits) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    new Where.Part("strip " + strip.pattern()),
                    "holes within X " + Sizes.both(travel.minX()) + " to " + Sizes.both(travel.maxX()) + " and Y "
                            + Sizes.both(across.least()) + " to " + Sizes.both(across.most()),
                    "a strip of " + Sizes.both(strip.length()) + " by "
                            + Sizes.both(strip.body().width()),
                    "use a machine that reaches so far"));
        }
    }

    private double bottom(Cutter cutter, FlatStrip strip) {
        return -settings.grid().snapUp(strip.body().wall().max() + settings.overtravel() + cutter.lead());
    }

    private Heights heights(Cutter cutter) {
        Grid grid = settings.grid();
        double retract =
                StrictMath.min(Heights.APPROACH, settings.machine().travel().clearGap());
        double clear = grid.snapUp(settings.clear(cutter));
        return new Heights(0, StrictMath.min(grid.snapUp(retract), clear), clear);
    }

    private void strip(FlatStrip strip) {
        Map<Cutter, List<FlatTask.FlatPoint>> points = new TreeMap<>(SMALLEST_FIRST);
        Grid grid = settings.grid();
        strip.holes().stream()
                .sorted(Comparator.comparingDouble(FlatStrip.FlatHole::x))
                .forEach(h -> {
                    Cutter cutter = h.hole().cutter();
                    points.computeIfAbsent(cutter, c -> new ArrayList<>())
                            .add(new FlatTask.FlatPoint(
                                    "hole " + h.hole().number(),
                                    grid.snap(h.x()),
                                    grid.snap(h.y()),
                                    bottom(cutter, strip)));
                });
        List<FlatTask> tasks = new ArrayList<>();
        tasks.add(task(strip, settings.mark().cutter(), dimples(strip), true));
        points.forEach((cutter, at) -> tasks.add(task(strip, cutter, at, false)));
        if (settings.machine().post().layout().habits().allInOneFile()) {
            write(tasks, 1, 1);
            return;
        }
        for (int i = 0; i < tasks.size(); i++) {
            write(List.of(tasks.get(i)), i + 1, tasks.size());
        }
    }

    private FlatTask task(FlatStrip strip, Cutter cutter, List<FlatTask.FlatPoint> points, boolean marks) {
        Cut cut = Objects.requireNonNull(cuts.get(cutter), "checked before");
        int number = List.copyOf(cuts.keySet()).indexOf(cutter) + 1;
        return new FlatTask(strip, cutter, cut, heights(cutter), points, marks, number);
    }

    private List<FlatTask.FlatPoint> dimples(FlatStrip strip) {
        Grid grid = settings.grid();
        Hole first = strip.holes().get(0).hole();
        double top = strip.body().width() / 2;
        double ofHole = first.height() + first.cutter().asDrilled().max() / 2;
        double y = grid.snap(top + StrictMath.max(top - FROM_TOP_EDGE, (top + ofHole) / 2));
        double bottom = -grid.snapUp(settings.mark().depth());
        double zero = grid.snap(strip.at(0));
        double beside = grid.snap(strip.at(ARC / strip.body().outerRadius()));
        return List.of(
                new FlatTask.FlatPoint(Operation.Meaning.TOP.title(), beside, y, bottom),
                new FlatTask.FlatPoint(Operation.Meaning.ZERO_LINE.title(), zero, y, bottom));
    }

    private void write(List<FlatTask> tasks, int order, int files) {
        FlatWriter writer = new FlatWriter(settings, tasks, new FlatHead.Place(order, files), names);
        programs.add(writer.cut());
        writer.air()
                .ifPresentOrElse(
                        programs::add,
                        () -> findings.add(Finding.warn(
                                Code.MACHINE_TRAVEL,
                                new Where.Part("strip " + tasks.get(0).strip().pattern()),
                                "room for an air cut, " + Sizes.both(writer.lift()) + " higher",
                                "Z travel ends at "
                                        + Sizes.both(settings.machine().travel().maxZ()),
                                "run the program first with no strip on the table")));
    }
}
