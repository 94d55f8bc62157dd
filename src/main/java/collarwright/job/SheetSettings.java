package collarwright.job;

import java.util.Optional;

/**
 * How the job's templates are printed, and its tables written.
 *
 * @param paperThickness of the paper or card that is wrapped round a collar, 0 to {@link #THICKEST}: lengths along the girth
 *     are those of its middle
 * @param barX what the lying 100 mm bar measured on an uncorrected page that lies on its long side; 100 for a true printer
 * @param barY what the standing 100 mm bar measured on that page
 * @param hairline width of all lines in SVG files, {@link #THINNEST} to {@link #WIDEST}; some cutters know a line to cut by it
 * @param csv how tables of separated values are written
 * @param plates how index plates are made; empty for none
 * @param layers names and colours of layers in cut files; empty for the usual ones
 * @param insideTemplates whether templates for the inside of the pipe are made too
 */
public record SheetSettings(
        double paperThickness,
        double barX,
        double barY,
        double hairline,
        CsvForm csv,
        Optional<PlateSettings> plates,
        Optional<CutLayers> layers,
        boolean insideTemplates) {
    /** Length of a bar on a true page. */
    public static final double BAR = 100;
    /** Thickest card. Our choice, no source. */
    public static final double THICKEST = 5;
    /** Thinnest line: a thinner one would be printed as 0. Our choice, no source. */
    public static final double THINNEST = 0.001;
    /** Widest line: a wider one hides the edge that it marks. Our choice, no source. */
    public static final double WIDEST = 1;
    /** The least that a bar may measure: what is further off is set right at the printer. Our choice, no source. */
    public static final double SHORTEST_BAR = 95.3;
    /** The most that a bar may measure. */
    public static final double LONGEST_BAR = 105.2;

    /** Office paper of 0.1 mm (common practice, no source), a true printer, lines of 0.1 mm, CSV as usual. */
    public static final SheetSettings USUAL = new SheetSettings(0.1, BAR, BAR, 0.1, CsvForm.USUAL);

    /** Checks the ranges. */
    public SheetSettings {
        boolean thin = paperThickness >= 0 && paperThickness <= THICKEST && hairline >= THINNEST && hairline <= WIDEST;
        if (!thin || !isBar(barX) || !isBar(barY)) {
            throw new IllegalArgumentException("paper " + paperThickness + " mm, bars " + barX + " and " + barY
                    + " mm, lines of " + hairline + " mm");
        }
    }

    /**
     * Templates without index plates.
     *
     * @param paperThickness of the paper or card
     * @param barX what the lying bar measured
     * @param barY what the standing bar measured
     * @param hairline width of all lines in SVG files
     * @param csv how tables of separated values are written
     */
    public SheetSettings(double paperThickness, double barX, double barY, double hairline, CsvForm csv) {
        this(paperThickness, barX, barY, hairline, csv, Optional.empty(), Optional.empty(), false);
    }

    /**
     * The same settings with index plates.
     *
     * @param made how they are made; empty for none
     * @return settings that differ in nothing else
     */
    SheetSettings with(Optional<PlateSettings> made) {
        return new SheetSettings(paperThickness, barX, barY, hairline, csv, made, layers, insideTemplates);
    }

    /**
     * The same settings with layers and templates of one's own.
     *
     * @param named names and colours of layers; empty for the usual ones
     * @param inside whether templates for the inside of the pipe are made too
     * @return settings that differ in nothing else
     */
    SheetSettings with(Optional<CutLayers> named, boolean inside) {
        return new SheetSettings(paperThickness, barX, barY, hairline, csv, plates, named, inside);
    }

    private static boolean isBar(double measured) {
        return measured >= SHORTEST_BAR && measured <= LONGEST_BAR;
    }

    /**
     * Returns the factor for lengths along the long side of a page.
     *
     * @return what a bar should be by what it was
     */
    public double correctionX() {
        return BAR / barX;
    }

    /**
     * Returns the factor for lengths along the short side of a page.
     *
     * @return what a bar should be by what it was
     */
    public double correctionY() {
        return BAR / barY;
    }
}
