package collarwright.machining;

import collarwright.units.Decimals;
import java.util.List;

/**
 * Prints the word that turns the pipe.
 *
 * @param form which word, and what it counts
 * @param grid steps of the program
 * @param radius outer radius of the pipe
 */
record RotaryWord(RotaryForm form, Grid grid, double radius) {

    /** The word for an angle; the arc of a Y word that counts a length is rounded to the program's steps. */
    String word(double angleDegrees) {
        return switch (form.word()) {
            case A -> "A" + grid.degrees(angleDegrees);
            case Y_DEGREES -> "Y" + Decimals.fixed(angleDegrees, grid.angleDecimals());
            case Y_MM -> "Y" + grid.length(arc(angleDegrees));
            case BY_HAND -> throw new IllegalStateException("a pipe that a hand turns has no word for it");
        };
    }

    /** What the operator reads where a hand turns the pipe; the rehearsal reads the same. */
    List<String> byHand(double angleDegrees) {
        double whole = StrictMath.floor(angleDegrees);
        double minutes = StrictMath.rint((angleDegrees - whole) * 6000) / 100;
        boolean full = minutes >= 60;
        return List.of(
                "TURN TO " + grid.degrees(angleDegrees) + " DEG",
                "THAT IS " + (int) (full ? whole + 1 : whole) + " DEG " + Decimals.fixed(full ? 0 : minutes, 2)
                        + " MIN",
                "ARC " + tape(angleDegrees / 180 * StrictMath.PI * radius) + " FROM THE 0 LINE");
    }

    /** What a tape shows: millimetres, in programs in inches both units. */
    private String tape(double arc) {
        String inches = grid.units() == ProgramUnits.INCH ? Decimals.fixed(arc / 25.4, 3) + " IN, " : "";
        return inches + Decimals.fixed(arc, 2) + " MM";
    }

    /**
     * The way that F counts in a turning cut under G94, in the program's unit: X alone where A turns (degrees, if X
     * stands still), X and Y together where Y does.
     */
    double feedWay(PostPlace from, Move.Sweep sweep) {
        double unit = grid.units().millimetres();
        double alongX = StrictMath.abs(sweep.x() - from.x()) / unit;
        double turn = StrictMath.abs(sweep.angleDegrees() - from.angleDegrees());
        return switch (form.word()) {
            case Y_DEGREES -> StrictMath.hypot(alongX, turn);
            case Y_MM -> StrictMath.hypot(alongX, arc(turn) / unit);
            default -> alongX > 0 ? alongX : turn;
        };
    }

    private double arc(double angleDegrees) {
        return angleDegrees / 360 * form.perTurn(radius);
    }
}
