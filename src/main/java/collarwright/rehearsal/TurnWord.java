package collarwright.rehearsal;

import collarwright.machining.RotaryForm;
import collarwright.machining.RotarySettings;

/**
 * The word by which a control turns the pipe.
 *
 * @param letter A or Y; a hyphen where a hand turns it
 * @param length whether it counts a length, which the units word converts, in place of degrees
 * @param perTurn what it counts for a whole turn: 360, or mm
 */
record TurnWord(char letter, boolean length, double perTurn) {

    /** A in degrees. */
    static final TurnWord DEGREES = new TurnWord('A', false, 360);

    /** None: a hand turns the pipe at a stop. */
    static final TurnWord HAND = new TurnWord('-', false, 360);

    /** The word of a profile; one turn of an arc is the pipe's circumference where the profile names no length. */
    static TurnWord of(RotarySettings settings) {
        RotaryForm form = settings.machine().rotary().form();
        return switch (form.word()) {
            case A -> DEGREES;
            case BY_HAND -> HAND;
            case Y_DEGREES -> new TurnWord('Y', false, 360);
            case Y_MM -> {
                double around = 2 * StrictMath.PI * settings.work().body().outerRadius();
                yield new TurnWord('Y', true, form.lengthPerTurn().orElse(around));
            }
        };
    }

    double degrees(double value, double scale) {
        return value * scale / perTurn * 360;
    }
}
