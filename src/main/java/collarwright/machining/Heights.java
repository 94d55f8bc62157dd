package collarwright.machining;

import collarwright.tooling.Cutter;

/**
 * The heights of one program, Z of the cutter's lowest point, on the program's grid.
 *
 * @param crown outer radius of the pipe
 * @param retract the R plane: close above the highest crown; feed starts here
 * @param clear where the pipe may turn: above crown, out-of-round, jaws, gap and the cutter's lead
 */
public record Heights(double crown, double retract, double clear) {

    /** From the highest crown to the R plane: our choice, no source. */
    static final double APPROACH = 2;

    /** Checks the order. */
    public Heights {
        if (!(crown < retract && retract <= clear)) {
            throw new IllegalArgumentException("crown, retract and clear height rise in this order");
        }
    }

    /**
     * The heights for a cutter.
     *
     * @param settings machine and pipe
     * @param cutter the cutter; its lead is counted so that the height is safe even where the tip was not the point
     *     that Z was set with
     * @return the heights
     */
    public static Heights of(RotarySettings settings, Cutter cutter) {
        Grid grid = settings.grid();
        double crown = settings.work().body().outerRadius();
        double gap = settings.machine().travel().clearGap();
        double highest = crown + settings.work().outOfRound();
        double clear = grid.snapUp(highest + settings.machine().rotary().jawHeight() + gap + cutter.lead());
        double retract = grid.snapUp(highest + StrictMath.min(APPROACH, gap));
        return new Heights(crown, StrictMath.min(retract, clear), clear);
    }
}
