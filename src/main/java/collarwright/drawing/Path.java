package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of straight pieces and arcs, each starting at the very point where the one before it ends.
 *
 * @param vertices its corners in order, two or more; the last one's bulge counts only if the path is closed
 * @param closed whether it runs on from the last corner to the first, which is not repeated
 */
public record Path(List<Vertex> vertices, boolean closed) implements Shape {
    /** Checks the count and keeps the list. */
    public Path {
        vertices = List.copyOf(vertices);
        if (vertices.size() < 2) {
            throw new IllegalArgumentException("a path needs two corners");
        }
    }

    /**
     * A path of straight pieces.
     *
     * @param points its corners in order
     * @param closed whether it runs back to the first corner
     * @return the path
     */
    public static Path straight(List<Point> points, boolean closed) {
        return new Path(points.stream().map(p -> new Vertex(p, 0)).toList(), closed);
    }

    /**
     * A closed rectangle.
     *
     * @param box its extents
     * @return the path, counter-clockwise from the lower left corner
     */
    public static Path rectangle(Box box) {
        return straight(
                List.of(
                        new Point(box.left(), box.bottom()),
                        new Point(box.right(), box.bottom()),
                        new Point(box.right(), box.top()),
                        new Point(box.left(), box.top())),
                true);
    }

    /**
     * Returns how many pieces the path has.
     *
     * @return one less than corners, or as many if it is closed
     */
    public int pieceCount() {
        return closed ? vertices.size() : vertices.size() - 1;
    }

    /**
     * Returns where a piece starts.
     *
     * @param piece from 0
     * @return its corner
     */
    public Vertex from(int piece) {
        return vertices.get(piece);
    }

    /**
     * Returns where a piece ends.
     *
     * @param piece from 0
     * @return the next corner
     */
    public Point to(int piece) {
        return vertices.get((piece + 1) % vertices.size()).point();
    }

    /**
     * Takes the path apart.
     *
     * @return its pieces in order, each a {@link Line} or an {@link Arc}; lines share their end points exactly
     */
    public List<Shape> pieces() {
        List<Shape> pieces = new ArrayList<>();
        for (int i = 0; i < pieceCount(); i++) {
            Vertex from = from(i);
            pieces.add(
                    from.bulge() == 0 ? new Line(from.point(), to(i)) : Arc.between(from.point(), to(i), from.bulge()));
        }
        return List.copyOf(pieces);
    }

    @Override
    public Box bounds() {
        Point first = vertices.get(0).point();
        Box box = Box.of(first, first);
        for (Shape piece : pieces()) {
            box = box.with(piece.bounds());
        }
        return box;
    }

    @Override
    public Path moved(double dx, double dy) {
        return new Path(
                vertices.stream()
                        .map(v -> new Vertex(v.point().moved(dx, dy), v.bulge()))
                        .toList(),
                closed);
    }
}
