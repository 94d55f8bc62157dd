package collarwright.hub;

/** Which end of its type a strut has in a hub. */
public enum StrutTip {
    /** The end with the smaller axial angle; either end of a strut whose two ends are alike. */
    A(0),
    /** The other end. */
    B(1);

    private final int index;

    StrutTip(int index) {
        this.index = index;
    }

    /**
     * Returns its place among the two ends of a strut type.
     *
     * @return 0 for a, 1 for b
     */
    public int index() {
        return index;
    }
}
