package collarwright.tooling;

/** What kind of cutter makes a hole. */
public enum CutterKind {
    /** A twist drill. */
    TWIST("twist drill"),
    /** A hole saw with a pilot drill. */
    HOLE_SAW("hole saw");

    private final String title;

    CutterKind(String title) {
        this.title = title;
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
