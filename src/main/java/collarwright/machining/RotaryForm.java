package collarwright.machining;

import java.util.Optional;

/**
 * How a program tells the rotary axis where to turn, and how a cut that turns it states its speed.
 *
 * @param word the word that turns the pipe
 * @param lengthPerTurn what the Y word counts for one whole turn, mm; only for {@link Word#Y_MM}, and empty there where
 *     it is the circumference of the job's pipe
 * @param sweep how the speed of a turning cut is stated
 */
public record RotaryForm(Word word, Optional<Double> lengthPerTurn, Sweep sweep) {

    /** Checks that a length of one turn stands only where it counts, and is above 0. */
    public RotaryForm {
        if (lengthPerTurn.isPresent() && word != Word.Y_MM) {
            throw new IllegalArgumentException("a length per turn goes with a Y word that counts a length");
        }
        if (lengthPerTurn.filter(l -> !(l > 0 && Double.isFinite(l))).isPresent()) {
            throw new IllegalArgumentException("the length of one turn is above 0");
        }
    }

    /** The word that turns the pipe. */
    public enum Word {
        /** A, in degrees. */
        A,
        /** Y, in degrees: the control counts them as if they were millimetres, so programs are in millimetres. */
        Y_DEGREES,
        /** Y, a length of arc, converted as every length is. */
        Y_MM,
        /** None: the program stops, and a hand turns the pipe. */
        BY_HAND
    }

    /**
     * How the speed of a cut along X with the rotary axis turning is stated.
     *
     * <p>Source for both: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000,
     * sections 2.1.2.5 and 3.5.19 (from memory).
     */
    public enum Sweep {
        /** G93: F is one over the minutes that the block takes, stated anew in every block that cuts. */
        INVERSE_TIME,
        /**
         * G94: F counts along the path of X, Y and Z as if the rotary axis stood still; where none of them moves, it
         * counts degrees a minute, which no unit of length converts.
         */
        FEED
    }

    /**
     * The form of the plain dialect.
     *
     * @return an A word in degrees, turning cuts under G93
     */
    public static RotaryForm plain() {
        return new RotaryForm(Word.A, Optional.empty(), Sweep.INVERSE_TIME);
    }

    /**
     * Tells whether the Y word turns the pipe, so that there is no linear Y.
     *
     * @return true for both Y forms
     */
    public boolean byY() {
        return word == Word.Y_DEGREES || word == Word.Y_MM;
    }

    /**
     * Tells whether a hand turns the pipe.
     *
     * @return true if no word does
     */
    public boolean byHand() {
        return word == Word.BY_HAND;
    }

    /**
     * Returns what the rotary word counts for one whole turn.
     *
     * @param radius outer radius of the job's pipe, measured or nominal, above 0
     * @return 360 where it counts degrees, else mm
     */
    public double perTurn(double radius) {
        return word == Word.Y_MM ? lengthPerTurn.orElse(2 * StrictMath.PI * radius) : 360;
    }
}
