package collarwright.testing;

import collarwright.testing.Mutool.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads what {@code mutool draw} lists of a page: its lines of text, and the rectangle of its ink. */
final class MutoolText {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Line> lines = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private Box box = new Box(0, 0, 0, 0);
    private double size;

    private MutoolText() {}

    static List<Line> lines(String listing) {
        MutoolText reading = new MutoolText();
        XmlReading.walk(listing, reading::open, reading::close);
        return List.copyOf(reading.lines);
    }

    static Box ink(String listing) {
        List<Box> found = new ArrayList<>();
        XmlReading.walk(
                listing,
                (name, words) -> {
                    if (name.equals("page")) {
                        found.add(boxOf(words.get("bbox")));
                    }
                },
                name -> {});
        return found.get(0);
    }

    private void open(String name, Map<String, String> words) {
        switch (name) {
            case "line" -> {
                text.setLength(0);
                size = Double.POSITIVE_INFINITY;
                box = boxOf(words.get("bbox"));
            }
            case "font" -> size = Math.min(size, Double.parseDouble(words.get("size")));
            case "char" -> text.append(words.get("c"));
            default -> {
                // Pages and blocks carry nothing that the lines don't.
            }
        }
    }

    private void close(String name) {
        if (name.equals("line")) {
            lines.add(new Line(text.toString(), box, size));
        }
    }

    private static Box boxOf(String corners) {
        double[] at = XmlReading.numbers(corners);
        return new Box(
                at[0] * MM_PER_POINT,
                at[1] * MM_PER_POINT,
                (at[2] - at[0]) * MM_PER_POINT,
                (at[3] - at[1]) * MM_PER_POINT);
    }
}
