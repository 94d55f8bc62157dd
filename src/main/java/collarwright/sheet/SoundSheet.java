package collarwright.sheet;

import collarwright.drawing.Sheet;

/** A sheet that the lint has found nothing in, so that every writer of it may rely on that. */
public final class SoundSheet {
    private final Sheet sheet;

    private SoundSheet(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Looks a sheet through.
     *
     * @param sheet the drawing
     * @return the same drawing, known to be sound
     * @throws collarwright.finding.JobException SHEET_FAULT with every fault found
     */
    public static SoundSheet of(Sheet sheet) {
        SheetLint.require(sheet);
        return new SoundSheet(sheet);
    }

    /**
     * Returns the drawing.
     *
     * @return it
     */
    public Sheet sheet() {
        return sheet;
    }
}
