package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A strict reading of a DXF file by Python's ezdxf: its own reader (not the one that repairs), its audit with errors and
 * fixes, and the rules that it does not know: layers are defined, radii and lengths are above 0, numbers are finite,
 * handles are used once, owners exist, counts of vertices are true, R12 is ASCII.
 */
public final class EzdxfStrict {
    private EzdxfStrict() {}

    /**
     * A point of a drawing, z left out.
     *
     * @param x right
     * @param y up
     * @param bulge of the polyline's segment that starts here; 0 for everything else
     */
    public record Point(double x, double y, double bulge) {}

    /**
     * One entity of model space.
     *
     * @param type such as LINE or CIRCLE
     * @param layer as written
     * @param points ends of a line, centre of a circle or arc, vertices of a polyline, insertion of a text
     * @param radius of a circle or arc, text height of a text, else 0
     * @param startDegrees of an arc, rotation of a text, else 0
     * @param endDegrees of an arc, else 0
     * @param closed whether a polyline is
     * @param text of a text, else empty
     */
    public record Entity(
            String type,
            String layer,
            List<Point> points,
            double radius,
            double startDegrees,
            double endDegrees,
            boolean closed,
            String text) {
        /** Copies the points. */
        public Entity {
            points = List.copyOf(points);
        }
    }

    /**
     * A drawing as read.
     *
     * @param version such as AC1009 (R12) or AC1015 (R2000); empty if it could not be read
     * @param insunits the header's unit code, 4 is millimetres
     * @param layers names of the layer table, in its order
     * @param extents of everything but text
     * @param entities of model space, in order
     * @param faults everything found wrong; empty for a sound file
     */
    public record Reading(
            String version,
            OptionalInt insunits,
            List<String> layers,
            Optional<Box> extents,
            List<Entity> entities,
            List<String> faults) {
        /** Copies the lists. */
        public Reading {
            layers = List.copyOf(layers);
            entities = List.copyOf(entities);
            faults = List.copyOf(faults);
        }

        /** The entities of one type. */
        public List<Entity> entities(String type) {
            return entities.stream()
                    .filter(entity -> entity.type().equals(type))
                    .toList();
        }

        /** This reading, or a failed test with what is wrong. */
        public Reading orFail() {
            if (!faults.isEmpty()) {
                throw new AssertionError("DXF is not sound: " + String.join("; ", faults));
            }
            return this;
        }
    }

    /** Reads a file. */
    public static Reading read(Path file) {
        String script = ProjectFolder.checkerScript("dxf-strict.py").toString();
        JsonNode told = Json.parse(Run.of(List.of(Checker.python(), script, file.toString()))
                .orFail()
                .out());
        return new Reading(
                told.path("version").asText(),
                told.hasNonNull("insunits")
                        ? OptionalInt.of(told.get("insunits").asInt())
                        : OptionalInt.empty(),
                Json.texts(told.path("layers")),
                told.hasNonNull("extents") ? Optional.of(Box.from(told.get("extents"))) : Optional.empty(),
                Json.nodes(told.path("entities")).stream()
                        .map(EzdxfStrict::entity)
                        .toList(),
                Json.texts(told.path("faults")));
    }

    private static Entity entity(JsonNode node) {
        List<Point> points = Json.nodes(node.path("points")).stream()
                .map(p -> new Point(
                        p.get(0).asDouble(), p.get(1).asDouble(), p.path(2).asDouble()))
                .toList();
        return new Entity(
                node.path("type").asText(),
                node.path("layer").asText(),
                points,
                node.path("radius").asDouble(),
                node.path("start").asDouble(),
                node.path("end").asDouble(),
                node.path("closed").asBoolean(),
                node.path("text").asText());
    }
}
