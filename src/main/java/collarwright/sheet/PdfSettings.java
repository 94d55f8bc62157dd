package collarwright.sheet;

import collarwright.units.Paper;

/**
 * How a sheet is printed on paper.
 *
 * @param paper the paper
 * @param correctionX factor on every length along the long side of the paper, for a printer that prints too short or too
 *     long; 1 for none
 * @param correctionY factor on every length along the short side
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
     * The same printer for a page that stands on its short side, where the long side runs up.
     *
     * @return the factors changed over: x across the standing page, y up
     */
    PdfSettings standing() {
        return new PdfSettings(paper, correctionY, correctionX);
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
