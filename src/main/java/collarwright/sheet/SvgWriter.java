package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Layer;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.drawing.Vertex;
import collarwright.units.Decimals;

/**
 * Prints a sheet as SVG for cutters and browsers: one unit is one millimetre, every coordinate is absolute, y is turned
 * over in the numbers themselves, layers are groups named by role. No transforms, no styles, no text, no curves but true
 * circles and arcs.
 */
public final class SvgWriter {
    /** Width of a line unless a cutter asks for another. */
    public static final double HAIRLINE = 0.1;

    private static final int DECIMALS = 4;

    private final Sheet sheet;
    private final LayerMap map;
    private final StringBuilder out = new StringBuilder();

    private SvgWriter(Sheet sheet, LayerMap map) {
        this.sheet = sheet;
        this.map = map;
    }

    /**
     * Prints a sheet with lines of the usual width.
     *
     * @param sheet what to print; it has to pass the lint
     * @return the file's text, lines ending in {@code \n}, to be written as UTF-8
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet) {
        return print(sheet, HAIRLINE);
    }

    /**
     * Prints a sheet.
     *
     * @param sheet what to print; it has to pass the lint
     * @param hairline width of all lines, above 0; some cutters know a line to cut by its width
     * @return the file's text, lines ending in {@code \n}, to be written as UTF-8
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet, double hairline) {
        return print(sheet, hairline, LayerMap.ROLES);
    }

    /**
     * Prints a sheet with layers of one's own.
     *
     * @param sheet what to print; it has to pass the lint
     * @param hairline width of all lines, above 0
     * @param map names and colours of layers
     * @return the file's text, lines ending in {@code \n}, to be written as UTF-8
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static String print(Sheet sheet, double hairline, LayerMap map) {
        return print(SoundSheet.of(sheet), hairline, map);
    }

    /**
     * Prints a sheet that was looked through.
     *
     * @param sheet what to print
     * @param hairline width of all lines, above 0
     * @param map names and colours of layers
     * @return the file's text, lines ending in {@code \n}, to be written as UTF-8
     */
    public static String print(SoundSheet sheet, double hairline, LayerMap map) {
        if (!(hairline > 0 && hairline < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a line has a width above 0, not " + hairline);
        }
        SvgWriter writer = new SvgWriter(sheet.sheet(), map);
        writer.all(hairline);
        return writer.out.toString();
    }

    private void all(double hairline) {
        String width = number(sheet.size().width());
        String height = number(sheet.size().height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
                .append(width)
                .append("mm\" height=\"")
                .append(height)
                .append("mm\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\">\n");
        String title = sheet.heading().job() + ", " + sheet.heading().drawing() + ", rev "
                + sheet.heading().revision();
        out.append("<title>").append(XmlText.escaped(title)).append("</title>\n");
        for (Layer layer : map.layers(sheet)) {
            group(layer, hairline);
        }
        out.append("</svg>\n");
    }

    private void group(Layer layer, double hairline) {
        String name = map.of(layer.role()).layer();
        out.append("<g id=\"")
                .append(name)
                .append("\" fill=\"none\" stroke=\"")
                .append(map.of(layer.role()).svg())
                .append("\" stroke-width=\"")
                .append(number(hairline))
                .append("\">\n");
        int n = 0;
        for (Shape shape : layer.shapes()) {
            n++;
            shape(shape, name + "-" + n);
        }
        out.append("</g>\n");
    }

    private void shape(Shape shape, String id) {
        if (shape instanceof Circle circle) {
            out.append("<circle id=\"")
                    .append(id)
                    .append("\" cx=\"")
                    .append(number(circle.centre().x()))
                    .append("\" cy=\"")
                    .append(down(circle.centre().y()))
                    .append("\" r=\"")
                    .append(number(circle.radius()))
                    .append("\"/>\n");
        } else if (shape instanceof Line line) {
            out.append("<line id=\"")
                    .append(id)
                    .append("\" x1=\"")
                    .append(number(line.from().x()))
                    .append("\" y1=\"")
                    .append(down(line.from().y()))
                    .append("\" x2=\"")
                    .append(number(line.to().x()))
                    .append("\" y2=\"")
                    .append(down(line.to().y()))
                    .append("\"/>\n");
        } else {
            out.append("<path id=\"").append(id).append("\" d=\"");
            pathData(shape);
            out.append("\"/>\n");
        }
    }

    private void pathData(Shape shape) {
        if (shape instanceof Path path) {
            run(path);
        } else if (shape instanceof Arc arc) {
            move('M', arc.at(arc.start()));
            arc(arc, arc.at(arc.end()));
        } else if (shape instanceof Label label) {
            label.strokes().forEach(this::run);
        }
    }

    private void run(Path path) {
        move('M', path.from(0).point());
        for (int i = 0; i < path.pieceCount(); i++) {
            Vertex from = path.from(i);
            boolean last = path.closed() && i == path.pieceCount() - 1;
            if (from.bulge() != 0) {
                arc(Arc.between(from.point(), path.to(i), from.bulge()), path.to(i));
            } else if (!last) {
                move('L', path.to(i));
            }
        }
        if (path.closed()) {
            out.append('Z');
        }
    }

    private void arc(Arc arc, Point to) {
        boolean large = StrictMath.abs(arc.sweep()) > StrictMath.PI;
        // With y turned over, counter-clockwise on the sheet is what SVG calls a negative sweep.
        out.append('A')
                .append(number(arc.radius()))
                .append(' ')
                .append(number(arc.radius()))
                .append(" 0 ")
                .append(large ? 1 : 0)
                .append(' ')
                .append(arc.sweep() < 0 ? 1 : 0)
                .append(' ')
                .append(number(to.x()))
                .append(' ')
                .append(down(to.y()));
    }

    private void move(char letter, Point to) {
        out.append(letter).append(number(to.x())).append(' ').append(down(to.y()));
    }

    private String down(double y) {
        return number(sheet.size().height() - y);
    }

    private static String number(double value) {
        return Decimals.trimmed(value, DECIMALS);
    }
}
