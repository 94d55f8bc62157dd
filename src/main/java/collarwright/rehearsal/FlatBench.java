package collarwright.rehearsal;

import collarwright.geometry.Interval;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.JobLabel;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.List;

/**
 * A flat table for strips; heights are worked out anew from the strip's thinnest and thickest wall.
 *
 * @param settings machine and material
 */
record FlatBench(FlatSettings settings) implements BenchRehearsal.Bench<FlatTask> {

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
        return 0;
    }

    @Override
    public BenchMotion.Ways ways() {
        return new BenchMotion.Ways("ZXY", false, Double.NEGATIVE_INFINITY);
    }

    @Override
    public boolean turned() {
        return false;
    }

    @Override
    public JobLabel label() {
        return settings.label();
    }

    @Override
    public String piece(FlatTask task) {
        return "strip " + task.strip().pattern();
    }

    @Override
    public String work() {
        return "the strip";
    }

    @Override
    public String side(char axis, boolean more) {
        return axis == 'X'
                ? more ? "further from the left end" : "nearer to the left end"
                : more ? "toward TOP" : "away from TOP";
    }

    @Override
    public List<Fault> byHand(FlatTask task, BenchProof proof) {
        return List.of();
    }

    /** A plug is as high as the strip where that is thickest. */
    @Override
    public List<Fault> plugs(BenchProof proof) {
        PlugRules.Plug plug = new PlugRules.Plug(-proof.levels().through(), settings.overtravel());
        return proof.tool().dimples()
                ? List.of()
                : PlugRules.check(proof, proof.holes(), proof.tool().cutter(), plug);
    }

    @Override
    public BenchProof proof(FlatTask task, double lift, List<Event> events) {
        Interval wall = task.strip().body().wall();
        double clear = settings.table().clampHeight()
                + settings.machine().travel().clearGap()
                + task.cutter().lead();
        boolean marks = task.marks();
        double through = marks ? 0 : -wall.max();
        double floor = -wall.min() - (marks ? 0 : settings.table().under());
        List<BenchProof.Point> points = task.points().stream()
                .map(p -> new BenchProof.Point(p.title(), p.x(), p.y(), p.bottom()))
                .toList();
        return new BenchProof(
                machine(),
                units(),
                new BenchProof.Tool(task.cutter(), task.cut(), marks, task.tool()),
                new BenchProof.Levels(0, through, floor, task.heights().retract(), clear, lift),
                points,
                events);
    }
}
