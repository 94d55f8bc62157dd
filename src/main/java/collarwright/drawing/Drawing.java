package collarwright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Gathers shapes by role while a sheet is drawn. A builder's tool: it changes as shapes are added. */
final class Drawing {
    private final Map<Role, List<Shape>> shapes = new EnumMap<>(Role.class);

    Drawing() {
        for (Role role : Role.values()) {
            shapes.put(role, new ArrayList<>());
        }
    }

    void add(Role role, Shape shape) {
        shapes.computeIfAbsent(role, r -> new ArrayList<>()).add(shape);
    }

    void addAll(Role role, List<Shape> more) {
        more.forEach(shape -> add(role, shape));
    }

    void addMoved(Drawing other, double dx, double dy) {
        other.shapes.forEach((role, list) -> list.forEach(shape -> add(role, shape.moved(dx, dy))));
    }

    List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        shapes.forEach((role, list) -> layers.add(new Layer(role, list)));
        return List.copyOf(layers);
    }
}
