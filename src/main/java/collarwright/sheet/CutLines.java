package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lines to cut along, by where they run: only neighbours are compared, and only near one another. */
final class CutLines {
    private final List<Shape> shapes;
    private final List<Box> boxes;
    private final NearBoxes near;

    CutLines(List<Shape> shapes) {
        this.shapes = List.copyOf(shapes);
        this.boxes = shapes.stream().map(Shape::bounds).toList();
        this.near = new NearBoxes(boxes);
    }

    /**
     * Two cut lines, or one twice, that share a point that is no common corner.
     *
     * @param first number of the shape in the list
     * @param second the same or a greater number
     * @param at near there
     */
    record Meeting(int first, int second, Point at) {}

    /** Where they meet, each pair once, in the order of the shapes. */
    List<Meeting> meetings() {
        List<Meeting> found = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            for (int other : near.meeting(boxes.get(i))) {
                if (other == i) {
                    ownMeeting(i).ifPresent(found::add);
                } else if (other > i) {
                    meeting(i, other).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private Optional<Meeting> meeting(int first, int second) {
        // Of a part and a hole in it the part's outline mostly has nothing near the hole.
        boolean firstIsWider = boxes.get(first).width() >= boxes.get(second).width();
        int wide = firstIsWider ? first : second;
        int narrow = firstIsWider ? second : first;
        List<Contours.Edge> edges = edges(wide, boxes.get(narrow));
        List<Contours.Edge> others = edges.isEmpty() ? List.of() : edges(narrow, boxes.get(wide));
        if (others.isEmpty()) {
            return Optional.empty();
        }
        edges.addAll(others);
        return sweep(edges, first, second);
    }

    private Optional<Meeting> ownMeeting(int shape) {
        return shapes.get(shape) instanceof Circle
                ? Optional.empty()
                : sweep(Contours.edges(shapes.get(shape), shape), shape, shape);
    }

    private List<Contours.Edge> edges(int shape, Box place) {
        List<Contours.Edge> edges = new ArrayList<>();
        for (Contours.Edge edge : Contours.edges(shapes.get(shape), shape)) {
            if (edge.bounds().meets(place)) {
                edges.add(edge);
            }
        }
        return edges;
    }

    // Sweeps from left to right over the edges of two shapes, or of one.
    private static Optional<Meeting> sweep(List<Contours.Edge> edges, int first, int second) {
        List<Contours.Edge> sorted = new ArrayList<>(edges);
        sorted.sort(Comparator.comparingDouble(edge -> edge.bounds().left()));
        List<Contours.Edge> open = new ArrayList<>();
        for (Contours.Edge edge : sorted) {
            open.removeIf(other -> other.bounds().right() < edge.bounds().left());
            for (Contours.Edge other : open) {
                boolean pair = first == second || edge.shape() != other.shape();
                if (pair && Contours.meet(edge, other) && !Contours.join(edge, other, SheetLint.STEP)) {
                    return Optional.of(new Meeting(first, second, edge.from()));
                }
            }
            open.add(edge);
        }
        return Optional.empty();
    }

    /**
     * Counts the closed lines that run round a point.
     *
     * @param p where; a line that starts just there does not count
     * @return how many
     */
    long around(Point p) {
        return near.meeting(Box.of(p, p)).stream()
                .map(shapes::get)
                .filter(Contours::isClosed)
                .filter(shape -> !Contours.start(shape).equals(p))
                .filter(shape -> Contours.inside(p, Contours.corners(shape)))
                .count();
    }
}
