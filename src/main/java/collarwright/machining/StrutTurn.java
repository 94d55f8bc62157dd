package collarwright.machining;

import collarwright.units.Angles;
import collarwright.units.Decimals;

/** Says by how much a strut is turned about its length. */
public final class StrutTurn {

    /** Less than this nobody can set by hand: our choice, no source. */
    private static final double LEAST_DEGREES = 0.05;

    private StrutTurn() {}

    /**
     * Tells whether a turn is worth the trouble.
     *
     * @param angle radians, either way
     * @return true from 0.05° on
     */
    public static boolean counts(double angle) {
        return StrictMath.abs(Angles.degrees(angle)) >= LEAST_DEGREES;
    }

    /**
     * Says it in words, always in the same form.
     *
     * @param clockwise radians, clockwise as seen from the stop; less than 0 is anticlockwise
     * @return such as {@code TURN THE STRUT 12.3 DEG ANTICLOCKWISE SEEN FROM THE STOP}
     */
    public static String words(double clockwise) {
        return "TURN THE STRUT " + Decimals.fixed(StrictMath.abs(Angles.degrees(clockwise)), 1) + " DEG "
                + (clockwise < 0 ? "ANTICLOCKWISE" : "CLOCKWISE") + " SEEN FROM THE STOP";
    }

    /**
     * Says it on paper.
     *
     * @param clockwise radians, clockwise as seen from the stop
     * @return such as {@code 12.3° anticlockwise}, or {@code none}
     */
    public static String shown(double clockwise) {
        if (!counts(clockwise)) {
            return "none";
        }
        return Decimals.fixed(StrictMath.abs(Angles.degrees(clockwise)), 1) + "° "
                + (clockwise < 0 ? "anticlockwise" : "clockwise");
    }
}
