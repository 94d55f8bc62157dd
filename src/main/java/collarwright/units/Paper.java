package collarwright.units;

/**
 * The papers that sheets and labels are printed on.
 *
 * <p>Source: ISO 216 (A4); ANSI/ASME Y14.1, size A (8.5 in × 11 in), which office trade calls Letter.
 */
public enum Paper {
    /** 210 mm × 297 mm. */
    A4("A4", 210, 297),
    /** 8.5 in × 11 in. */
    LETTER("Letter", 8.5 * 25.4, 11 * 25.4);

    private final String title;
    private final double shortSide;
    private final double longSide;

    Paper(String title, double shortSide, double longSide) {
        this.title = title;
        this.shortSide = shortSide;
        this.longSide = longSide;
    }

    /**
     * Returns its name.
     *
     * @return as people say it, such as {@code A4}
     */
    public String title() {
        return title;
    }

    /**
     * Returns its short side.
     *
     * @return mm
     */
    public double shortSide() {
        return shortSide;
    }

    /**
     * Returns its long side.
     *
     * @return mm
     */
    public double longSide() {
        return longSide;
    }
}
