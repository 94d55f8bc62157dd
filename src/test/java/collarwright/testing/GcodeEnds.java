package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A second reader of plain programs, npm's gcode-toolpath: where every G0 and G1 ends. It knows no drilling cycles. */
public final class GcodeEnds {
    private GcodeEnds() {}

    /**
     * The end of a move, millimetres and degrees; an axis that was not stated yet is 0.
     *
     * @param motion such as G0
     * @param x end point
     * @param y end point
     * @param z end point
     * @param a degrees
     */
    public record End(String motion, double x, double y, double z, double a) {}

    /** Reads a program. */
    public static List<End> read(String program) {
        try {
            Path file = Files.createTempFile("ends", ".nc");
            try {
                Files.writeString(file, program);
                List<End> ends = new ArrayList<>();
                for (JsonNode end : NodeScript.run("gcode-ends.mjs", List.of(file.toString()))) {
                    ends.add(new End(
                            end.get(0).asText(),
                            end.get(1).asDouble(),
                            end.get(2).asDouble(),
                            end.get(3).asDouble(),
                            end.get(4).asDouble()));
                }
                return List.copyOf(ends);
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
