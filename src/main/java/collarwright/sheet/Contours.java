package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import java.util.ArrayList;
import java.util.List;

/** Cut lines as polygons, for questions about where they run. Arcs are taken as chords, {@link #CHORD_ERROR} off at most. */
final class Contours {
    static final double CHORD_ERROR = 0.002;

    private static final double TURN = 2 * StrictMath.PI;

    private Contours() {}

    /**
     * A straight piece of a cut line.
     *
     * @param from where it starts
     * @param to where it ends
     * @param shape number of the shape it belongs to
     * @param order its place in that shape
     * @param last the place of that shape's last piece
     * @param closed whether that shape is closed
     */
    record Edge(Point from, Point to, int shape, int order, int last, boolean closed) {
        Box bounds() {
            return Box.of(from, to);
        }

        // Neighbours in one contour, or loose lines that may be links of a chain.
        boolean mayJoin(Edge other) {
            if (shape != other.shape) {
                return !closed && !other.closed;
            }
            int apart = StrictMath.abs(order - other.order);
            return apart == 1 || (closed && apart == last);
        }
    }

    /** Walks round a shape; labels have no contour. */
    static List<Point> corners(Shape shape) {
        if (shape instanceof Line line) {
            return List.of(line.from(), line.to());
        }
        if (shape instanceof Arc arc) {
            return chords(arc);
        }
        if (shape instanceof Circle circle) {
            List<Point> corners = chords(new Arc(circle.centre(), circle.radius(), 0, TURN * (1 - 1e-12)));
            return corners.subList(0, corners.size() - 1);
        }
        if (shape instanceof Path path) {
            return corners(path);
        }
        return List.of();
    }

    private static List<Point> corners(Path path) {
        List<Point> corners = new ArrayList<>();
        List<Shape> pieces = path.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            List<Point> piece = new ArrayList<>(corners(pieces.get(i)));
            piece.set(0, path.from(i).point());
            corners.addAll(piece.subList(0, piece.size() - 1));
        }
        if (!path.closed()) {
            corners.add(path.to(path.pieceCount() - 1));
        }
        return corners;
    }

    private static List<Point> chords(Arc arc) {
        double step = 2 * StrictMath.acos(StrictMath.max(0, 1 - CHORD_ERROR / arc.radius()));
        int count = (int) StrictMath.max(2, StrictMath.ceil(StrictMath.abs(arc.sweep()) / step));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            points.add(arc.at(arc.start() + arc.sweep() * i / count));
        }
        return points;
    }

    static boolean isClosed(Shape shape) {
        return shape instanceof Circle || (shape instanceof Path path && path.closed());
    }

    /** Where the walk round a closed shape starts. */
    static Point start(Shape shape) {
        return shape instanceof Circle circle
                ? new Arc(circle.centre(), circle.radius(), 0, TURN * (1 - 1e-12)).at(0)
                : corners(shape).get(0);
    }

    /** All edges of a shape that is known by a number. */
    static List<Edge> edges(Shape shape, int number) {
        List<Point> corners = corners(shape);
        boolean closed = isClosed(shape);
        int count = closed ? corners.size() : corners.size() - 1;
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            edges.add(new Edge(corners.get(i), corners.get((i + 1) % corners.size()), number, i, count - 1, closed));
        }
        return edges;
    }

    /** Tells whether two straight pieces share a point, an end or a stretch. */
    static boolean meet(Edge a, Edge b) {
        double a1 = side(a, b.from());
        double a2 = side(a, b.to());
        double b1 = side(b, a.from());
        double b2 = side(b, a.to());
        return a1 * a2 <= 0 && b1 * b2 <= 0 && a.bounds().meets(b.bounds());
    }

    private static double side(Edge edge, Point p) {
        double dx = edge.to().x() - edge.from().x();
        double dy = edge.to().y() - edge.from().y();
        return dx * (p.y() - edge.from().y()) - dy * (p.x() - edge.from().x());
    }

    /** Tells whether two pieces do no more than share a corner of their contour or chain. */
    static boolean join(Edge a, Edge b, double step) {
        if (!a.mayJoin(b)) {
            return false;
        }
        boolean fromStart = a.from().distance(b.from()) < step || a.from().distance(b.to()) < step;
        Point common = fromStart ? a.from() : a.to();
        Point farA = fromStart ? a.to() : a.from();
        boolean atStart = b.from().distance(common) < step;
        if (!atStart && b.to().distance(common) >= step) {
            return false;
        }
        Point farB = atStart ? b.to() : b.from();
        return !sameWay(common, farA, farB);
    }

    // Two pieces that leave their common corner in the same direction lie on one another.
    private static boolean sameWay(Point from, Point a, Point b) {
        double ax = a.x() - from.x();
        double ay = a.y() - from.y();
        double bx = b.x() - from.x();
        double by = b.y() - from.y();
        double along = ax * bx + ay * by;
        return along > 0 && StrictMath.abs(ax * by - ay * bx) < 1e-9 * along;
    }

    /** Tells whether a point lies inside a closed polygon, by counting the edges to its right. */
    static boolean inside(Point p, List<Point> polygon) {
        boolean inside = false;
        for (int i = 0; i < polygon.size(); i++) {
            Point a = polygon.get(i);
            Point b = polygon.get((i + 1) % polygon.size());
            if ((a.y() > p.y()) != (b.y() > p.y())) {
                double x = a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                inside ^= p.x() < x;
            }
        }
        return inside;
    }
}
