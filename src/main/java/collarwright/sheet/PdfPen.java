package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Draws on a page, millimetres in, points out. The numbers in the file are points themselves: a scale in the page's
 * matrix would be rounded by its reader.
 *
 * @param page where it draws
 * @param text the font
 * @param originX place of x = 0 on the page, mm from its left edge
 * @param originY place of y = 0 on the page, mm from its lower edge
 * @param scaleX printed millimetres for one millimetre across
 * @param scaleY printed millimetres for one millimetre up
 */
record PdfPen(PDPageContentStream page, PdfText text, double originX, double originY, double scaleX, double scaleY) {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double SMALL_RADIUS = 3.5;
    private static final double MOST_BEZIER = StrictMath.PI / 4;

    static PdfPen plain(PDPageContentStream page, PdfText text) {
        return new PdfPen(page, text, 0, 0, 1, 1);
    }

    PdfPen at(double x, double y, double scaleAcross, double scaleUp) {
        return new PdfPen(page, text, x, y, scaleAcross, scaleUp);
    }

    private float x(double x) {
        return (float) ((originX + x * scaleX) * POINTS_PER_MM);
    }

    private float y(double y) {
        return (float) ((originY + y * scaleY) * POINTS_PER_MM);
    }

    /** Rounds the ends and corners of all lines to come: better letters, and no corner that sticks out. */
    void round() throws IOException {
        page.setLineCapStyle(1);
        page.setLineJoinStyle(1);
    }

    void width(double lineWidth) throws IOException {
        page.setLineWidth((float) (lineWidth * POINTS_PER_MM));
    }

    void line(double x1, double y1, double x2, double y2) throws IOException {
        page.moveTo(x(x1), y(y1));
        page.lineTo(x(x2), y(y2));
        page.stroke();
    }

    void rectangle(Box box, boolean filled) throws IOException {
        outline(box);
        if (filled) {
            page.fill();
        } else {
            page.stroke();
        }
    }

    /** Draws only inside a box until the page's state is restored. */
    void clip(Box box) throws IOException {
        outline(box);
        page.clip();
    }

    private void outline(Box box) throws IOException {
        page.moveTo(x(box.left()), y(box.bottom()));
        page.lineTo(x(box.right()), y(box.bottom()));
        page.lineTo(x(box.right()), y(box.top()));
        page.lineTo(x(box.left()), y(box.top()));
        page.closePath();
    }

    /** Writes a sayable text by the left end of its base line. */
    void write(String line, double points, double x, double y) throws IOException {
        page.beginText();
        page.setFont(text.font(), (float) points);
        page.newLineAtOffset(x(x), y(y));
        page.showText(line);
        page.endText();
    }

    /** Writes a sayable text upward. */
    void writeUp(String line, double points, double x, double y) throws IOException {
        page.beginText();
        page.setFont(text.font(), (float) points);
        page.setTextMatrix(new Matrix(0, 1, -1, 0, x(x), y(y)));
        page.showText(line);
        page.endText();
    }

    /** Writes a sayable text by the right end of its base line. */
    void writeRight(String line, double points, double x, double y) throws IOException {
        write(line, points, x - text.width(line, points), y);
    }

    void draw(Shape shape) throws IOException {
        if (shape instanceof Line line) {
            line(line.from().x(), line.from().y(), line.to().x(), line.to().y());
        } else if (shape instanceof Circle circle) {
            Arc half = new Arc(circle.centre(), circle.radius(), 0, StrictMath.PI);
            start(half);
            curve(half);
            curve(new Arc(circle.centre(), circle.radius(), StrictMath.PI, StrictMath.PI));
            page.closePath();
            page.stroke();
        } else if (shape instanceof Arc arc) {
            start(arc);
            curve(arc);
            page.stroke();
        } else if (shape instanceof Path path) {
            draw(path);
        } else if (shape instanceof Label label) {
            for (Path stroke : label.strokes()) {
                draw(stroke);
            }
        }
    }

    private void draw(Path path) throws IOException {
        Point first = path.from(0).point();
        page.moveTo(x(first.x()), y(first.y()));
        for (Shape piece : path.pieces()) {
            if (piece instanceof Arc arc) {
                curve(arc);
            } else {
                Point to = ((Line) piece).to();
                page.lineTo(x(to.x()), y(to.y()));
            }
        }
        if (path.closed()) {
            page.closePath();
        }
        page.stroke();
    }

    private void start(Arc arc) throws IOException {
        Point from = arc.at(arc.start());
        page.moveTo(x(from.x()), y(from.y()));
    }

    // A PDF has no arcs. In pieces of 45° or less a cubic curve strays by less than 5e-6 of the radius. In pieces of
    // 90° it strays by less than 3e-4: 0.001 mm in letters and pilot circles, and the file is a fifth shorter.
    private void curve(Arc arc) throws IOException {
        double most = arc.radius() <= SMALL_RADIUS ? 2 * MOST_BEZIER : MOST_BEZIER;
        int pieces = (int) StrictMath.ceil(StrictMath.abs(arc.sweep()) / most - 1e-9);
        double step = arc.sweep() / pieces;
        double handle = arc.radius() * 4 / 3 * StrictMath.tan(step / 4);
        for (int i = 0; i < pieces; i++) {
            double a = arc.start() + i * step;
            double b = a + step;
            Point from = arc.at(a);
            Point to = arc.at(b);
            page.curveTo(
                    x(from.x() - handle * StrictMath.sin(a)),
                    y(from.y() + handle * StrictMath.cos(a)),
                    x(to.x() + handle * StrictMath.sin(b)),
                    y(to.y() - handle * StrictMath.cos(b)),
                    x(to.x()),
                    y(to.y()));
        }
    }
}
