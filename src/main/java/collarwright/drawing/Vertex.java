package collarwright.drawing;

/**
 * A corner of a path, and how the path goes on from it.
 *
 * @param point where it is
 * @param bulge of the piece from here to the next corner: 0 straight, else tangent of a quarter of its sweep, +
 *     counter-clockwise
 */
public record Vertex(Point point, double bulge) {
    /** Checks the bulge. */
    public Vertex {
        if (!Double.isFinite(bulge)) {
            throw new IllegalArgumentException("not a bulge: " + bulge);
        }
    }
}
