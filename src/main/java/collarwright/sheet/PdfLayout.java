package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import java.util.List;

/**
 * How one sheet goes onto pages.
 *
 * @param sheet what is printed
 * @param settings paper and printer; factors across and up the page as it lies
 * @param text the font
 * @param frame parts of every page
 * @param tiling which part of the sheet is on which page
 * @param info notes and table
 */
record PdfLayout(Sheet sheet, PdfSettings settings, PdfText text, PdfFrame frame, PageTiling tiling, PdfInfo info) {
    /** What is shown around the body, so that its edge is seen whole; register crosses stand in it. */
    static final double BLEED_X = 4;

    static final double BLEED_Y = 6;
    private static final double GAP = 3;

    static PdfLayout of(Sheet sheet, PdfSettings settings, PdfText text) {
        Box body = sheet.body();
        Box area =
                new Box(body.left() - BLEED_X, body.bottom() - BLEED_Y, body.right() + BLEED_X, body.top() + BLEED_Y);
        List<Box> holes =
                sheet.shapes(Role.CUT_INSIDE).stream().map(Shape::bounds).toList();
        PdfFrame lying = PdfFrame.of(true, settings.paper(), sheet.heading(), text);
        PdfFrame standing = PdfFrame.of(false, settings.paper(), sheet.heading(), text);
        PageTiling tiling = PageTiling.of(area, holes, lying.room(settings), standing.room(settings.standing()));
        PdfSettings asItLies = tiling.landscape() ? settings : settings.standing();
        PdfFrame frame = tiling.landscape() ? lying : standing;
        PdfInfo info = PdfInfo.of(sheet.heading(), text, frame.window().width(), tiling.count() > 1);
        return new PdfLayout(sheet, asItLies, text, frame, tiling, info);
    }

    Box paper() {
        return frame.paper();
    }

    /** Where the tile of a page lies on it, upper left in the window. */
    Box tileOnPage(int page) {
        Box window = frame.window();
        Box tile = tiling.tile(page);
        double width = tile.width() * settings.correctionX();
        double height = tile.height() * settings.correctionY();
        return new Box(window.left(), window.top() - height, window.left() + width, window.top());
    }

    /** Notes and table stand under the tile of every page if there is room, else on a page of their own. */
    boolean infoUnderTile() {
        return underTiles() - info.height() >= frame.window().bottom();
    }

    private double underTiles() {
        return frame.window().top() - tiling.tallest() * settings.correctionY() - GAP;
    }

    Box infoOnPage(boolean underTile) {
        Box window = frame.window();
        double top = underTile ? underTiles() : window.top();
        return new Box(window.left(), StrictMath.min(top, window.bottom()), window.right(), top);
    }

    int pageCount() {
        return tiling.count() + (infoUnderTile() ? 0 : 1);
    }

    /** What tells the file from every other: for its id. */
    String name() {
        return String.join(
                "|",
                List.of(
                        sheet.name(),
                        sheet.heading().job(),
                        sheet.heading().revision(),
                        settings.paper().title(),
                        Double.toString(settings.correctionX()),
                        Double.toString(settings.correctionY())));
    }
}
