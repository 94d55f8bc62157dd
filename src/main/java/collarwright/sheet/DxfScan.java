package collarwright.sheet;

import static collarwright.sheet.DxfPairs.tag;
import static collarwright.sheet.DxfPairs.text;
import static collarwright.sheet.DxfPairs.whole;

import collarwright.drawing.Box;
import collarwright.sheet.DxfPairs.Tag;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads a DXF as a machine would that knows lines, arcs, circles and polylines on the plane, and takes exception to
 * everything else.
 *
 * <p>Source: Autodesk, DXF Reference: group codes come in pairs of lines; HEADER, TABLES and ENTITIES sections.
 */
final class DxfScan {
    private static final Set<String> ENTITIES =
            Set.of("LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND");
    private static final Set<String> BLOCK = Set.of("BLOCK", "ENDBLK");

    private final FileFaults faults;
    private final List<Tag> tags;
    private final Map<String, List<Tag>> header = new LinkedHashMap<>();
    private final Set<String> layers = new LinkedHashSet<>();
    private final Set<String> handles = new HashSet<>();
    private final Map<String, String> colours = new LinkedHashMap<>();
    private final DxfGroups groups;
    private final DrawnPieces pieces;
    private boolean sized;
    // Corners of a polyline of release 12 follow as records of their own.
    private Optional<DrawnPiece.Source> polyline = Optional.empty();
    private boolean polylineClosed;
    private final List<double[]> corners = new ArrayList<>();

    private DxfScan(FileFaults faults, List<Tag> tags) {
        this.faults = faults;
        this.tags = tags;
        this.groups = new DxfGroups(faults, colours);
        this.pieces = new DrawnPieces(faults);
    }

    static DrawnFile read(String text, FileFaults faults) {
        DxfScan scan = new DxfScan(faults, DxfPairs.read(text, faults));
        scan.sections();
        return scan.file();
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
            layer(record);
        } else if (section.equals("BLOCKS") && head.code() == 0 && !BLOCK.contains(head.value())) {
            faults.add(
                    head.line(), "lines in the ENTITIES section only", FileFaults.shown(head.value()) + " in a block");
        } else if (section.equals("ENTITIES")) {
            entity(head, record);
        }
    }

    private void handle(Tag tag) {
        if (!handles.add(tag.value())) {
            faults.add(tag.line(), "every handle once", "handle " + FileFaults.shown(tag.value()) + " again");
        }
    }

    private void layer(List<Tag> record) {
        String name = text(record, 2).orElse("");
        layers.add(name);
        text(record, 62).ifPresent(colour -> colours.put(name, colour.startsWith("-") ? colour.substring(1) : colour));
        DxfGroups.layer(record, faults);
    }

    private void entity(Tag head, List<Tag> record) {
        if (!sized) {
            size();
        }
        DrawnPiece.Source source =
                new DrawnPiece.Source(text(record, 8).orElse(""), head.value(), StrictMath.max(1, head.line() - 1));
        for (Tag tag : record) {
            boolean depth = tag.code() >= 30 && tag.code() <= 38;
            if (depth && number(tag).orElse(0) != 0) {
                faults.add(tag.line(), "z 0: a flat drawing", "z " + FileFaults.shown(tag.value()));
            }
        }
        if (ENTITIES.contains(head.value())) {
            groups.entity(record, source.layer());
        }
        switch (head.value()) {
            case "LINE" -> line(source, record);
            case "CIRCLE", "ARC" -> round(source, record);
            case "LWPOLYLINE" -> light(source, record);
            case "POLYLINE" -> {
                polyline = Optional.of(source);
                polylineClosed = whole(record, 70) % 2 != 0;
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
            pieces.straight(source, x1.getAsDouble(), y1.getAsDouble(), x2.getAsDouble(), y2.getAsDouble());
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
            faults.add(source.line(), "a radius above 0 mm", source.entity() + " of radius " + DrawnBars.mm(r));
        } else if (source.entity().equals("CIRCLE")) {
            pieces.circle(source, x.getAsDouble(), y.getAsDouble(), r);
        } else {
            OptionalDouble from = real(record, 50);
            OptionalDouble to = real(record, 51);
            if (from.isPresent() && to.isPresent()) {
                double a = StrictMath.toRadians(from.getAsDouble());
                double turn = (to.getAsDouble() - from.getAsDouble()) % 360;
                double sweep = StrictMath.toRadians(turn <= 0 ? turn + 360 : turn);
                pieces.arc(source, new double[] {x.getAsDouble(), y.getAsDouble()}, r, a, a + sweep);
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
        run(source, found, whole(record, 70) % 2 != 0);
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
            if (from[2] == 0) {
                pieces.straight(source, from[0], from[1], to[0], to[1]);
            } else {
                pieces.bent(source, from, to, from[2]);
            }
        }
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
        if (!sized) {
            size();
        }
        extents();
        return new DrawnFile(
                "DXF " + (full ? "R2000" : "R12"), pieces.width(), pieces.height(), layers, colours, pieces.all());
    }

    private void size() {
        sized = true;
        List<Tag> limits = header.getOrDefault("$LIMMAX", List.of());
        if (!limits.isEmpty()) {
            pieces.sheet(real(limits, 10).orElse(0), real(limits, 20).orElse(0));
        }
    }

    // What the header says of the drawing's size has to be what is drawn.
    private void extents() {
        pieces.all().stream().map(DrawnPiece::reach).reduce(Box::with).ifPresent(drawn -> {
            extent("$EXTMIN", " x", 10, drawn.left());
            extent("$EXTMIN", " y", 20, drawn.bottom());
            extent("$EXTMAX", " x", 10, drawn.right());
            extent("$EXTMAX", " y", 20, drawn.top());
        });
    }

    private void extent(String name, String axis, int code, double drawn) {
        List<Tag> said = header.getOrDefault(name, List.of());
        OptionalDouble value = said.isEmpty() ? OptionalDouble.empty() : real(said, code);
        if (value.isPresent() && StrictMath.abs(value.getAsDouble() - drawn) > 2 * DrawnPiece.CHORD_ERROR) {
            faults.add(
                    said.get(0).line(),
                    name + axis + " where the drawing ends, " + DrawnBars.mm(drawn),
                    DrawnBars.mm(value.getAsDouble()));
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
