package collarwright.rehearsal;

import collarwright.machining.BedSettings;
import collarwright.machining.EndTask;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.List;

/**
 * A bed for the ends of struts; heights are worked out anew from the thinnest and the thickest strut in every seat.
 *
 * @param settings machine, strut, drill
 */
record EndBench(BedSettings settings) implements BenchRehearsal.Bench<EndTask> {

    @Override
    public Machine machine() {
        return settings.machine();
    }

    @Override
    public ProgramUnits units() {
        return settings.cuts().units();
    }

    @Override
    public double zero() {
        return settings.bar().stock().outerRadius();
    }

    @Override
    public BenchMotion.Ways ways() {
        String order = settings.machine().withoutY() ? "ZX" : "ZYX";
        return new BenchMotion.Ways(order, true, settings.bed().stopClear());
    }

    @Override
    public boolean turned() {
        return true;
    }

    @Override
    public BenchProof proof(EndTask task, double lift, List<Event> events) {
        List<SeatedStrut> struts = SeatedStrut.all(settings.bar().stock());
        double top = struts.stream().mapToDouble(SeatedStrut::crown).max().orElseThrow();
        double low = struts.stream().mapToDouble(SeatedStrut::lowest).min().orElseThrow();
        double floor =
                -settings.bar().stock().od().nominal() / 2 - settings.bed().under();
        double clear = top
                + settings.bed().clampHeight()
                + settings.machine().travel().clearGap()
                + settings.drill().lead();
        List<BenchProof.Point> points = task.holes().stream()
                .map(h -> new BenchProof.Point(h.title(), h.x(), 0, h.bottom()))
                .toList();
        return new BenchProof(
                machine(),
                units(),
                new BenchProof.Tool(settings.drill(), task.cut(), false, EndTask.TOOL),
                new BenchProof.Levels(top, low, floor, task.heights().retract(), clear, lift),
                points,
                events);
    }
}
