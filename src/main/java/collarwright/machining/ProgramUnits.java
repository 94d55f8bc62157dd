package collarwright.machining;

/** The unit of lengths in a program. */
public enum ProgramUnits {
    /** Millimetres, G21. */
    MM("mm", 1),
    /** Inches, G20. */
    INCH("in", 25.4);

    private final String symbol;
    private final double millimetres;

    ProgramUnits(String symbol, double millimetres) {
        this.symbol = symbol;
        this.millimetres = millimetres;
    }

    /**
     * Returns the unit's symbol.
     *
     * @return {@code mm} or {@code in}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Returns the unit's size.
     *
     * @return millimetres in one unit
     */
    public double millimetres() {
        return millimetres;
    }
}
