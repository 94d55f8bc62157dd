package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Draws a stock sheet with the parts that are cut from it, each where its place is. */
public final class NestedSheet {
    private NestedSheet() {}

    /**
     * What a sheet is called and says.
     *
     * @param name for files, such as {@code plates-1}
     * @param heading what it says about itself; not drawn, since a machine would mark it
     */
    public record Words(String name, Heading heading) {}

    /**
     * A part with its place.
     *
     * @param part the part
     * @param x lower left corner of its box
     * @param y lower left corner of its box
     * @param turned whether it is turned by a quarter first
     */
    public record Place(FlatPart part, double x, double y, boolean turned) {
        private FlatPart lying() {
            return (turned ? part.turned() : part).at(x, y);
        }
    }

    /**
     * Draws a sheet.
     *
     * @param size the whole sheet, from the origin
     * @param places parts inside the sheet's margin, apart from one another
     * @param words name and heading
     * @return the sheet
     */
    public static Sheet draw(Box size, List<Place> places, Words words) {
        List<FlatPart> parts = places.stream().map(Place::lying).toList();
        List<Layer> layers = new ArrayList<>();
        for (Role role : Role.values()) {
            layers.add(new Layer(
                    role,
                    parts.stream()
                            .flatMap(p -> p.layers().stream())
                            .filter(layer -> layer.role() == role)
                            .flatMap(layer -> layer.shapes().stream())
                            .toList()));
        }
        return new Sheet(words.name(), words.heading(), size, size, layers);
    }
}
