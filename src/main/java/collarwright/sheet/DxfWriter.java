package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Layer;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.drawing.Vertex;
import collarwright.units.Angles;

/**
 * Prints a sheet as DXF: millimetres, positive quadrant, z = 0, colour on layer and entity. Circles are CIRCLE, the rest
 * is LINE and ARC (or polylines, by choice); letters are strokes, never TEXT.
 *
 * <p>Source: Autodesk, DXF Reference, groups in the HEADER and ENTITIES sections. {@code $INSUNITS} is written into
 * release 12 too; it is not in that release's own list, but readers that know it scale by it and the others skip it
 * (tried, not specified).
 */
public final class DxfWriter {
    private static final int MILLIMETRES = 4;

    private final Sheet sheet;
    private final DxfFlavour flavour;
    private final DxfOutlines outlines;
    private final LayerMap map;
    private final DxfTags tags = new DxfTags();
    private int nextHandle = DxfR2000.FIRST_FREE;

    private DxfWriter(Sheet sheet, DxfFlavour flavour, DxfOutlines outlines, LayerMap map) {
        this.sheet = sheet;
        this.flavour = flavour;
        this.outlines = outlines;
        this.map = map;
    }

    /**
     * Prints a sheet with outlines as lines and arcs.
     *
     * @param sheet what to print; it has to pass the lint
     * @param flavour which DXF
     * @return the file's text, plain ASCII, lines ending in CR LF
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet, DxfFlavour flavour) {
        return print(sheet, flavour, DxfOutlines.LINES_AND_ARCS);
    }

    /**
     * Prints a sheet.
     *
     * @param sheet what to print; it has to pass the lint
     * @param flavour which DXF
     * @param outlines how contours are written
     * @return the file's text, plain ASCII, lines ending in CR LF
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet, DxfFlavour flavour, DxfOutlines outlines) {
        return print(sheet, flavour, outlines, LayerMap.ROLES);
    }

    /**
     * Prints a sheet with layers of one's own.
     *
     * @param sheet what to print; it has to pass the lint
     * @param flavour which DXF
     * @param outlines how contours are written
     * @param map names and colours of layers
     * @return the file's text, plain ASCII, lines ending in CR LF
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet, DxfFlavour flavour, DxfOutlines outlines, LayerMap map) {
        return print(SoundSheet.of(sheet), flavour, outlines, map);
    }

    /**
     * Prints a sheet that was looked through.
     *
     * @param sheet what to print
     * @param flavour which DXF
     * @param outlines how contours are written
     * @param map names and colours of layers
     * @return the file's text, plain ASCII, lines ending in CR LF
     */
    public static String print(SoundSheet sheet, DxfFlavour flavour, DxfOutlines outlines, LayerMap map) {
        DxfWriter writer = new DxfWriter(sheet.sheet(), flavour, outlines, map);
        return flavour == DxfFlavour.R2000 ? writer.r2000() : writer.r12();
    }

    private String r12() {
        header();
        tags.start("TABLES");
        tags.text(0, "TABLE").text(2, "LTYPE").whole(70, 1);
        tags.text(0, "LTYPE").text(2, "CONTINUOUS").whole(70, 0).text(3, "Solid line");
        tags.whole(72, 65).whole(73, 0).number(40, 0).text(0, "ENDTAB");
        tags.text(0, "TABLE").text(2, "LAYER").whole(70, map.layers(sheet).size() + 1);
        layerR12("0", 7);
        for (Layer layer : map.layers(sheet)) {
            LayerMap.Style style = map.of(layer.role());
            layerR12(style.layer(), style.colour());
        }
        tags.text(0, "ENDTAB").text(0, "TABLE").text(2, "STYLE").whole(70, 1);
        tags.text(0, "STYLE")
                .text(2, "STANDARD")
                .whole(70, 0)
                .number(40, 0)
                .number(41, 1)
                .number(50, 0);
        tags.whole(71, 0)
                .number(42, 2.5)
                .text(3, "txt")
                .text(4, "")
                .text(0, "ENDTAB")
                .end();
        entities();
        return tags.text(0, "EOF").toString();
    }

    private void layerR12(String name, int colour) {
        tags.text(0, "LAYER").text(2, name).whole(70, 0).whole(62, colour).text(6, "CONTINUOUS");
    }

    private String r2000() {
        // The header names the first free handle, so the lines are printed first, into tags of their own.
        DxfWriter lines = new DxfWriter(sheet, flavour, outlines, map);
        lines.entities();
        nextHandle = lines.nextHandle;
        header();
        DxfR2000 frame = new DxfR2000(tags, sheet, map);
        frame.classes();
        frame.tables();
        frame.blocks();
        return tags.toString() + lines.tags + rest();
    }

