package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import collarwright.units.Paper;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the parts of a page lie, mm from its lower left corner: heading above, standing bars on the left, lying bars
 * below, and the window for the drawing between them.
 *
 * @param paper the whole page
 * @param title the job's title in lines
 * @param window where the drawing goes
 */
record PdfFrame(Box paper, List<String> title, Box window) {
    static final double TITLE_POINTS = 13;
    static final double TITLE_PITCH = 6;
    static final double PITCH = 5.2;

    /** Room on the left for two standing bars, and below for two lying ones. */
    static final double BARS = 14;

    /** Room at the right of the heading for the page number and the map of pages. */
    static final double PAGE_NOTE = 66;

    private static final double GAP = 2;
    private static final int MOST_TITLE_LINES = 4;

    static PdfFrame of(boolean landscape, Paper paper, Heading heading, PdfText text) {
        double width = landscape ? paper.longSide() : paper.shortSide();
        double height = landscape ? paper.shortSide() : paper.longSide();
        double margin = PdfWriter.MARGIN;
        List<String> title = shortened(text.lines(heading.job(), TITLE_POINTS, width - 2 * margin - PAGE_NOTE));
        double head = title.size() * TITLE_PITCH + PITCH + GAP;
        Box window = new Box(margin + BARS, margin + BARS, width - margin, height - margin - head);
        return new PdfFrame(new Box(0, 0, width, height), title, window);
    }

    // A title that fills a page would leave no room for the drawing.
    private static List<String> shortened(List<String> lines) {
        if (lines.size() <= MOST_TITLE_LINES) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, MOST_TITLE_LINES - 1));
        shown.add(lines.get(MOST_TITLE_LINES - 1).replaceAll("...$", "") + "...");
        return List.copyOf(shown);
    }

    PageTiling.Room room(PdfSettings settings) {
        return new PageTiling.Room(window.width() / settings.correctionX(), window.height() / settings.correctionY());
    }
}
