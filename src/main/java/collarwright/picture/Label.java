package collarwright.picture;

/**
 * A short text in a picture.
 *
 * @param text what it says
 * @param x where its side or middle stands
 * @param y the middle of its capitals' height
 * @param side which point of it stands at x
 * @param ink its colour
 * @param bold whether its letters are bold
 * @param boxed whether the paper is cleared behind it, so that lines end there
 */
public record Label(String text, double x, double y, Side side, Ink ink, boolean bold, boolean boxed) {

    /** The size of all letters in pictures, mm: 11.3 points, so that a hand's breadth away they still read. */
    public static final double SIZE = 4.0;

    /** Which point of a label is given. */
    public enum Side {
        /** Its left end. */
        LEFT,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        RIGHT
    }

    /**
     * A label in ink.
     *
     * @param text what it says
     * @param x where its side or middle stands
     * @param y the middle of its capitals' height
     * @param side which point of it stands at x
     * @return the label
     */
    public static Label of(String text, double x, double y, Side side) {
        return new Label(text, x, y, side, Ink.INK, false, false);
    }

    /**
     * Clears the paper behind it.
     *
     * @return the same label on cleared paper
     */
    public Label onPaper() {
        return new Label(text, x, y, side, ink, bold, true);
    }

    /**
     * Makes it bold.
     *
     * @return the same label in bold letters
     */
    public Label strong() {
        return new Label(text, x, y, side, ink, true, boxed);
    }

    /**
     * Changes its colour.
     *
     * @param other the colour
     * @return the same label in that colour
     */
    public Label in(Ink other) {
        return new Label(text, x, y, side, other, bold, boxed);
    }
}
