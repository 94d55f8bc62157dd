package collarwright.drawing;

import java.util.List;

/**
 * A part to be cut from a flat sheet, drawn about an origin of its own.
 *
 * @param name what it is, such as {@code CA}
 * @param layers its lines by role, lead-ins too
 */
public record FlatPart(String name, List<Layer> layers) {
    /** Keeps the layers. */
    public FlatPart {
        layers = List.copyOf(layers);
        if (layers.stream().allMatch(layer -> layer.shapes().isEmpty())) {
            throw new IllegalArgumentException(name + ": a part has lines");
        }
    }

    /**
     * Measures the part.
     *
     * @return the least box that holds every line, lead-ins too
     */
    public Box bounds() {
        return layers.stream()
                .flatMap(layer -> layer.shapes().stream())
                .map(Shape::bounds)
                .reduce(Box::with)
                .orElseThrow();
    }

    /**
     * Moves the part so that the lower left corner of its box lies at a point.
     *
     * @param x the corner's place
     * @param y the corner's place
     * @return the moved part
     */
    public FlatPart at(double x, double y) {
        Box box = bounds();
        return new FlatPart(
                name,
                layers.stream()
                        .map(layer -> new Layer(
                                layer.role(),
                                layer.shapes().stream()
                                        .map(s -> s.moved(x - box.left(), y - box.bottom()))
                                        .toList()))
                        .toList());
    }

    /**
     * Turns the part by a quarter, counter-clockwise; it is never turned over.
     *
     * @return the turned part
     */
    public FlatPart turned() {
        return new FlatPart(
                name,
                layers.stream()
                        .map(layer -> new Layer(
                                layer.role(),
                                layer.shapes().stream().map(FlatPart::turned).toList()))
                        .toList());
    }

    private static Point turned(Point p) {
        return new Point(-p.y(), p.x());
    }

    private static Shape turned(Shape shape) {
        double quarter = StrictMath.PI / 2;
        if (shape instanceof Line line) {
            return new Line(turned(line.from()), turned(line.to()));
        }
        if (shape instanceof Arc arc) {
            return new Arc(turned(arc.centre()), arc.radius(), arc.start() + quarter, arc.sweep());
        }
        if (shape instanceof Circle circle) {
            return new Circle(turned(circle.centre()), circle.radius());
        }
        if (shape instanceof Label label) {
            return new Label(label.text(), turned(label.at()), label.height(), label.angle() + quarter);
        }
        Path path = (Path) shape;
        return new Path(
                path.vertices().stream()
                        .map(v -> new Vertex(turned(v.point()), v.bulge()))
                        .toList(),
                path.closed());
    }
}
