package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.CuttingData;
import collarwright.machining.JobLabel;
import collarwright.machining.Machine;
import collarwright.machining.MarkTool;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.SetupSheet;
import collarwright.machining.Workpiece;
import collarwright.plan.Plan;
import collarwright.tooling.CutterKind;
import java.util.List;

/** Setup sheets of an invented machine. */
public final class TrialSetups {

    private TrialSetups() {}

    /** One for each layout of a stick. */
    public static List<SetupSheet> of(Plan plan) {
        Job job = plan.job();
        var collar = job.hub().collar();
        CuttingData cutting = new CuttingData(
                "pvc",
                "PVC-U",
                List.of(
                        new CuttingData.Row(CutterKind.HOLE_SAW, 10, 200, 30, 0.1, 0.2, "our choice, no source"),
                        new CuttingData.Row(CutterKind.TWIST, 1, 20, 60, 0.05, 1, "our choice, no source")),
                "Clear the chips often.");
        RotaryPlan rotary = RotaryJob.plan(
                new RotarySettings(
                        rotary(),
                        job.shop().programUnits(),
                        cutting,
                        new Workpiece(
                                collar.title(),
                                job.hub().body(),
                                collar.outOfRound(),
                                collar.odMeasured(),
                                List.of(2000.0)),
                        new JobLabel(job.title(), job.revision()),
                        job.limits().overtravel(),
                        MarkTool.standard()),
                plan.book().patterns().stream()
                        .map(p -> new PatternRun(p, job.order().made(p.count())))
                        .toList());
        if (rotary.setups().isEmpty()) {
            throw new IllegalStateException(rotary.findings().toString());
        }
        return rotary.setups();
    }

    private static Machine rotary() {
        return new Machine(
                "rotary-trial",
                "Mill with a rotary axis",
                Machine.Kind.ROTARY,
                new Machine.Post(false, java.util.Set.copyOf(ProgramWords.PLAIN), 3, 3, 70, "M2", "nc"),
                new Machine.Travel(0, 900, -100, 250, 3000, 1500, 300, 10),
                new Machine.Spindle(60, 12000, 2),
                new Machine.Rotary(true, true, 3600, 3600, 2, 60, 10, 25, 3, 5, 900),
                "invented");
    }
}
