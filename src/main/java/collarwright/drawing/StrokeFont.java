package collarwright.drawing;

import collarwright.units.PlainText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Lettering of single strokes, as a plotter, an engraver or a steady hand writes it. It has all printable ASCII and the
 * signs a drawing needs; a character it does not have is an error, never a gap.
 *
 * <p>Proportions: ISO 3098 type B, vertical (the alphabet itself is ours): small letters 0.7 of the height, tails 0.3,
 * letters 0.2 and words 0.6 apart.
 */
public final class StrokeFont {
    // Everything in the table is in tenths of the height.
    private static final double GRID = 10;
    private static final double BETWEEN = 2;
    private static final double SPACE = 2;
    private static final int BLANK = ' ';
    private static final Map<Integer, Glyph> GLYPHS = parse(Glyphs.table());

    private StrokeFont() {}

    private record Glyph(double width, List<Path> strokes) {}

    /**
     * Returns every character that it can draw.
     *
     * @return the space, then the others in the order of their code points
     */
    public static String characters() {
        StringBuilder all = new StringBuilder(" ");
        GLYPHS.keySet().stream().sorted().forEach(all::appendCodePoint);
        return all.toString();
    }

    /**
     * Says a text in the letters of this font.
     *
     * @param text any text
     * @return one line that the font can draw
     */
    public static String say(String text) {
        return PlainText.of(text, StrokeFont::covers);
    }

    /**
     * Tells whether a character can be drawn.
     *
     * @param codePoint the character
     * @return true for the space and every character of the alphabet
     */
    public static boolean covers(int codePoint) {
        return codePoint == BLANK || GLYPHS.containsKey(codePoint);
    }

    /**
     * Measures a line of text.
     *
     * @param text one line
     * @param height of a capital letter
     * @return from the left edge of the first to the right edge of the last character
     * @throws IllegalArgumentException if a character is not in the alphabet
     */
    public static double width(String text, double height) {
        require(text);
        double width = text.codePoints().mapToDouble(c -> advance(c)).sum() - BETWEEN;
        return StrictMath.max(0, width) * height / GRID;
    }

    /**
     * Draws a label.
     *
     * @param label what, where and how high
     * @return its strokes in the order of writing, on the sheet
     */
    public static List<Path> strokes(Label label) {
        Placing placing = Placing.of(label);
        List<Path> strokes = new ArrayList<>();
        double pen = 0;
        for (int c : label.text().codePoints().toArray()) {
            Glyph glyph = GLYPHS.get(c);
            if (glyph != null) {
                for (Path stroke : glyph.strokes()) {
                    strokes.add(placing.put(stroke, pen));
                }
            }
            pen += advance(c);
        }
        return List.copyOf(strokes);
    }

    /**
     * Checks that a text can be drawn.
     *
     * @param text one line
     * @throws IllegalArgumentException naming the first character that is not in the alphabet
     */
    static void require(String text) {
        text.codePoints().filter(c -> !covers(c)).findFirst().ifPresent(c -> {
            throw new IllegalArgumentException(
                    "no strokes for U+" + Integer.toHexString(c).toUpperCase(Locale.ROOT) + " in \"" + text + "\"");
        });
    }

    private static double advance(int codePoint) {
        Glyph glyph = GLYPHS.get(codePoint);
        return (glyph == null ? SPACE : glyph.width()) + BETWEEN;
    }

    /** Turns, scales and moves strokes from the grid of the alphabet to the sheet. */
    private record Placing(Point at, double scale, double cos, double sin) {
        static Placing of(Label label) {
            double cos = StrictMath.cos(label.angle());
            double sin = StrictMath.sin(label.angle());
            return new Placing(label.at(), label.height() / GRID, cos, sin);
        }

        Path put(Path stroke, double pen) {
            List<Vertex> vertices = new ArrayList<>();
            for (Vertex v : stroke.vertices()) {
                double x = (v.point().x() + pen) * scale;
                double y = v.point().y() * scale;
                Point p = new Point(at.x() + x * cos - y * sin, at.y() + x * sin + y * cos);
                vertices.add(new Vertex(p, v.bulge()));
            }
            return new Path(vertices, stroke.closed());
        }
    }

    private static Map<Integer, Glyph> parse(String table) {
        Map<Integer, Glyph> glyphs = new LinkedHashMap<>();
        for (String line : table.split("\n")) {
            String[] parts = line.split(" ", 3);
            glyphs.put(parts[0].codePointAt(0), new Glyph(Double.parseDouble(parts[1]), parseStrokes(parts[2])));
        }
        return Map.copyOf(glyphs);
    }

    private static List<Path> parseStrokes(String text) {
        List<Path> strokes = new ArrayList<>();
        for (String stroke : text.split(" ; ")) {
            strokes.add(parseStroke(stroke));
        }
        return List.copyOf(strokes);
    }

    private static Path parseStroke(String text) {
        List<Vertex> vertices = new ArrayList<>();
        for (String token : text.split(" ")) {
            int comma = token.indexOf(',');
            if (comma > 0) {
                double x = Double.parseDouble(token.substring(0, comma));
                double y = Double.parseDouble(token.substring(comma + 1));
                vertices.add(new Vertex(new Point(x, y), 0));
            } else {
                Vertex last = vertices.remove(vertices.size() - 1);
                vertices.add(new Vertex(last.point(), bulge(token)));
            }
        }
        Vertex last = vertices.get(vertices.size() - 1);
        boolean closed =
                vertices.size() > 2 && last.point().equals(vertices.get(0).point());
        return new Path(closed ? vertices.subList(0, vertices.size() - 1) : vertices, closed);
    }

    private static double bulge(String token) {
        double quarter = StrictMath.tan(StrictMath.PI / 8);
        return switch (token) {
            case "(" -> quarter;
            case ")" -> -quarter;
            case "((" -> 1;
            case "))" -> -1;
            default -> Double.parseDouble(token.substring(1, token.length() - 1));
        };
    }
}
