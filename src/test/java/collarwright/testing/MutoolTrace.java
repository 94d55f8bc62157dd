package collarwright.testing;

import collarwright.testing.Mutool.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the listing of {@code mutool trace}: stroked paths, each with the matrix that takes it to points on the page. */
final class MutoolTrace {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Stroke> strokes = new ArrayList<>();
    private boolean stroked;
    private double[] matrix = {1, 0, 0, 1, 0, 0};
    private double[] start = {0, 0};
    private double[] here = {0, 0};

    private MutoolTrace() {}

    static List<Stroke> strokes(String listing) {
        MutoolTrace trace = new MutoolTrace();
        XmlReading.walk(listing, trace::open, trace::close);
        return List.copyOf(trace.strokes);
    }

    private void open(String name, Map<String, String> words) {
        switch (name) {
            case "stroke_path" -> {
                stroked = true;
                matrix = XmlReading.numbers(words.get("transform"));
            }
            case "moveto" -> {
                here = onPage(words.get("x"), words.get("y"));
                start = here;
            }
            case "lineto" -> lineTo(onPage(words.get("x"), words.get("y")));
            case "closepath" -> lineTo(start);
            case "curveto" -> here = onPage(words.get("x3"), words.get("y3"));
            default -> {
                // Fills, clips and text have no straight strokes.
            }
        }
    }

    private void close(String name) {
        if (name.equals("stroke_path")) {
            stroked = false;
        }
    }

    private void lineTo(double[] there) {
        if (stroked && (here[0] != there[0] || here[1] != there[1])) {
            strokes.add(new Stroke(here[0], here[1], there[0], there[1]));
        }
        here = there;
    }

    private double[] onPage(String textX, String textY) {
        double x = Double.parseDouble(textX);
        double y = Double.parseDouble(textY);
        return new double[] {
            (matrix[0] * x + matrix[2] * y + matrix[4]) * MM_PER_POINT,
            (matrix[1] * x + matrix[3] * y + matrix[5]) * MM_PER_POINT
        };
    }
}
