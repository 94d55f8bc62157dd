package collarwright.machining;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of an end mill that bores one hole: down by a helix from the R plane, a flat turn at the bottom, and out.
 *
 * <p>The cutter's centre goes round at (D − d)/2 from the hole's axis. It goes round counter-clockwise as seen from above
 * (G3): a cutter that turns clockwise (M3) then climbs, its teeth enter the full chip at the wall and leave with none, so
 * that it presses away from the wall that stays (definition of climb milling; common practice, no source). The helix goes
 * down no steeper than {@link #RAMP} and, in one turn, no deeper than a peck of the cutting data. Every turn starts and ends
 * on the side of the hole toward the free end, at Y0.
 *
 * <p>The feed of the centre is feed × (D − d) ÷ D: the teeth at the wall then advance as far as the cutting data say.
 * Source: plane geometry, the two circles have the same centre.
 *
 * @param bore the hole
 * @param grid steps of the program
 */
record BorePath(Operation.Bore bore, Grid grid) {

    /** Steepest way down of the cutter's centre, two degrees: our choice, no source. */
    static final double RAMP = 2 * StrictMath.PI / 180;

    /** How far the cutter leaves the wall at the bottom, where a disc stands in the middle: our choice, no source. */
    static final double RELIEF = 0.2;

    /** From the hole's axis to the cutter's centre. */
    double radius() {
        return grid.snap((bore.diameter() - bore.cutter().size()) / 2);
    }

    /** What stands in the middle and falls out; 0 where the end mill cuts all of it. */
    double disc() {
        return StrictMath.max(0, bore.diameter() - 2 * bore.cutter().size());
    }

    /** Feed of the cutter's centre. */
    double feedMmPerMin(double atWallMmPerMin) {
        double share = (bore.diameter() - bore.cutter().size()) / bore.diameter();
        return grid.snapFeed(atWallMmPerMin * share);
    }

    /** Turns of the helix, without the flat one. */
    int turns(double depth, double peck) {
        double pitch = StrictMath.min(2 * StrictMath.PI * radius() * StrictMath.tan(RAMP), peck) - grid.step();
        return (int) StrictMath.max(1, StrictMath.ceil(depth / pitch));
    }

    /**
     * The moves from the clear height over the hole's axis to the clear height again.
     *
     * @param task speed, feed and heights
     */
    List<Move> moves(ProgramTask task) {
        double x = bore.place().x();
        double start = grid.snap(x + radius());
        double feed = feedMmPerMin(task.cut().feedMmPerMin());
        double retract = task.heights().retract();
        double depth = retract - bore.bottom();
        int turns = turns(depth, task.cut().peck());
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Rapid(Axis.Z, retract));
        moves.add(new Move.Line(start, 0, feed));
        for (int i = 1; i <= turns; i++) {
            double z = i == turns ? bore.bottom() : grid.snap(retract - depth * i / turns);
            moves.add(turn(start, z, feed));
        }
        moves.add(turn(start, bore.bottom(), feed));
        moves.add(new Move.Line(end(), 0, feed));
        moves.add(new Move.Rapid(Axis.Z, task.heights().clear()));
        return moves;
    }

    /** X where the cutter comes up: over the hole's axis, or off the wall beside the disc that stands there. */
    double end() {
        double x = bore.place().x();
        return disc() > 0 ? grid.snap(grid.snap(x + radius()) - RELIEF) : x;
    }

    private Move turn(double start, double z, double feed) {
        return new Move.Arc(false, start, 0, z, -radius(), 0, feed);
    }

    /** How often the cutter goes round, and how deep in one turn. */
    String turnWords(ProgramTask task) {
        double depth = task.heights().retract() - bore.bottom();
        int turns = turns(depth, task.cut().peck());
        double unit = grid.units().millimetres();
        int decimals = grid.units() == ProgramUnits.INCH ? 4 : 2;
        String symbol = grid.units().symbol();
        return "Hole " + Decimals.fixed(bore.diameter() / unit, decimals) + " " + symbol + ": the cutter goes round "
                + turns + (turns == 1 ? " time, " : " times, each ") + Decimals.fixed(depth / turns / unit, decimals)
                + " "
                + symbol + " deeper, then once level at the bottom.";
    }

    /** What the setup sheet says of this size. */
    String words(Cut cut) {
        double unit = grid.units().millimetres();
        boolean inch = grid.units() == ProgramUnits.INCH;
        int decimals = inch ? 4 : 2;
        String hole = Decimals.fixed(bore.diameter() / unit, decimals);
        String tool = Decimals.fixed(bore.cutter().size() / unit, decimals);
        String words = "hole " + hole + " " + grid.units().symbol() + ": feed of the cutter's centre = "
                + grid.feed(cut.feedMmPerMin()) + " × (" + hole + " − " + tool + ") ÷ " + hole + " = "
                + grid.feed(feedMmPerMin(cut.feedMmPerMin())) + " "
                + grid.units().symbol() + "/min";
        return disc() > 0
                ? words + "; a disc of " + Decimals.fixed(disc() / unit, decimals) + " "
                        + grid.units().symbol()
                        + " comes loose at the end: take it out of the pipe with the spindle stopped"
                : words;
    }
}
