package collarwright.rehearsal;

import collarwright.machining.BedSettings;
import collarwright.machining.EndTask;
import collarwright.machining.JobLabel;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
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
    public JobLabel label() {
        return settings.label();
    }

    @Override
    public String piece(EndTask task) {
        return "strut " + task.stops().type();
    }

    @Override
    public String work() {
        return "the strut";
    }

    @Override
    public String side(char axis, boolean more) {
        return axis == 'X' ? more ? "further from the stop" : "nearer to the stop" : "off the strut's axis";
    }

    /** By how much the strut was turned up to each hole. */
    @Override
    public List<Fault> byHand(EndTask task, BenchProof proof) {
        List<Fault> faults = new ArrayList<>();
        List<DrilledHole> made = proof.holes();
        double planned = 0;
        for (int i = 0; i < StrictMath.min(made.size(), task.holes().size()); i++) {
            planned += task.holes().get(i).turn();
            double turned = 0;
            int line = made.get(i).line();
            for (Event event : proof.events()) {
                if (event instanceof Event.Stop stop
                        && event.line() < made.get(i).line()) {
                    turned += StrutHole.clockwise(stop);
                    line = event.line();
                }
            }
            if (StrictMath.abs(turned - planned) > EndRehearsal.TURN_SLACK) {
                faults.add(new Fault(
                        line,
                        piece(task) + ", " + task.holes().get(i).title() + " drilled with the strut turned by "
                                + turn(planned),
                        turn(turned)));
            }
        }
        return faults;
    }

    private static String turn(double clockwise) {
        return Decimals.fixed(Angles.degrees(StrictMath.abs(clockwise)), 1) + "° "
                + (clockwise < 0 ? "anticlockwise" : "clockwise") + " seen from the stop";
    }

    /** Tie holes are drilled. */
    @Override
    public List<Fault> plugs(BenchProof proof) {
        return List.of();
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
