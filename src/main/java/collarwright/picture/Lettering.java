package collarwright.picture;

import collarwright.sheet.Typeface;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * The letters of all pictures and papers: widths and outlines of the one {@link Typeface}; a letter it lacks is shown as
 * an open box.
 *
 * <p>Not safe for several threads at once; loading takes some milliseconds.
 */
public final class Lettering {

    /** Height of capitals, in parts of the size: the typeface's own figure, 1409 of 2048. */
    public static final double CAPITAL = 1409.0 / 2048;

    /** How far letters reach below the line they stand on, in parts of the size. */
    public static final double DESCENT = 434.0 / 2048;

    /** Width of the outline that makes letters bold, in parts of the size. */
    public static final double BOLD = 1.0 / 32;

    private static final int MISSING = 0x25A1;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;
    private final Map<Integer, GeneralPath> outlines = new HashMap<>();

    private Lettering(TrueTypeFont font) throws IOException {
        this.font = font;
        this.glyphs = font.getUnicodeCmapLookup();
        this.unitsPerEm = font.getUnitsPerEm();
    }

    /**
     * Loads the typeface.
     *
     * @return the letters
     */
    public static Lettering load() {
        try {
            return new Lettering(Typeface.open());
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface cannot be read", e);
        }
    }

    /**
     * Tells whether the typeface has every letter of a text.
     *
     * @param text any text
     * @return false if an open box would have to stand for a letter
     */
    public boolean shows(String text) {
        return text.codePoints().allMatch(c -> invisible(c) || glyphs.getGlyphId(c) > 0);
    }

    /**
     * Makes a text ready to be shown from left to right: letters from right to left are put in the order in which they
     * stand on paper, letters that the typeface lacks become open boxes, and marks without a shape are left out.
     *
     * @param text any text
     * @return a text of which every character has a shape
     */
    public String visible(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        inOrder(text).codePoints().filter(c -> !invisible(c)).forEach(c -> {
            int space = Character.isWhitespace(c) ? ' ' : c;
            shown.appendCodePoint(glyphs.getGlyphId(space) > 0 ? space : MISSING);
        });
        return shown.toString();
    }

    private static boolean invisible(int codePoint) {
        int type = Character.getType(codePoint);
        return !Character.isWhitespace(codePoint) && (type == Character.CONTROL || type == Character.FORMAT);
    }

    private static String inOrder(String text) {
        char[] chars = text.toCharArray();
        if (!Bidi.requiresBidi(chars, 0, chars.length)) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] parts = new String[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String part = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            parts[i] = levels[i] % 2 == 0 ? part : turned(part);
        }
        Bidi.reorderVisually(levels, 0, parts, 0, runs);
        return String.join("", parts);
    }

    private static String turned(String part) {
        StringBuilder mirrored = new StringBuilder();
        part.codePoints().map(Lettering::mirror).forEach(mirrored::appendCodePoint);
        return mirrored.reverse().toString();
    }

    private static int mirror(int codePoint) {
        return switch (codePoint) {
            case '(' -> ')';
            case ')' -> '(';
            case '[' -> ']';
            case ']' -> '[';
            case '<' -> '>';
            case '>' -> '<';
            default -> codePoint;
        };
    }

    /**
     * Measures a text.
     *
     * @param text a text that is ready to be shown
     * @param size size of the letters
     * @return its width, in the unit of the size
     */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(this::advance).sum() * size;
    }

    private double advance(int codePoint) {
        return advanceUnits(codePoint) / unitsPerEm;
    }

    double unitsPerEm() {
        return unitsPerEm;
    }

    int advanceUnits(int codePoint) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(codePoint));
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface cannot be read", e);
        }
    }

    /**
     * Draws a text as outlines.
     *
     * @param text a text that is ready to be shown
     * @param x where it starts
     * @param baseline y of the line that it stands on, y down
     * @param size size of the letters
     * @return the outlines, to be filled
     */
    public Path2D outline(String text, double x, double baseline, double size) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double scale = size / unitsPerEm;
        double pen = x;
        for (int codePoint : text.codePoints().toArray()) {
            path.append(
                    glyph(codePoint).getPathIterator(new AffineTransform(scale, 0, 0, -scale, pen, baseline)), false);
            pen += advance(codePoint) * size;
        }
        return path;
    }

    GeneralPath glyph(int codePoint) {
        return outlines.computeIfAbsent(codePoint, c -> {
            try {
                var glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(c));
                return glyph == null ? new GeneralPath() : glyph.getPath();
            } catch (IOException e) {
                throw new UncheckedIOException("the typeface cannot be read", e);
            }
        });
    }
}
