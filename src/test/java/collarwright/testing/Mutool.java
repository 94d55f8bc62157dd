package collarwright.testing;

import java.nio.file.Path;
import java.util.List;

/** The drawing commands of a PDF page by mutool: exact places, which no picture of the page could give. */
public final class Mutool {
    private Mutool() {}

    /**
     * A straight stroke, mm from the page's top left corner, y down.
     *
     * @param x0 start
     * @param y0 start
     * @param x1 end
     * @param y1 end
     */
    public record Stroke(double x0, double y0, double x1, double y1) {
        /** Its length. */
        public double length() {
            return Math.hypot(x1 - x0, y1 - y0);
        }
    }

    /**
     * A line of text as set on the page.
     *
     * @param text its characters
     * @param box mm from the page's top left corner, y down
     * @param sizePoints the smallest font size in it
     */
    public record Line(String text, Box box, double sizePoints) {}

    /** Every straight piece of every stroked path on a page (from 1), in order of painting. */
    public static List<Stroke> strokes(Path file, int page) {
        return MutoolTrace.strokes(Run.of(List.of("mutool", "trace", file.toString(), page + ""))
                .orFail()
                .out());
    }

    /** Every line of text on a page (from 1); text drawn as outlines is not among them. */
    public static List<Line> lines(Path file, int page) {
        return MutoolText.lines(draw(file, page, "stext"));
    }

    /**
     * An outer bound of all marks on a page (from 1), mm, y down: nothing is painted beyond it. Mutool counts every
     * stroke with the longest mitre that its limit allows, 10 line widths by default, so it may reach too far by that.
     */
    public static Box ink(Path file, int page) {
        return MutoolText.ink(draw(file, page, "bbox"));
    }

    private static String draw(Path file, int page, String form) {
        return Run.of(List.of("mutool", "draw", "-q", "-F", form, "-o", "-", file.toString(), page + ""))
                .orFail()
                .out();
    }

    /** Renders a page (from 1) as a PNG picture. */
    public static void render(Path file, int page, int dotsPerInch, Path picture) {
        Run.of(List.of(
                        "mutool",
                        "draw",
                        "-q",
                        "-r",
                        dotsPerInch + "",
                        "-o",
                        picture.toString(),
                        file.toString(),
                        page + ""))
                .orFail();
    }
}
