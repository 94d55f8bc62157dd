package collarwright.strut;

/**
 * Plugs that are put into both ends of every strut: dowels in a tube, inserts in bamboo or bored wood.
 *
 * @param length of one, above 0
 * @param diameter of one, above 0
 */
public record EndPlugs(double length, double diameter) {
    /** Checks the sizes. */
    public EndPlugs {
        if (!(length > 0 && diameter > 0)) {
            throw new IllegalArgumentException("a plug needs a length and a diameter");
        }
    }
}
