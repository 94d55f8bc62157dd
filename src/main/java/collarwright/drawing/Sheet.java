package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing at full size that every writer prints alike. Its lower left corner is the origin.
 *
 * @param name plain name for file and layer titles, such as {@code CA-wrap}: letters, digits, dots and hyphens
 * @param heading what it says about itself
 * @param size the whole sheet, from the origin
 * @param body the part that is the drawing itself; what lies outside it (bars, notes, table) is repeated by page
 *     printers in their own way
 * @param layers one of each role, in the order of {@link Role}; that of lead-ins is left out where it is empty
 */
public record Sheet(String name, Heading heading, Box size, Box body, List<Layer> layers) {
    /** Least distance of any line from the edge of a sheet. */
    public static final double MARGIN = 5;

    private static final List<Role> USUAL = List.of(Role.CUT_INSIDE, Role.CUT_OUTSIDE, Role.MARK, Role.NOTE);

    /** Checks the name, the frame and the layers. */
    public Sheet {
        layers = layers.stream()
                .filter(layer -> layer.role() != Role.LEAD_IN || !layer.shapes().isEmpty())
                .toList();
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9.-]*")) {
            throw new IllegalArgumentException("a sheet needs a plain name, not " + name);
        }
        if (size.left() != 0 || size.bottom() != 0 || !size.holds(body)) {
            throw new IllegalArgumentException(name + ": a sheet starts at the origin and holds its body");
        }
        List<Role> roles = layers.stream().map(Layer::role).toList();
        if (!roles.equals(List.of(Role.values())) && !roles.equals(USUAL)) {
            throw new IllegalArgumentException(name + ": a sheet has one layer of each role");
        }
    }

    /**
     * Returns the shapes of one role.
     *
     * @param role the role
     * @return its shapes in order
     */
    public List<Shape> shapes(Role role) {
        return layers.stream()
                .filter(layer -> layer.role() == role)
                .flatMap(layer -> layer.shapes().stream())
                .toList();
    }

    /**
     * Returns all shapes.
     *
     * @return layer by layer
     */
    public List<Shape> shapes() {
        List<Shape> all = new ArrayList<>();
        layers.forEach(layer -> all.addAll(layer.shapes()));
        return List.copyOf(all);
    }

    /**
     * Measures what is drawn.
     *
     * @return the least box that holds every shape
     */
    public Box extents() {
        return shapes().stream().map(Shape::bounds).reduce(Box::with).orElse(body);
    }
}
