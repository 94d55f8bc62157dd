package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import collarwright.drawing.Layer;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.drawing.Vertex;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Small sheets for the tests of the lint and the writers: 200 mm × 100 mm, body x 20 to 180, y 20 to 90. */
final class Sheets {
    private final Map<Role, List<Shape>> shapes = new EnumMap<>(Role.class);
    private String title = "Test";

    private Sheets() {
        for (Role role : Role.values()) {
            shapes.put(role, new ArrayList<>());
        }
    }

    static Sheets empty() {
        return new Sheets();
    }

    Sheets titled(String words) {
        title = words;
        return this;
    }

    Sheets with(Role role, Shape... more) {
        shapes.get(role).addAll(List.of(more));
        return this;
    }

    Sheet build() {
        List<Layer> layers = new ArrayList<>();
        shapes.forEach((role, list) -> layers.add(new Layer(role, list)));
        Heading heading = new Heading("Plate", title, "HKVWTXNA", List.of("A note."), List.of());
        return new Sheet("plate", heading, new Box(0, 0, 200, 100), new Box(20, 20, 180, 90), layers);
    }

    /** A square by its lower left corner. */
    static Path square(double x, double y, double side) {
        return Path.rectangle(new Box(x, y, x + side, y + side));
    }

    /** A slot: two straight sides and two half turns. */
    static Path slot(double x, double y) {
        return new Path(
                List.of(
                        new Vertex(new Point(x, y), 0),
                        new Vertex(new Point(x + 20, y), 1),
                        new Vertex(new Point(x + 20, y + 8), 0),
                        new Vertex(new Point(x, y + 8), 1)),
                true);
    }
}
