package collarwright.paper;

import collarwright.picture.Ink;
import collarwright.picture.Picture;
import collarwright.picture.Written;

/** Something on a page, in mm from its top left corner. */
sealed interface PageItem {

    /**
     * Words.
     *
     * @param text what is written, and where
     */
    record Words(Written text) implements PageItem {}

    /**
     * A filled rectangle.
     *
     * @param area its place
     * @param ink its colour
     */
    record Fill(Area area, Ink ink) implements PageItem {}

    /**
     * An empty box with an edge.
     *
     * @param area its place
     */
    record Frame(Area area) implements PageItem {}

    /**
     * A level line.
     *
     * @param area its place; the height is the line's width
     * @param ink its colour
     */
    record Rule(Area area, Ink ink) implements PageItem {}

    /**
     * A picture.
     *
     * @param picture the picture
     * @param x its left edge
     * @param y its top
     */
    record Shown(Picture picture, double x, double y) implements PageItem {}

    /**
     * A rectangle.
     *
     * @param x left edge
     * @param y top
     * @param width to the right
     * @param height down
     */
    record Area(double x, double y, double width, double height) {}
}
