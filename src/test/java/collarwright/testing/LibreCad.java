package collarwright.testing;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A third reader of DXF, LibreCAD: it plots a drawing at a tenth of its size on A4, and mutool tells what is on the plot. What
 * lies outside the paper it leaves out.
 */
public final class LibreCad {
    private static final double MM_PER_POINT = 25.4 / 72;
    /** Its plotter steps by 1/1200 in, 0.21 mm of the drawing: what is measured is off by up to so much. */
    public static final double STEP = 0.22;

    private static final double TENTH = 10;
    private static final int PIECES = 64;
    private static final int QUARTERS = 4;
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final List<double[]> points = new ArrayList<>();
    private int lines;
    private int circles;
    private int straight;
    private int bent;
    private boolean stroked;
    private double[] matrix = {1, 0, 0, 1, 0, 0};
    private double[] here = {0, 0};

    private LibreCad() {}

    /**
     * What it drew.
     *
     * @param width of all lines, mm
     * @param height of all lines, mm
     * @param lines how many straight lines, those of polylines too
     * @param circles how many whole circles; it leaves out arcs that are too small to see
     */
    public record Reading(double width, double height, int lines, int circles) {}

    /**
     * Plots a file.
     *
     * @param dxf the drawing
     * @param folder takes the plot
     */
    public static Reading read(Path dxf, Path folder) {
        Run.of(
                        List.of("librecad", "dxf2pdf", "-s", "0.1", "-c", "-t", folder.toString(), dxf.toString()),
                        Map.of("QT_QPA_PLATFORM", "offscreen"),
                        PATIENCE)
                .orFail();
        String name = String.valueOf(dxf.getFileName()).replaceAll("\\.dxf$", ".pdf");
        LibreCad plot = new LibreCad();
        String listing = Run.of(List.of("mutool", "trace", folder.resolve(name).toString(), "1"))
                .orFail()
                .out();
        XmlReading.walk(listing, plot::open, plot::close);
        return plot.reading();
    }

    private Reading reading() {
        return new Reading(span(0), span(1), lines, circles);
    }

    private double span(int axis) {
        double least = points.stream().mapToDouble(p -> p[axis]).min().orElseThrow();
        double most = points.stream().mapToDouble(p -> p[axis]).max().orElseThrow();
        return (most - least) * TENTH * MM_PER_POINT;
    }

    private void open(String name, Map<String, String> words) {
        switch (name) {
            case "stroke_path" -> {
                stroked = true;
                straight = 0;
                bent = 0;
                matrix = XmlReading.numbers(words.get("transform"));
            }
            case "moveto" -> here = add(at(words, ""));
            case "lineto" -> {
                straight++;
                here = add(at(words, ""));
            }
            case "curveto" -> curve(at(words, "1"), at(words, "2"), at(words, "3"));
            default -> {
                // Clips and fills draw no lines.
            }
        }
    }

    private void close(String name) {
        if (name.equals("stroke_path")) {
            stroked = false;
            lines += straight == 1 && bent == 0 ? 1 : 0;
            circles += bent == QUARTERS ? 1 : 0;
        }
    }

    private double[] add(double[] point) {
        if (stroked) {
            points.add(point);
        }
        return point;
    }

    // A cubic of Bézier, walked along.
    private void curve(double[] b, double[] c, double[] d) {
        bent++;
        double[] a = here;
        for (int i = 1; i <= PIECES; i++) {
            double t = (double) i / PIECES;
            double s = 1 - t;
            double[] p = new double[2];
            for (int k = 0; k < 2; k++) {
                p[k] = s * s * s * a[k] + 3 * s * s * t * b[k] + 3 * s * t * t * c[k] + t * t * t * d[k];
            }
            here = add(p);
        }
    }

    private double[] at(Map<String, String> words, String which) {
        double x = Double.parseDouble(words.get("x" + which));
        double y = Double.parseDouble(words.get("y" + which));
        return new double[] {matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5]};
    }
}
