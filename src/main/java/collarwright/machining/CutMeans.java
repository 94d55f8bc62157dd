package collarwright.machining;

import java.util.List;

/** What cuts along an outline. */
public enum CutMeans {
    /** A cutter that turns. */
    ROUTER("router", false),
    /** A laser. */
    LASER("laser", true),
    /** A plasma torch. */
    PLASMA("plasma", true),
    /** A blade or a small router that a head pushes through the wall of a pipe. */
    KNIFE("knife", false);

    /** What cuts flat sheet. */
    public static final List<CutMeans> FLAT = List.of(ROUTER, LASER, PLASMA);

    /** What cuts pipe that turns under it. */
    public static final List<CutMeans> TUBE = List.of(PLASMA, LASER, KNIFE);

    private final String word;
    private final boolean burns;

    CutMeans(String word, boolean burns) {
        this.word = word;
        this.burns = burns;
    }

    /**
     * Returns its word in jobs, profiles and on papers.
     *
     * @return such as {@code laser}
     */
    public String word() {
        return word;
    }

    /**
     * Tells whether it burns what it cuts.
     *
     * @return true for laser and plasma: never for PVC, CPVC or vinyl
     */
    public boolean burns() {
        return burns;
    }
}
