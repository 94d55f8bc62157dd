package collarwright.units;

import java.util.List;

/**
 * Why a text was not taken as a length, an angle or a number.
 *
 * @param fault what kind of fault it is
 * @param expected what should stand there
 * @param found what stands there
 * @param hints what to do, the best first; never empty
 */
public record Refusal(Fault fault, String expected, String found, List<String> hints) {

    /** The kinds of faults. */
    public enum Fault {
        /** It cannot be read, or it measures something else. */
        UNREADABLE,
        /** It is no number that can be counted with. */
        NOT_A_NUMBER,
        /** It can be read, but it is below or above what may stand there. */
        OUT_OF_RANGE
    }

    /** Checks that there is a hint. */
    public Refusal {
        hints = List.copyOf(hints);
        if (hints.isEmpty()) {
            throw new IllegalArgumentException("a refusal needs a hint");
        }
    }
}
