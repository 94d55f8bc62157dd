package collarwright.paper;

import collarwright.job.LabelSheet;
import collarwright.kit.SiteLabel;
import collarwright.picture.Ink;
import collarwright.picture.Lettering;
import collarwright.picture.Written;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets the words of a label beside its QR code, as large as they go: letters of {@value #MOST} mm where they have room, and
 * never below {@value #LEAST} mm. Lengths from the label's top left corner, y down.
 */
final class LabelLayout {

    /** Size of letters where there is room, mm: 11.3 points. */
    static final double MOST = 4;

    /** The least size of letters, mm: 6 points. Our choice, no source. */
    static final double LEAST = 2.12;

    private static final double STEP = 0.02;
    private static final double LARGE = 1.25;
    private static final double LEADING = 1.15;

    /** Print keeps this far from the upper and lower edge. */
    private static final double ABOVE = 1.5;

    /** Many printers print nothing nearer to the paper's edge. Common practice, no source. */
    private static final double UNPRINTED = 5;

    /** A label is not made narrower than this for it. Our choice, no source. */
    private static final double ENOUGH = 60;

    /** The square of the code keeps this far from the label's edges; it is quiet itself. */
    private static final double EDGE = 1;

    /** The square takes no more of a label's width. Our choice, no source. */
    private static final double SHARE = 0.38;

    /** Of the square, what is empty on each side, about: four of some 37 modules. */
    private static final double QUIET = 0.1;

    private final Lettering letters;
    private final double width;
    private final double height;
    private final double left;
    private final double right;

    LabelLayout(Lettering letters, LabelSheet sheet) {
        this.letters = letters;
        this.width = sheet.width();
        this.height = sheet.height();
        double after = sheet.paper().shortSide() - sheet.left() - (sheet.columns() - 1) * sheet.pitchX() - width;
        double quiet = QUIET * StrictMath.min(height - 2 * EDGE, SHARE * width);
        double atLeft = StrictMath.max(0, UNPRINTED - sheet.left() - EDGE - quiet);
        double atRight = StrictMath.max(0, UNPRINTED - after - LabelSheet.PAD);
        double share = StrictMath.min(1, StrictMath.max(0, width - ENOUGH) / StrictMath.max(1e-9, atLeft + atRight));
        this.left = atLeft * share;
        this.right = atRight * share;
    }

    /** Side of the square for the QR code with its quiet zone. */
    double square() {
        return StrictMath.min(height - 2 * EDGE, SHARE * (width - left - right));
    }

    /** Left and top of that square. */
    double squareLeft() {
        return EDGE + left;
    }

    double squareTop() {
        return (height - square()) / 2;
    }

    /**
     * Sets the words.
     *
     * @param label what it says
     * @return every line with its place
     * @throws IllegalStateException if they do not fit at the least size; sheets whose labels are that small are refused
     *     when a job is read
     */
    List<Written> words(SiteLabel label) {
        int steps = (int) StrictMath.floor((MOST - LEAST) / STEP + 1e-9);
        for (int step = 0; step <= steps; step++) {
            List<Written> lines = set(label, MOST - step * STEP);
            Written last = lines.get(lines.size() - 1);
            double spare = height - ABOVE - last.baseline() - Lettering.DESCENT * last.size();
            if (spare >= 0) {
                return lines.stream().map(line -> lowered(line, spare / 2)).toList();
            }
        }
        throw new IllegalStateException("no room on a label of " + width + " × " + height + " mm for " + label);
    }

    private static Written lowered(Written line, double down) {
        return new Written(
                line.text(), line.x(), line.baseline() + down, line.width(), line.size(), line.ink(), line.bold());
    }

    private List<Written> set(SiteLabel label, double size) {
        double x = squareLeft() + square() + 0.5;
        double room = width - right - x - LabelSheet.PAD;
        List<Written> lines = new ArrayList<>();
        double y = ABOVE + LARGE * size * Lettering.CAPITAL;
        Wrapping large = new Wrapping(letters, LARGE * size);
        for (String line : large.lines(label.large(), room)) {
            lines.add(new Written(line, x, y, large.width(line), LARGE * size, Ink.INK, true));
            y += LARGE * size * LEADING;
        }
        Wrapping small = new Wrapping(letters, size);
        List<String> rest = new ArrayList<>(label.lines());
        rest.add(label.code());
        for (String text : rest) {
            for (String line : small.lines(text, room)) {
                lines.add(new Written(letters.visible(line), x, y, small.width(line), size, Ink.INK, false));
                y += size * LEADING;
            }
        }
        return lines;
    }
}
