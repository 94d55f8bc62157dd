package collarwright.rehearsal;

import collarwright.machining.Cut;
import collarwright.machining.Grid;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.tooling.Cutter;
import collarwright.units.Decimals;
import java.util.List;

/**
 * What a program does to work that lies still, beside what it is held against.
 *
 * @param machine the machine
 * @param units unit of lengths in the program
 * @param tool the cutter and how it turns
 * @param levels the heights that it is held to, worked out anew
 * @param points the planned holes, in their order
 * @param events what its text does
 */
record BenchProof(Machine machine, ProgramUnits units, Tool tool, Levels levels, List<Point> points, List<Event> events)
        implements Replayed {

    BenchProof {
        points = List.copyOf(points);
        events = List.copyOf(events);
    }

    /**
     * A cutter at work.
     *
     * @param cutter the cutter
     * @param cut planned speed, feed and peck
     * @param dimples whether it only sets dimples, in one cut each
     * @param number the cutter's number in the job
     */
    record Tool(Cutter cutter, Cut cut, boolean dimples, int number) {}

    /**
     * A planned hole.
     *
     * @param title for people
     * @param x along the work
     * @param y across it
     * @param bottom Z of the cutter's lowest point, without the lift of an air cut
     */
    record Point(String title, double x, double y, double bottom) {}

    /**
     * Heights without the lift of an air cut.
     *
     * @param top the highest that the work may stand
     * @param through what the full diameter has to go below; for dimples what their point has to go below
     * @param floor what no point may go below
     * @param retract the R plane
     * @param clear where the cutter may travel
     * @param lift how far every Z is raised; 0 but for an air cut
     */
    record Levels(double top, double through, double floor, double retract, double clear, double lift) {}

    private Grid grid() {
        return Grid.of(machine.post(), units);
    }

    /** Half a step of a length in the program, and a little for the arithmetic. */
    @Override
    public double tolerance() {
        return grid().step() / 2 + 1e-9;
    }

    @Override
    public double clear() {
        return levels.clear() + levels.lift();
    }

    boolean air() {
        return levels.lift() > 0;
    }

    @Override
    public String text(double length) {
        return Double.isFinite(length)
                ? Decimals.fixed(length / units.millimetres(), grid().decimals()) + " " + units.symbol()
                : "nowhere stated";
    }

    List<DrilledHole> holes() {
        return DrilledHole.from(strokes(), this::atClear);
    }
}
