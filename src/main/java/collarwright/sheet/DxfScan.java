package collarwright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Reads a DXF as a machine would that knows lines, arcs, circles and polylines on the plane, and takes exception to
 * everything else.
 *
 * <p>Source: Autodesk, DXF Reference: group codes come in pairs of lines; HEADER, TABLES and ENTITIES sections.
 */
final class DxfScan {
    private static final Set<String> DRAWN = Set.of("LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE");
    private static final String CURE = "name a DXF of a pack of ours, R12 or R2000";

    private final FileFaults faults;
    private final List<Tag> tags = new ArrayList<>();
    private final Map<String, List<Tag>> header = new LinkedHashMap<>();
    private final Set<String> layers = new LinkedHashSet<>();
    private final Set<String> handles = new HashSet<>();
    private final List<DrawnPiece> pieces = new ArrayList<>();
    // Corners of a polyline of release 12 follow as records of their own.
    private Optional<DrawnPiece.Source> polyline = Optional.empty();
    private boolean polylineClosed;
    private final List<double[]> corners = new ArrayList<>();

    private DxfScan(FileFaults faults) {
        this.faults = faults;
    }

    /**
     * A group code and its value.
     *
     * @param code what the value is
     * @param value without blanks around it
     * @param line of the value, from 1
     */
    private record Tag(int code, String value, int line) {
        boolean starts(String what) {
            return code == 0 && value.equals(what);
        }
    }

    static DrawnFile read(String text, FileFaults faults) {
        DxfScan scan = new DxfScan(faults);
        scan.tags(text);
        scan.sections();
        return scan.file();
    }

    private void tags(String text) {
        List<String> lines = lines(text);
        int end = lines.size();
        while (end > 0 && lines.get(end - 1).isBlank()) {
            end--;
        }
        for (int i = 0; i < end; i += 2) {
            String code = lines.get(i).strip();
            if (code.isEmpty() || code.length() > 4 || FileFaults.digits(code, 0) != code.length()) {
                throw faults.unreadable(i + 1, "a group code, a whole number", FileFaults.shown(code), CURE);
            }
            tags.add(new Tag(
                    Integer.parseInt(code), i + 1 < end ? lines.get(i + 1).strip() : "", i + 2));
        }
        if (tags.isEmpty() || !tags.get(tags.size() - 1).starts("EOF")) {
            faults.add(StrictMath.max(1, end), "EOF at the end: a whole file", "it breaks off");
        }
    }

