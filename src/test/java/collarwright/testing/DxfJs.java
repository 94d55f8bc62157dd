package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A second reader of DXF, npm's dxf: it finds no faults, but its geometry is not ezdxf's. */
public final class DxfJs {
    private DxfJs() {}

    /**
     * What it drew.
     *
     * @param box extents in drawing units; curves are walked in short chords, so good to about 1e-2
     * @param counts entities by type
     */
    public record Reading(Box box, Map<String, Integer> counts) {}

    /** Reads a file. */
    public static Reading read(Path file) {
        JsonNode told = NodeScript.run("dxf-box.mjs", List.of(file.toString()));
        Map<String, Integer> counts = new TreeMap<>();
        told.get("counts")
                .properties()
                .forEach(entry -> counts.put(entry.getKey(), entry.getValue().asInt()));
        return new Reading(Box.from(told.get("box")), counts);
    }
}
