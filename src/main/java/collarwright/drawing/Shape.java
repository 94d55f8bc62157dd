package collarwright.drawing;

/** What a sheet is made of. Nothing else can stand on one: no curve but the circle's, no text but letters of strokes. */
public sealed interface Shape permits Line, Arc, Circle, Path, Label {

    /**
     * Returns the least box that holds the shape, without any width of line.
     *
     * @return the extents
     */
    Box bounds();

    /**
     * Moves the shape.
     *
     * @param dx to the right
     * @param dy up
     * @return the moved shape
     */
    Shape moved(double dx, double dy);
}
