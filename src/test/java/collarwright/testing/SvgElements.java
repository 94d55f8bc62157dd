package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Python's svgelements: true sizes of an SVG file in millimetres, so that a width without a unit shows. */
public final class SvgElements {
    private SvgElements() {}

    /**
     * Sizes in a file.
     *
     * @param pageWidth mm
     * @param pageHeight mm
     * @param boxes of every shape that has an id, strokes left out, in order; y down
     */
    public record Sizes(double pageWidth, double pageHeight, Map<String, Box> boxes) {}

    /** Measures a file; a failed test if it can't be read. */
    public static Sizes measure(Path file) {
        String script = ProjectFolder.checkerScript("svg-sizes.py").toString();
        JsonNode told = Json.parse(Run.of(List.of(Checker.python(), script, file.toString()))
                .orFail()
                .out());
        return new Sizes(
                told.get("page").get(0).asDouble(), told.get("page").get(1).asDouble(), boxes(told.get("boxes")));
    }

    static Map<String, Box> boxes(JsonNode told) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        told.properties().forEach(entry -> boxes.put(entry.getKey(), Box.from(entry.getValue())));
        return boxes;
    }
}
