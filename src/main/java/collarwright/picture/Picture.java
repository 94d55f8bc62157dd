package collarwright.picture;

/** Something drawn for people, at the size it has on paper. */
public interface Picture {

    /**
     * Returns its width.
     *
     * @return mm on paper
     */
    double width();

    /**
     * Returns its height.
     *
     * @return mm on paper
     */
    double height();

    /**
     * Says what it shows, for those who cannot see it.
     *
     * @return one or two sentences
     */
    String describe();

    /**
     * Paints it.
     *
     * @param sketch what to paint on
     */
    void paint(Sketch sketch);
}
