package collarwright.assembly;

/**
 * One strut as it is put in.
 *
 * @param member member index
 * @param way how it goes in
 * @param hub the node whose hub comes with the strut ({@link Way#JOIN}), or into whose collar it is pushed first
 * @param held whether the part that it belongs to does not yet reach the ground and has to be held
 * @param strain of a strut that has to bow or would have to, as change of length by length; 0 if it need not
 */
public record RaisingStep(int member, Way way, int hub, boolean held, double strain) {

    /** How a strut goes in. */
    public enum Way {
        /** A hub that does not stand yet is slid over its end. */
        JOIN,
        /** It is pushed far into one collar, then back into the other. */
        SLIDE,
        /** The same, bowed, because the collar has not enough room. */
        BOW,
        /** It cannot be put in. */
        STUCK
    }

    RaisingStep held(boolean off) {
        return new RaisingStep(member, way, hub, off, strain);
    }
}
