package collarwright.pack;

import collarwright.machining.FreeEnd;
import collarwright.machining.Load;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryPlan;
import collarwright.machining.SetupSheet;
import collarwright.machining.StickCount;
import collarwright.plan.Box;
import collarwright.plan.Plan;
import collarwright.plan.Production;
import java.io.IOException;
import java.util.Optional;
import java.util.stream.IntStream;

/** Writes the batch of {@code plan.json}: its sums, the layouts of its sticks with what the set-up needs, the boxes. */
final class BatchJson {

    private final JsonOut out;
    private final Plan plan;
    private final RotaryPlan rotary;

    BatchJson(JsonOut out, Plan plan, RotaryPlan rotary) {
        this.out = out;
        this.plan = plan;
        this.rotary = rotary;
    }

    void write() throws IOException {
        if (!rotary.setups().isEmpty()) {
            sums();
        }
        out.objects("sticks", rotary.setups(), this::stick);
        out.rows("boxes", Box.of(plan), box -> {
            out.whole("box", box.number());
            out.text("pattern", box.pattern());
            out.whole("pieces", box.pieces());
            out.whole("spares", box.spares());
        });
    }

    private void sums() throws IOException {
        StickCount count = rotary.count();
        RotaryPlan.Summary sum = rotary.summary();
        ProgramFile.Effort effort = sum.effort();
        Optional<Double> longestFree = FreeEnd.limit(Production.settings(plan.job()));
        out.object("batch", () -> {
            out.whole("sticks", count.sticks());
            out.whole("leastSticks", count.leastSticks());
            out.whole("layouts", count.layouts());
            out.whole("leastLayouts", count.leastLayouts());
            out.whole("programRuns", sum.programRuns());
            out.whole("checkEvery", plan.job().shop().checkEvery());
            if (longestFree.isPresent()) {
                out.number("longestFreeMm", longestFree.get());
            }
            out.number("seconds", effort.seconds());
            out.whole("handTurns", effort.handTurns());
            out.number("turnedDeg", effort.rotationDegrees());
            out.number("leastTurnedDeg", effort.leastRotationDegrees());
            out.number("travelMm", effort.travel());
            out.number("leastTravelMm", effort.leastTravel());
        });
    }

    private void stick(SetupSheet setup) throws IOException {
        Load load = setup.load();
        out.text("id", load.id());
        out.whole("runs", load.runs());
        out.number("stickLengthMm", setup.stick().needed());
        out.number("chuckLengthMm", setup.stick().inChuck());
        out.number("stickOutMm", setup.stick().stickOut());
        out.number("firstEdgeMm", setup.stick().firstEdge());
        out.number("firstMiddleMm", setup.stick().firstMiddle());
        out.number("pitchMm", setup.stick().pitch());
        out.number("crownZMm", plan.job().hub().body().outerRadius());
        out.text("top", setup.zero().top());
        out.rows("places", IntStream.rangeClosed(1, load.collars()).boxed().toList(), collar -> {
            out.whole("collar", collar);
            out.text("pattern", load.pattern(collar));
            out.number("edgeMm", load.edge(collar));
        });
        out.rows("programs", setup.steps(), step -> {
            out.text("file", "machine/" + step.file());
            out.text("cutter", step.cutter().id());
            if (step.cut().rpm() > 0) {
                out.whole("rpm", step.cut().rpm());
            }
            out.number("feedMmPerMin", step.cut().feedMmPerMin());
            out.number("clearZMm", step.clear());
            out.number("bottomZMm", step.bottom());
            out.number("stickOutMm", step.stickOut());
            out.whole("operations", step.operations());
        });
    }
}
