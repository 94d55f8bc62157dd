package collarwright.strut;

/**
 * The hole near a strut's end that the tie or pin goes through.
 *
 * @param diameter of the hole
 * @param fromEnd from the cut end to the hole's axis
 */
public record TieHole(double diameter, double fromEnd) {
    /** Checks the sizes. */
    public TieHole {
        if (!(diameter > 0 && fromEnd > 0)) {
            throw new IllegalArgumentException("a tie hole needs a diameter and a distance from the end");
        }
    }
}
