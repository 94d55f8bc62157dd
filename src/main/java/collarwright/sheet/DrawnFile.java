package collarwright.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was read from a cut file.
 *
 * @param format such as {@code DXF R12}
 * @param width of the sheet, mm; 0 if the file does not say it
 * @param height of the sheet, mm
 * @param layers that the file declares
 * @param colours of layers, as the format writes them
 * @param pieces all lines, arcs and circles, in the file's order
 */
record DrawnFile(
        String format,
        double width,
        double height,
        Set<String> layers,
        Map<String, String> colours,
        List<DrawnPiece> pieces) {
    DrawnFile {
        layers = Set.copyOf(layers);
        colours = Map.copyOf(colours);
        pieces = List.copyOf(pieces);
    }

    List<DrawnPiece> on(String layer) {
        return pieces.stream().filter(p -> p.layer().equals(layer)).toList();
    }
}
