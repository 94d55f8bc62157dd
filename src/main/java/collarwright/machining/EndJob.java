package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.hub.StrutTip;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns strut types into programs for a long bed with one stop.
 *
 * <p>Frame: X0 at the face of the stop, +X along the strut, Y0 and Z0 on the strut's axis. Both holes are drilled in one
 * line with end a (E1) against the stop, where X reaches that far. Where it does not, each end has a program of its own:
 * the strut is turned end for end about the vertical, so that a line that was marked along its top stays on top.
 */
public final class EndJob {

    private final BedSettings settings;
    private final List<Finding> findings = new ArrayList<>();
    private final ProgramNames names;
    private final List<BenchProgram<EndTask>> programs = new ArrayList<>();

    private EndJob(BedSettings settings) {
        this.settings = settings;
        this.names = new ProgramNames(settings.machine());
    }

    /**
     * Plans all programs.
     *
     * @param settings machine, strut, drill
     * @param struts the strut types with tie holes, in the order of the job
     * @return programs and all findings: stops are SPINDLE_RANGE, PROFILE_WRONG (no cutting data), CUTTER_REACH,
     *     MACHINE_TRAVEL, MACHINE_UNABLE, STRUT_TIE_HOLE (too near to the stop); nothing for no strut
     */
    public static EndPlan plan(BedSettings settings, List<EndStops> struts) {
        if (struts.isEmpty()) {
            return EndPlan.NONE;
        }
        EndJob job = new EndJob(settings);
        CutPlanner planner = new CutPlanner(settings.cuts());
        var cut = planner.plan(settings.drill());
        job.findings.addAll(planner.findings());
        job.checkDrill();
        struts.forEach(job::checkStrut);
        if (cut.isPresent() && !job.stopped()) {
            try {
                struts.forEach(s -> job.strut(s, cut.get()));
            } catch (JobException e) {
                job.findings.addAll(e.findings());
            }
        }
        return new EndPlan(job.stopped() ? List.of() : job.programs, job.findings);
    }

    private boolean stopped() {
        return findings.stream().anyMatch(f -> f.level() == Level.STOP);
    }

    private Heights heights() {
        Grid grid = settings.grid();
        double gap = settings.machine().travel().clearGap();
        double highest = settings.bar().highest();
        double retract = grid.snapUp(highest + StrictMath.min(Heights.APPROACH, gap));
        double clear = grid.snapUp(
                highest + settings.bed().clampHeight() + gap + settings.drill().lead());
        return new Heights(settings.bar().crown(), StrictMath.min(retract, clear), clear);
    }

    private double bottom() {
        return -settings.grid().snapUp(-settings.bottom());
    }

    private void checkDrill() {
        Where where = new Where.Part("cutter " + settings.drill().id());
        if (settings.flutes() > settings.drill().depth()) {
            findings.add(Finding.stop(
                    Code.CUTTER_REACH,
                    where,
                    "a drill that goes through the whole strut, " + Sizes.both(settings.flutes()) + " or deeper",
                    Sizes.both(settings.drill().depth()),
                    "use a long drill of this size, and give its depth in the rack",
                    "or drill the ends on a press from both sides: strut-machine = \"press\""));
        }
        double out = -settings.bar().crown() - bottom();
        if (out > settings.bed().under()) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    where,
                    "room of " + Sizes.both(out) + " below the strut for the drill to come through",
                    Sizes.both(settings.bed().under()) + " by the machine's profile (bed.under)",
                    "raise the strut's seat, or clear the bed below the holes",
                    "or give less overtravel under [limits]"));
        }
        Machine.Travel travel = settings.machine().travel();
        if (bottom() < travel.minZ() || heights().clear() > travel.maxZ()) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    where,
                    "Z between " + Sizes.both(travel.minZ()) + " and " + Sizes.both(travel.maxZ()) + ", the travel of "
                            + settings.machine().name(),
                    "Z " + Sizes.both(bottom()) + " at the bottom of the hole, "
                            + Sizes.both(heights().clear()) + " where the drill is clear",
                    "use a machine that reaches so far"));
        }
    }

    private void checkStrut(EndStops strut) {
        Where where = new Where.Part("strut " + strut.type());
        double radius = settings.drill().asDrilled().max() / 2;
        double nearest = StrictMath.min(strut.first(), strut.second()) - radius;
        if (nearest < settings.bed().stopClear()) {
            findings.add(Finding.stop(
                    Code.STRUT_TIE_HOLE,
                    where,
                    "a drill that stays " + Sizes.both(settings.bed().stopClear())
                            + " or more off the stop (bed.stop-clear)",
                    Sizes.both(nearest) + " from its side to the stop",
                    "drill the tie holes further from the struts' ends",
                    "or use a lower stop, and say so in the machine's profile"));
        }
        Machine.Travel travel = settings.machine().travel();
        double farthest = StrictMath.max(strut.first(), strut.second());
        if (farthest > travel.maxX() || StrictMath.min(strut.first(), strut.second()) < travel.minX()) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    where,
                    "X between " + Sizes.both(travel.minX()) + " and " + Sizes.both(travel.maxX()) + ", the travel of "
                            + settings.machine().name(),
                    "tie holes " + Sizes.both(strut.first()) + " and " + Sizes.both(strut.second()) + " from the stop",
                    "use a machine that reaches so far"));
        }
    }

    private void strut(EndStops strut, Cut cut) {
        Grid grid = settings.grid();
        double x1 = grid.snap(strut.first());
        double x2 = grid.snap(strut.secondInLine());
        if (x2 <= settings.machine().travel().maxX()) {
            List<EndHole> holes = List.of(
                    new EndHole(StrutTip.A, x1, bottom(), 0),
                    new EndHole(StrutTip.B, x2, bottom(), strut.turnInLine()));
            write(new EndTask(strut, StrutTip.A, holes, cut, heights()));
            return;
        }
        EndHole a = new EndHole(StrutTip.A, x1, bottom(), 0);
        EndHole b = new EndHole(StrutTip.B, grid.snap(strut.second()), bottom(), strut.turnEndForEnd());
        write(new EndTask(strut, StrutTip.A, List.of(a), cut, heights()));
        write(new EndTask(strut, StrutTip.B, List.of(b), cut, heights()));
    }

    private void write(EndTask task) {
        EndWriter writer = new EndWriter(settings, task, names);
        programs.add(writer.cut());
        writer.air().ifPresentOrElse(programs::add, () -> findings.add(noAirCut(task, writer)));
    }

    private Finding noAirCut(EndTask task, EndWriter writer) {
        return Finding.warn(
                Code.MACHINE_TRAVEL,
                new Where.Part("strut " + task.stops().type()),
                "room for an air cut, " + Sizes.both(writer.lift()) + " higher",
                "Z travel ends at " + Sizes.both(settings.machine().travel().maxZ()),
                "run the program first with no strut on the bed");
    }
}
