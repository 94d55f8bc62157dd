package collarwright.rehearsal;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.Workpiece;
import collarwright.testing.Seeds;
import java.util.List;

/** Drawn jobs on the machines of {@code profiles/}; a machine that is added there joins by itself. */
record ProfileJobs(RotarySettings settings, List<PatternRun> runs, RotaryPlan plan) {

    /** Every machine of the profiles that turns the pipe. */
    static List<Machine> machines() {
        return Profiles.load(List.of(new BundledProfiles())).all(Profiles.Kind.MACHINE).stream()
                .map(p -> (Machine) p.value())
                .filter(m -> m.kind() == Machine.Kind.ROTARY)
                .toList();
    }

    /** A job drawn with a seed; it may come out with a stop and without programs. */
    static ProfileJobs draw(Seeds draw, Machine machine) {
        double outer = draw.between(25, 75);
        double wall = draw.between(0.04, 0.12) * outer;
        Workpiece work = new Workpiece(
                "Drawn pipe",
                new CollarBody(outer, new Interval(wall, wall * 1.05, wall * 1.1), draw.between(60, 110)),
                draw.coin() ? 0 : draw.between(0, 0.01 * outer),
                draw.coin(),
                draw.coin() ? List.of() : draw.numbers(draw.whole(1, 2), 500, 6000));
        RotarySettings settings = RotarySamples.settings(
                machine,
                draw.coin() ? ProgramUnits.MM : ProgramUnits.INCH,
                RotarySamples.cutting("drawn", draw.between(20, 60)),
                work);
        List<PatternRun> runs = RehearsalTest.runs(draw, work.body());
        return new ProfileJobs(settings, runs, RotaryJob.plan(settings, runs));
    }

    List<ProgramFile> programs() {
        return plan.programs();
    }
}
