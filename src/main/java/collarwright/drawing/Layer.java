package collarwright.drawing;

import java.util.List;

/**
 * All shapes of one role on a sheet.
 *
 * @param role what they are for
 * @param shapes in the order in which they are written
 */
public record Layer(Role role, List<Shape> shapes) {
    /** Keeps the list. */
    public Layer {
        shapes = List.copyOf(shapes);
    }
}
