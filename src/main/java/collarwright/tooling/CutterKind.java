package collarwright.tooling;

/** What kind of cutter makes a hole. */
public enum CutterKind {
    /** A twist drill. */
    TWIST("twist drill"),
    /** A hole saw with a pilot drill. */
    HOLE_SAW("hole saw"),
    /** An end mill, which bores a hole of any larger size by going round in it. */
    END_MILL("end mill"),
    /** A jet or a blade that follows a hole's outline; its size is the width of its cut. */
    TUBE_CUTTER("tube cutter");

    private final String title;

    CutterKind(String title) {
        this.title = title;
    }

    /**
     * Returns whether it makes a hole of any size by going round in it.
     *
     * @return true for end mills and tube cutters
     */
    public boolean goesRound() {
        return this == END_MILL || this == TUBE_CUTTER;
    }

    /**
     * Returns its name for people.
     *
     * @return such as {@code hole saw}
     */
    public String title() {
        return title;
    }
}
