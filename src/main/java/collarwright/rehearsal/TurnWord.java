package collarwright.rehearsal;

/**
 * The word by which a control turns the pipe.
 *
 * @param letter A or Y
 * @param length whether it counts a length, which the units word converts, in place of degrees
 * @param perTurn what it counts for a whole turn: 360, or mm
 */
record TurnWord(char letter, boolean length, double perTurn) {

    /** A in degrees. */
    static final TurnWord DEGREES = new TurnWord('A', false, 360);

    double degrees(double value, double scale) {
        return value * scale / perTurn * 360;
    }
}
