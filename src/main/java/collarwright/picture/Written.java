package collarwright.picture;

/**
 * A text with its place, as it was written.
 *
 * @param text ready to be shown from left to right
 * @param x its left end
 * @param baseline y of the line that it stands on, y down
 * @param width its width
 * @param size size of the letters
 * @param ink its colour
 * @param bold whether its letters are bold
 */
public record Written(String text, double x, double baseline, double width, double size, Ink ink, boolean bold) {

    /**
     * Returns the top of its capitals.
     *
     * @return y
     */
    public double top() {
        return baseline - Lettering.CAPITAL * size;
    }

    /**
     * Returns how far its letters reach down.
     *
     * @return y
     */
    public double bottom() {
        return baseline + Lettering.DESCENT * size;
    }

    /**
     * Tells whether two texts touch.
     *
     * @param other the other text
     * @param gap the room that has to stay between them
     * @return true if they come nearer than the gap
     */
    public boolean touches(Written other, double gap) {
        return x < other.x + other.width + gap
                && other.x < x + width + gap
                && top() < other.bottom() + gap
                && other.top() < bottom() + gap;
    }
}
