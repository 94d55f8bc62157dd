package collarwright.sheet;

/**
 * How a sheet is printed on paper.
 *
 * @param paper the paper
 * @param correctionX factor on every length across the page, for a printer that prints too short or too long; 1 for none
 * @param correctionY factor on every length up the page
 */
public record PdfSettings(Paper paper, double correctionX, double correctionY) {
    // A printer that is further off than this is not to be corrected but to be set right; our choice, no source.
    private static final double MOST = 0.05;

    /** Checks the factors. */
    public PdfSettings {
        check(correctionX);
        check(correctionY);
    }

    private static void check(double factor) {
        if (!(StrictMath.abs(factor - 1) <= MOST)) {
            throw new IllegalArgumentException("a printer correction is 0.95 to 1.05, not " + factor);
        }
    }

    /**
     * A paper in a printer that prints true.
     *
     * @param paper the paper
     * @return settings without correction
     */
    public static PdfSettings of(Paper paper) {
        return new PdfSettings(paper, 1, 1);
    }

    /**
     * Tells whether the printer is corrected.
     *
     * @return true if a factor is not 1
     */
    public boolean corrects() {
        return correctionX != 1 || correctionY != 1;
    }
}
