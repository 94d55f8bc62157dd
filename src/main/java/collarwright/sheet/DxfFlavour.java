package collarwright.sheet;

/** The forms of DXF that are written: one for CAD programs, one that even old machine software reads. */
public enum DxfFlavour {
    /** Release 2000, with all tables, handles and owners. */
    R2000("AC1015", "r2000"),
    /** Release 12: header, three tables and the lines. */
    R12("AC1009", "r12");

    private final String version;
    private final String suffix;

    DxfFlavour(String version, String suffix) {
        this.version = version;
        this.suffix = suffix;
    }

    /**
     * Returns the version word of the header.
     *
     * @return such as {@code AC1015}
     */
    public String version() {
        return version;
    }

    /**
     * Returns a word for file names.
     *
     * @return such as {@code r2000}
     */
    public String suffix() {
        return suffix;
    }
}
