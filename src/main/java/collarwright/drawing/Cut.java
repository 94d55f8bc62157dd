package collarwright.drawing;

/**
 * How the lines of a flat part are cut.
 *
 * @param kerfInside width of the cut that holes allow for: their lines move inward by half of it; 0 for nominal lines
 * @param kerfOutside width of the cut that edges allow for: their lines move outward by half of it
 * @param leadIn length of lead-ins, 0 for none; shortened to a hole's radius
 */
public record Cut(double kerfInside, double kerfOutside, double leadIn) {
    /** Nominal lines without lead-ins. */
    public static final Cut NOMINAL = new Cut(0, 0, 0);

    /** Checks the lengths. */
    public Cut {
        if (!(kerfInside >= 0 && kerfOutside >= 0 && leadIn >= 0)
                || !Double.isFinite(kerfInside + kerfOutside + leadIn)) {
            throw new IllegalArgumentException("kerf and lead-in are 0 or more");
        }
    }
}
