package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import collarwright.drawing.Label;
import collarwright.drawing.Layer;
import collarwright.drawing.Role;
import collarwright.drawing.ScaleBars;
import collarwright.drawing.Shape;
import collarwright.units.Decimals;
import java.io.IOException;

/**
 * Draws one page.
 *
 * @param layout of all pages
 * @param pen on the page, unscaled
 * @param number of the page, from 0
 */
record PdfPage(PdfLayout layout, PdfPen pen, int number) {
    private static final double POINTS = PdfText.LEAST_POINTS;
    private static final double CUT = 0.3;
    private static final double MARK = 0.2;
    private static final double THIN = 0.15;
    private static final double STROKE_OF_LETTERS = 0.08;
    private static final double TICK = 1.5;
    private static final double CROSS = 2;
    private static final double MAP_X = 7;
    private static final double MAP_Y = 4;

    void draw() throws IOException {
        pen.round();
        heading();
        bars();
        boolean tile = number < layout.tiling().count();
        if (tile) {
            tile();
        }
        if (!tile || layout.infoUnderTile()) {
            layout.info().draw(pen, layout.infoOnPage(tile));
        }
    }

    private void heading() throws IOException {
        Heading heading = layout.sheet().heading();
        PdfFrame frame = layout.frame();
        double left = PdfWriter.MARGIN;
        double y = frame.paper().top() - PdfWriter.MARGIN + 1;
        for (String line : frame.title()) {
            y -= PdfFrame.TITLE_PITCH;
            pen.write(line, PdfFrame.TITLE_POINTS, left, y);
        }
        String paper = layout.settings().paper().title() + (layout.tiling().landscape() ? " landscape" : " portrait");
        String subject = heading.drawing() + ", rev " + heading.revision() + ", " + paper + correction();
        pen.write(sayable(subject), POINTS, left, y - PdfFrame.PITCH);
        double right = frame.paper().right() - PdfWriter.MARGIN;
        double top = frame.paper().top() - PdfWriter.MARGIN + 1 - PdfFrame.TITLE_PITCH;
        pen.writeRight(pageNote(), POINTS, right, top);
        map(right, top - 2);
    }

    private String correction() {
        PdfSettings settings = layout.settings();
        return settings.corrects()
                ? ", printer correction x " + Decimals.trimmed(settings.correctionX(), 5) + ", y "
                        + Decimals.trimmed(settings.correctionY(), 5)
                : "";
    }

    private String pageNote() {
        PageTiling tiling = layout.tiling();
        String order = tiling.count() == 1 ? "" : tiling.rows() == 1 ? ", left to right" : ", left to right, then down";
        return "page " + (number + 1) + " of " + layout.pageCount() + order;
    }

    private String sayable(String text) {
        return PdfText.inWritingOrder(layout.text().sayable(text));
    }

    // Little pages in their order, this one filled.
    private void map(double right, double top) throws IOException {
        PageTiling tiling = layout.tiling();
        if (tiling.count() == 1) {
            return;
        }
        pen.width(THIN);
        for (int page = 0; page < tiling.count(); page++) {
            double x = right - (tiling.columns() - page % tiling.columns()) * MAP_X;
            double y = top - (1 + page / tiling.columns()) * MAP_Y;
            pen.rectangle(new Box(x, y, x + MAP_X - 1, y + MAP_Y - 1), page == number);
        }
    }

    private void bars() throws IOException {
        double x = layout.settings().correctionX();
        double y = layout.settings().correctionY();
        double edge = PdfWriter.MARGIN + TICK;
        double start = PdfWriter.MARGIN + PdfFrame.BARS;
        double second = edge + 6.5;
        PdfPen across = pen.at(start, 0, x, 1);
        PdfPen up = pen.at(0, start + 1, 1, y);
        // The letters hang below the bars' ends by as much.
        lying(across, edge + 1, ScaleBars.METRIC, 10, "100 mm");
        lying(across, second + 1, ScaleBars.INCH, 4, "4 in");
        standing(up, edge + 0.3, ScaleBars.METRIC, 10, "100 mm");
        standing(up, second + 0.3, ScaleBars.INCH, 4, "4 in");
        double after = start + ScaleBars.INCH * x + 22;
        double room = layout.frame().window().right() - after;
        double line = second - TICK;
        for (String text : layout.text().lines(ScaleBars.ADVICE, POINTS, room)) {
            pen.write(text, POINTS, after, line);
            line -= PdfFrame.PITCH;
        }
    }

    private void lying(PdfPen across, double y, double length, int steps, String text) throws IOException {
        across.width(MARK);
        across.line(0, y, length, y);
        for (int i = 0; i <= steps; i++) {
            double half = i == 0 || i == steps ? TICK : TICK / 2;
            across.line(length * i / steps, y - half, length * i / steps, y + half);
        }
        across.write(text, POINTS, length + 2, y - 1.4);
    }

    private void standing(PdfPen up, double x, double length, int steps, String text) throws IOException {
        up.width(MARK);
        up.line(x, 0, x, length);
        for (int i = 0; i <= steps; i++) {
            double half = i == 0 || i == steps ? TICK : TICK / 2;
            up.line(x - half, length * i / steps, x + half, length * i / steps);
        }
        up.writeUp(text, POINTS, x + 1.4, length + 2);
    }

    private void tile() throws IOException {
        PdfSettings settings = layout.settings();
        Box tile = layout.tiling().tile(number);
        Box place = layout.tileOnPage(number);
        PdfPen sheet = pen.at(
                place.left() - tile.left() * settings.correctionX(),
                place.bottom() - tile.bottom() * settings.correctionY(),
                settings.correctionX(),
                settings.correctionY());
        pen.page().saveGraphicsState();
        sheet.clip(tile);
        for (Layer layer : layout.sheet().layers()) {
            for (Shape shape : layer.shapes()) {
                Box bounds = shape.bounds();
                if (layout.sheet().body().grown(1e-6).holds(bounds) && tile.meets(bounds)) {
                    sheet.width(width(layer.role(), shape));
                    sheet.draw(shape);
                }
            }
        }
        for (PageTiling.Cross cross : layout.tiling().crosses(PdfLayout.BLEED_X / 2, PdfLayout.BLEED_Y / 2)) {
            cross(sheet, cross);
        }
        pen.page().restoreGraphicsState();
    }

    private static double width(Role role, Shape shape) {
        if (shape instanceof Label label) {
            return StrictMath.max(MARK, STROKE_OF_LETTERS * label.height());
        }
        return role.isCut() ? CUT : MARK;
    }

    private void cross(PdfPen sheet, PageTiling.Cross cross) throws IOException {
        double x = cross.at().x();
        double y = cross.at().y();
        sheet.width(THIN);
        sheet.line(x - CROSS, y, x + CROSS, y);
        sheet.line(x, y - CROSS, x, y + CROSS);
        sheet.write(cross.letter(), POINTS, x + CROSS + 0.3, y - 1.4);
    }
}
