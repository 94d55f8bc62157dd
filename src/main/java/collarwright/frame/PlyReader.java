package collarwright.frame;

import collarwright.finding.Code;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads the mesh format PLY, text or binary of either byte order: elements {@code vertex} (x, y, z), {@code face}
 * (vertex_indices) and {@code edge} (vertex1, vertex2); all else is passed over.
 *
 * <p>Source: G. Turk, The PLY Polygon File Format, 1994 (from memory).
 */
final class PlyReader {

    /** A property of an element: a number, or a list of numbers where it has a type of its count. */
    private record Property(String name, PlyType type, Optional<PlyType> count) {}

    private record Element(String name, int count, List<Property> properties) {}

    private final String file;
    private final byte[] bytes;
    private final RawFrame raw;
    private final List<Element> elements = new ArrayList<>();

    PlyReader(String file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
        this.raw = new RawFrame(file, true);
    }

    RawFrame read() {
        Lines lines = new Lines(bytes, StandardCharsets.ISO_8859_1);
        Optional<String> format = head(lines);
        if (format.isEmpty() || raw.stopped()) {
            if (!raw.stopped()) {
                syntax(lines.number(), "a head from ply to end_header with a format", "none");
            }
            return raw;
        }
        boolean text = format.get().equals("ascii");
        RawFrame body = text ? raw : new RawFrame(file, false);
        PlySource source = text
                ? new PlySource.Text(lines)
                : new PlySource.Binary(bytes, lines.offset(), format.get().equals("binary_big_endian"));
        new Body(body, source).read();
        return body;
    }

    private void syntax(int place, String expected, String found) {
        raw.stop(Code.FRAME_SYNTAX, raw.at(place), expected, found, "mend the file's head");
    }

    private Optional<String> head(Lines lines) {
        Optional<String> format = Optional.empty();
        if (!lines.next() || !lines.line().strip().equals("ply")) {
            syntax(1, "ply in the first line", lines.line());
            return format;
        }
        while (lines.next()) {
            String[] words = lines.line().strip().split("\\s+", -1);
            switch (words[0]) {
                case "format" -> format = format(words, lines.number());
                case "element" -> element(words, lines.number());
                case "property" -> property(words, lines.number());
                case "end_header" -> {
                    return format;
                }
                default -> {
                    // Comments and obj_info.
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> format(String[] words, int place) {
        if (words.length > 1
                && List.of("ascii", "binary_little_endian", "binary_big_endian").contains(words[1])) {
            return Optional.of(words[1]);
        }
        syntax(place, "format ascii, binary_little_endian or binary_big_endian", String.join(" ", words));
        return Optional.empty();
    }

    private void element(String[] words, int place) {
        int count = words.length == 3 ? Numbers.whole(words[2]).orElse(-1) : -1;
        if (count < 0) {
            syntax(place, "element, its name and its count", String.join(" ", words));
        } else {
            elements.add(new Element(words[1], count, new ArrayList<>()));
        }
    }

    private void property(String[] words, int place) {
        boolean list = words.length == 5 && words[1].equals("list");
        Optional<PlyType> type = words.length < 3 ? Optional.empty() : PlyType.of(words[list ? 3 : 1]);
        Optional<PlyType> count = list ? PlyType.of(words[2]) : Optional.empty();
        if (elements.isEmpty() || type.isEmpty() || (list && count.isEmpty()) || (!list && words.length != 3)) {
            syntax(place, "property, a type of PLY and a name", String.join(" ", words));
        } else {
            Element element = elements.get(elements.size() - 1);
            Property property = new Property(words[words.length - 1], type.get(), count);
            element.properties().add(property);
            if (list != lists(element, property, list)) {
                syntax(
                        place,
                        "a " + (list ? "number" : "list") + " for " + property.name() + " of element " + element.name(),
                        String.join(" ", words));
            }
        }
    }

    // What is read here is a number or a list by the format; all else may be either.
    private static boolean lists(Element element, Property property, boolean otherwise) {
        String name = property.name().toLowerCase(Locale.ROOT);
        return switch (element.name()) {
            case "vertex" -> !List.of("x", "y", "z").contains(name) && otherwise;
            case "edge" -> !List.of("vertex1", "vertex2").contains(name) && otherwise;
            case "face" -> List.of("vertex_indices", "vertex_index").contains(name) || otherwise;
            default -> otherwise;
        };
    }

    /** Reads what the head describes. */
    private final class Body {

        private final RawFrame into;
        private final PlySource source;

        Body(RawFrame into, PlySource source) {
            this.into = into;
            this.source = source;
        }

        void read() {
            int vertices = elements.stream()
                    .filter(e -> e.name().equals("vertex"))
                    .mapToInt(Element::count)
                    .sum();
            for (Element element : elements) {
                // Without properties there is nothing to read, however many the head promises.
                int records = element.properties().isEmpty() ? 0 : element.count();
                for (int i = 0; i < records; i++) {
                    if (!record(element, vertices)) {
                        return;
                    }
                }
            }
        }

        private boolean record(Element element, int vertices) {
            double[] at = {Double.NaN, Double.NaN, Double.NaN};
            double[] ends = {-1, -1};
            double[] corners = {};
            source.record();
            for (Property property : element.properties()) {
                double[] values = values(property);
                if (source.ended()) {
                    into.stop(
                            Code.FRAME_SYNTAX,
                            into.at(source.place()),
                            element.count() + " of element " + element.name() + ", as the head promises",
                            "fewer, or a word that is no number",
                            "the file is cut short: write it again");
                    return false;
                }
                // An empty list has no value; only lists that are passed over can be empty.
                switch (values.length == 0 ? "" : property.name().toLowerCase(Locale.ROOT)) {
                    case "x" -> at[0] = values[0];
                    case "y" -> at[1] = values[0];
                    case "z" -> at[2] = values[0];
                    case "vertex1" -> ends[0] = values[0];
                    case "vertex2" -> ends[1] = values[0];
                    case "vertex_indices", "vertex_index" -> corners = values;
                    default -> {
                        // Colours, normals and the like.
                    }
                }
            }
            int place = source.place();
            switch (element.name()) {
                case "vertex" -> into.point(at[0], at[1], at[2], place);
                case "face" -> indexes(corners, vertices, place, false);
                case "edge" -> indexes(ends, vertices, place, true);
                default -> {
                    // Elements of other programs.
                }
            }
            return true;
        }

        private double[] values(Property property) {
            if (property.count().isEmpty()) {
                return new double[] {source.number(property.type())};
            }
            double count = source.number(property.count().get());
            if (!(count >= 0 && count <= source.mostLeft())) {
                source.end();
                return new double[0];
            }
            double[] values = new double[(int) count];
            for (int i = 0; i < values.length; i++) {
                values[i] = source.number(property.type());
            }
            return values;
        }

        private void indexes(double[] corners, int vertices, int place, boolean edge) {
            int[] found = new int[corners.length];
            for (int i = 0; i < corners.length; i++) {
                found[i] = (int) corners[i];
                if (found[i] != corners[i] || found[i] < 0 || found[i] >= vertices) {
                    into.stop(
                            Code.FRAME_SYNTAX,
                            into.at(place),
                            "the number of a vertex, 0 to " + (vertices - 1),
                            Double.toString(corners[i]),
                            "mend the " + (edge ? "edge" : "face"));
                    return;
                }
            }
            if (edge) {
                into.line(found[0], found[1], place);
            } else if (found.length > 2) {
                into.face(found, place);
            }
        }
    }
}