    // A line ends in CR LF, LF or CR. Read by hand: a file has tens of thousands of them.
    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(start, i));
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                start = i + 1;
            }
        }
        lines.add(text.substring(start));
        return lines;
    }

    private void sections() {
        String section = "";
        int i = 0;
        while (i < tags.size()) {
            Tag tag = tags.get(i);
            if (tag.starts("SECTION") && i + 1 < tags.size()) {
                section = tags.get(i + 1).value();
                i += 2;
            } else if (tag.starts("ENDSEC")) {
                section = "";
                i++;
            } else {
                int next = next(i + 1, section);
                List<Tag> record = tags.subList(i, next);
                record(section, record);
                i = next;
            }
        }
    }

    // The end of what starts at a tag: the next 0, or in the header the next 9.
    private int next(int from, String section) {
        int starter = section.equals("HEADER") ? 9 : 0;
        int i = from;
        while (i < tags.size() && tags.get(i).code() != 0 && tags.get(i).code() != starter) {
            i++;
        }
        return i;
    }

    private void record(String section, List<Tag> record) {
        Tag head = record.get(0);
        if (section.equals("HEADER") && head.code() == 9) {
            header.put(head.value(), List.copyOf(record.subList(1, record.size())));
            return;
        }
        for (Tag tag : record) {
            if (tag.code() == 5) {
                handle(tag);
            }
        }
        if (section.equals("TABLES") && head.starts("LAYER")) {
            text(record, 2).ifPresent(layers::add);
        } else if (section.equals("BLOCKS") && DRAWN.contains(head.value())) {
            faults.add(head.line(), "lines in the ENTITIES section only", head.value() + " in a block");
        } else if (section.equals("ENTITIES")) {
            entity(head, record);
        }
    }

    private void handle(Tag tag) {
        if (!handles.add(tag.value())) {
            faults.add(tag.line(), "every handle once", "handle " + FileFaults.shown(tag.value()) + " again");
        }
    }

    private void entity(Tag head, List<Tag> record) {
        DrawnPiece.Source source =
                new DrawnPiece.Source(text(record, 8).orElse(""), head.value(), StrictMath.max(1, head.line() - 1));
        for (Tag tag : record) {
            boolean depth = tag.code() >= 30 && tag.code() <= 38;
            if (depth && number(tag).orElse(0) != 0) {
                faults.add(tag.line(), "z 0: a flat drawing", "z " + FileFaults.shown(tag.value()));
            }
        }
        switch (head.value()) {
            case "LINE" -> line(source, record);
            case "CIRCLE", "ARC" -> round(source, record);
            case "LWPOLYLINE" -> light(source, record);
            case "POLYLINE" -> {
                polyline = Optional.of(source);
                polylineClosed = whole(record, 70) == 1;
                corners.clear();
            }
            case "VERTEX" -> vertex(record);
            case "SEQEND" -> {
                run(polyline.orElse(source), corners, polylineClosed);
                polyline = Optional.empty();
                corners.clear();
            }
            default ->
                faults.add(
                        source.line(),
                        "LINE, ARC, CIRCLE, LWPOLYLINE or POLYLINE",
                        FileFaults.shown(head.value()) + " on layer " + FileFaults.shown(source.layer()));
        }
    }

    private void vertex(List<Tag> record) {
        if (polyline.isEmpty()) {
            faults.add(record.get(0).line(), "a VERTEX after its POLYLINE", "one that stands alone");
            return;
        }
        OptionalDouble x = real(record, 10);
        OptionalDouble y = real(record, 20);
        if (x.isPresent() && y.isPresent()) {
            corners.add(new double[] {x.getAsDouble(), y.getAsDouble(), bulge(record)});
        }
    }

    private void line(DrawnPiece.Source source, List<Tag> record) {
        OptionalDouble x1 = real(record, 10);
        OptionalDouble y1 = real(record, 20);
        OptionalDouble x2 = real(record, 11);
        OptionalDouble y2 = real(record, 21);
        if (x1.isPresent() && y1.isPresent() && x2.isPresent() && y2.isPresent()) {
            pieces.add(DrawnPiece.straight(
                    source, x1.getAsDouble(), y1.getAsDouble(), x2.getAsDouble(), y2.getAsDouble()));
        }
    }

    private void round(DrawnPiece.Source source, List<Tag> record) {
        OptionalDouble x = real(record, 10);
        OptionalDouble y = real(record, 20);
        OptionalDouble radius = real(record, 40);
        if (x.isEmpty() || y.isEmpty() || radius.isEmpty()) {
            return;
        }
        double r = radius.getAsDouble();
        if (r < SheetLint.STEP) {
            faults.add(source.line(), "a radius above 0 mm", source.entity() + " of radius " + r + " mm");
        } else if (source.entity().equals("CIRCLE")) {
            pieces.add(DrawnPiece.circle(source, x.getAsDouble(), y.getAsDouble(), r));
        } else {
            OptionalDouble from = real(record, 50);
            OptionalDouble to = real(record, 51);
            if (from.isPresent() && to.isPresent()) {
                double a = StrictMath.toRadians(from.getAsDouble());
                double b = StrictMath.toRadians(to.getAsDouble());
                double turn = (to.getAsDouble() - from.getAsDouble()) % 360;
                double sweep = StrictMath.toRadians(turn <= 0 ? turn + 360 : turn);
                double[] start = {x.getAsDouble() + r * StrictMath.cos(a), y.getAsDouble() + r * StrictMath.sin(a)};
                double[] end = {x.getAsDouble() + r * StrictMath.cos(b), y.getAsDouble() + r * StrictMath.sin(b)};
                pieces.add(DrawnPiece.bent(source, start, end, StrictMath.tan(sweep / 4)));
            }
        }
    }

    private void light(DrawnPiece.Source source, List<Tag> record) {
        List<double[]> found = new ArrayList<>();
        for (Tag tag : record) {
            double value = tag.code() == 10 || tag.code() == 20 || tag.code() == 42
                    ? number(tag).orElse(0)
                    : 0;
            if (tag.code() == 10) {
                found.add(new double[] {value, 0, 0});
            } else if (tag.code() == 20 && !found.isEmpty()) {
                found.get(found.size() - 1)[1] = value;
            } else if (tag.code() == 42 && !found.isEmpty()) {
                found.get(found.size() - 1)[2] = value;
            }
        }
        if (found.size() != whole(record, 90)) {
            faults.add(source.line(), whole(record, 90) + " corners, as group 90 says", found.size() + " corners");
        }
        run(source, found, whole(record, 70) == 1);
    }

    private void run(DrawnPiece.Source source, List<double[]> path, boolean closed) {
        if (path.size() < 2) {
            faults.add(source.line(), "a polyline of two corners or more", path.size() + " corners");
            return;
        }
        int count = closed ? path.size() : path.size() - 1;
        for (int i = 0; i < count; i++) {
            double[] from = path.get(i);
            double[] to = path.get((i + 1) % path.size());
            pieces.add(
                    from[2] == 0
                            ? DrawnPiece.straight(source, from[0], from[1], to[0], to[1])
                            : DrawnPiece.bent(source, from, to, from[2]));
        }
    }

    private static Optional<Tag> tag(List<Tag> record, int code) {
        for (Tag tag : record) {
            if (tag.code() == code) {
                return Optional.of(tag);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> text(List<Tag> record, int code) {
        return tag(record, code).map(Tag::value);
    }

    private static int whole(List<Tag> record, int code) {
        return text(record, code)
                .filter(t -> !t.isEmpty() && t.length() <= 8 && FileFaults.digits(t, 0) == t.length())
                .map(Integer::parseInt)
                .orElse(0);
    }

    private double bulge(List<Tag> record) {
        return tag(record, 42).map(t -> number(t).orElse(0)).orElse(0.0);
    }

    private OptionalDouble number(Tag tag) {
        return faults.number(tag.value(), tag.line(), "group " + tag.code())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble real(List<Tag> record, int code) {
        Optional<Tag> tag = tag(record, code);
        if (tag.isEmpty()) {
            Tag head = record.get(0);
            faults.add(head.line(), "group " + code + " of " + head.value(), "none");
            return OptionalDouble.empty();
        }
        return number(tag.get());
    }

    private DrawnFile file() {
        String version = said("$ACADVER", 1).orElse("");
        boolean full = version.equals("AC1015");
        if (!full && !version.equals("AC1009")) {
            faults.add(1, "$ACADVER AC1009 (R12) or AC1015 (R2000)", version.isEmpty() ? "none" : version);
        }
        unit("$INSUNITS", "4, millimetres", "4");
        if (full) {
            unit("$MEASUREMENT", "1, metric", "1");
        }
        extents("$EXTMIN", true);
        extents("$EXTMAX", false);
        List<Tag> limits = header.getOrDefault("$LIMMAX", List.of());
        double width = limits.isEmpty() ? 0 : real(limits, 10).orElse(0);
        double height = limits.isEmpty() ? 0 : real(limits, 20).orElse(0);
        return new DrawnFile("DXF " + (full ? "R2000" : "R12"), width, height, layers, pieces);
    }

    // What the header says of the drawing's size has to be what is drawn.
    private void extents(String name, boolean least) {
        List<Tag> said = header.getOrDefault(name, List.of());
        if (said.isEmpty() || pieces.isEmpty()) {
            return;
        }
        extent(name + " x", said, 10, least, DrawnPiece.Spot::mmX);
        extent(name + " y", said, 20, least, DrawnPiece.Spot::mmY);
    }

    private void extent(
            String name, List<Tag> said, int code, boolean least, ToDoubleFunction<DrawnPiece.Spot> coordinate) {
        double drawn = least ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        for (DrawnPiece piece : pieces) {
            for (DrawnPiece.Spot spot : piece.spots()) {
                double at = coordinate.applyAsDouble(spot);
                drawn = least ? StrictMath.min(drawn, at) : StrictMath.max(drawn, at);
            }
        }
        OptionalDouble value = real(said, code);
        if (value.isPresent() && StrictMath.abs(value.getAsDouble() - drawn) > 2 * DrawnPiece.CHORD_ERROR) {
            faults.add(said.get(0).line(), name + " where the drawing ends, " + drawn, value.getAsDouble() + " mm");
        }
    }

    private void unit(String name, String expected, String value) {
        String found = said(name, 70).orElse("none");
        if (!found.equals(value)) {
            int line = header.getOrDefault(name, List.of()).stream()
                    .mapToInt(Tag::line)
                    .findFirst()
                    .orElse(1);
            faults.add(line, name + " " + expected, found);
        }
    }

    private Optional<String> said(String name, int code) {
        return text(header.getOrDefault(name, List.of()), code);
    }
}
