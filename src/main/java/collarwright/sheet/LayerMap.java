package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Layer;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How the lines of each role are called and coloured in cut files.
 *
 * @param styles one for each role, their layers' names all different
 * @param cutOnly whether marks and notes are left out of the file
 */
public record LayerMap(Map<Role, Style> styles, boolean cutOnly) {
    /** Layers named after roles; red and blue cut, black marks, grey informs, green leads in: our choice, no source. */
    public static final LayerMap ROLES = new LayerMap(
            Arrays.stream(Role.values()).collect(Collectors.toMap(Function.identity(), LayerMap::usual)), false);

    /** Keeps the map; checks that every role has a layer of its own. */
    public LayerMap {
        styles = Map.copyOf(styles);
        long names = styles.values().stream().map(Style::layer).distinct().count();
        if (names != Role.values().length || styles.size() != Role.values().length) {
            throw new IllegalArgumentException("every role has a layer of its own");
        }
    }

    /**
     * A role's layer.
     *
     * @param layer plain name, such as {@code CUT-INSIDE}: a name for DXF release 12 and an id for SVG
     * @param colour AutoCAD Color Index, 1 to 255
     * @param svg colour in SVG, such as {@code #ff0000}
     */
    public record Style(String layer, int colour, String svg) {
        /** Checks name and colours. */
        public Style {
            if (!layer.matches("[A-Z][A-Z0-9_-]{0,30}") || colour < 1 || colour > 255 || !svg.matches("#[0-9a-f]{6}")) {
                throw new IllegalArgumentException("no layer: " + layer + ", " + colour + ", " + svg);
            }
        }
    }

    private static Style usual(Role role) {
        return switch (role) {
            case CUT_INSIDE -> new Style(role.layer(), 1, "#ff0000");
            case CUT_OUTSIDE -> new Style(role.layer(), 5, "#0000ff");
            case MARK -> new Style(role.layer(), 7, "#000000");
            case NOTE -> new Style(role.layer(), 8, "#505050");
            case LEAD_IN -> new Style(role.layer(), 3, "#008000");
        };
    }

    /**
     * Returns the same map with all roles shown.
     *
     * @return names and colours as they are
     */
    public LayerMap whole() {
        return new LayerMap(styles, false);
    }

    Style of(Role role) {
        return Optional.ofNullable(styles.get(role)).orElseThrow();
    }

    boolean shows(Role role) {
        return role.isCut() || !cutOnly;
    }

    /** The layers of a sheet that are printed. */
    List<Layer> layers(Sheet sheet) {
        return sheet.layers().stream().filter(layer -> shows(layer.role())).toList();
    }

    /** The least box that holds every line that is printed. */
    Box extents(Sheet sheet) {
        return layers(sheet).stream()
                .flatMap(layer -> layer.shapes().stream())
                .map(Shape::bounds)
                .reduce(Box::with)
                .orElse(sheet.body());
    }
}