    private String rest() {
        DxfTags end = new DxfTags();
        new DxfR2000(end, sheet, map).objects();
        return end.text(0, "EOF").toString();
    }

    private void header() {
        Box box = map.extents(sheet);
        tags.start("HEADER");
        tags.text(9, "$ACADVER").text(1, flavour.version());
        if (flavour == DxfFlavour.R2000) {
            tags.text(9, "$DWGCODEPAGE").text(3, "ANSI_1252");
            tags.text(9, "$HANDSEED").handle(5, nextHandle);
        }
        tags.text(9, "$INSBASE").point(10, 0, 0);
        tags.text(9, "$EXTMIN").point(10, box.left(), box.bottom());
        tags.text(9, "$EXTMAX").point(10, box.right(), box.top());
        tags.text(9, "$LIMMIN").flat(10, 0, 0);
        tags.text(9, "$LIMMAX").flat(10, sheet.size().right(), sheet.size().top());
        tags.text(9, "$LUNITS").whole(70, 2);
        tags.text(9, "$LUPREC").whole(70, 4);
        tags.text(9, "$INSUNITS").whole(70, MILLIMETRES);
        if (flavour == DxfFlavour.R2000) {
            tags.text(9, "$MEASUREMENT").whole(70, 1);
        }
        tags.text(9, "$CLAYER").text(8, "0").end();
    }

    private void entities() {
        tags.start("ENTITIES");
        for (Layer layer : map.layers(sheet)) {
            layer.shapes().forEach(shape -> shape(layer.role(), shape));
        }
        tags.end();
    }

    private void shape(Role role, Shape shape) {
        if (shape instanceof Line line) {
            line(role, line);
        } else if (shape instanceof Arc arc) {
            arc(role, arc);
        } else if (shape instanceof Circle circle) {
            circle(role, circle);
        } else if (shape instanceof Label label) {
            label.strokes().forEach(stroke -> path(role, stroke));
        } else if (shape instanceof Path path) {
            path(role, path);
        }
    }

    private void line(Role role, Line line) {
        entity(role, "LINE", "AcDbLine");
        point(10, line.from());
        point(11, line.to());
    }

    private void circle(Role role, Circle circle) {
        entity(role, "CIRCLE", "AcDbCircle");
        point(10, circle.centre());
        tags.number(40, circle.radius());
    }

    private void arc(Role role, Arc arc) {
        entity(role, "ARC", "AcDbCircle");
        point(10, arc.centre());
        tags.number(40, arc.radius());
        if (flavour == DxfFlavour.R2000) {
            tags.text(100, "AcDbArc");
        }
        // An ARC always runs counter-clockwise.
        boolean turned = arc.sweep() < 0;
        tags.degrees(50, degrees(turned ? arc.end() : arc.start()));
        tags.degrees(51, degrees(turned ? arc.start() : arc.end()));
    }

    private static double degrees(double angle) {
        double turn = Angles.degrees(angle) % 360;
        double positive = turn < 0 ? turn + 360 : turn;
        // What would print as 360 is 0.
        return positive > 360 - 1e-8 ? 0 : positive;
    }

    private void path(Role role, Path path) {
        if (outlines == DxfOutlines.LINES_AND_ARCS) {
            path.pieces().forEach(piece -> shape(role, piece));
        } else if (flavour == DxfFlavour.R2000) {
            entity(role, "LWPOLYLINE", "AcDbPolyline");
            tags.whole(90, path.vertices().size()).whole(70, path.closed() ? 1 : 0);
            for (Vertex vertex : path.vertices()) {
                tags.flat(10, vertex.point().x(), vertex.point().y());
                bulge(vertex);
            }
        } else {
            polylineR12(role, path);
        }
    }

    private void polylineR12(Role role, Path path) {
        entity(role, "POLYLINE", "");
        tags.whole(66, 1).point(10, 0, 0).whole(70, path.closed() ? 1 : 0);
        for (Vertex vertex : path.vertices()) {
            entity(role, "VERTEX", "");
            point(10, vertex.point());
            bulge(vertex);
        }
        entity(role, "SEQEND", "");
    }

    private void bulge(Vertex vertex) {
        if (vertex.bulge() != 0) {
            tags.bulge(42, vertex.bulge());
        }
    }

    private void entity(Role role, String name, String marker) {
        tags.text(0, name);
        if (flavour == DxfFlavour.R2000) {
            tags.handle(5, nextHandle).handle(330, DxfR2000.MODEL_SPACE).text(100, "AcDbEntity");
            nextHandle++;
        }
        tags.text(8, map.of(role).layer()).whole(62, map.of(role).colour());
        if (flavour == DxfFlavour.R2000) {
            tags.text(100, marker);
        }
    }

    private void point(int code, Point p) {
        tags.point(code, p.x(), p.y());
    }
}
