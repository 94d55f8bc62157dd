package collarwright.drawing;

/** What a line on a sheet is for; every role has its own layer in every file. */
public enum Role {
    /** Cut, with the waste inside: a hole. */
    CUT_INSIDE("CUT-INSIDE", true),
    /** Cut, with the waste outside: the edge of a part. */
    CUT_OUTSIDE("CUT-OUTSIDE", true),
    /** Drawn, scribed or engraved on the part: numbers, the 0° line, TOP. */
    MARK("MARK", false),
    /** For the reader of the sheet only: scale bars, tables, notes. */
    NOTE("NOTE", false),
    /** Cut, from where a cutter pierces to the line that it cuts; only on sheets that ask for it. */
    LEAD_IN("LEAD-IN", true);

    private final String layer;
    private final boolean cut;

    Role(String layer, boolean cut) {
        this.layer = layer;
        this.cut = cut;
    }

    /**
     * Returns the name of its layer, the same in every file.
     *
     * @return plain ASCII, such as {@code CUT-INSIDE}
     */
    public String layer() {
        return layer;
    }

    /**
     * Tells whether the line is cut through.
     *
     * @return true for the cut roles
     */
    public boolean isCut() {
        return cut;
    }
}
