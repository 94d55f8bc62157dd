package collarwright.picture;

import collarwright.units.Decimals;
import java.awt.geom.PathIterator;
import java.util.TreeSet;

/**
 * The letters of SVG pictures: each shape is written once and used wherever it is needed. Several pictures on one page may
 * share them.
 */
public final class SvgGlyphs {

    private final Lettering letters;
    private final TreeSet<Integer> used = new TreeSet<>();

    /**
     * Starts with no letters.
     *
     * @param letters the typeface
     */
    public SvgGlyphs(Lettering letters) {
        this.letters = letters;
    }

    Lettering letters() {
        return letters;
    }

    /** Writes a text as uses of the shapes. */
    String write(Written text) {
        double scale = text.size() / letters.unitsPerEm();
        StringBuilder svg = new StringBuilder("<g transform=\"translate(")
                .append(Decimals.trimmed(text.x(), 2))
                .append(' ')
                .append(Decimals.trimmed(text.baseline(), 2))
                .append(") scale(")
                .append(Decimals.trimmed(scale, 7))
                .append(' ')
                .append(Decimals.trimmed(-scale, 7))
                .append(")\" fill=\"")
                .append(text.ink().hex())
                .append('"');
        if (text.bold()) {
            svg.append(" stroke=\"")
                    .append(text.ink().hex())
                    .append("\" stroke-width=\"")
                    .append(Decimals.trimmed(Lettering.BOLD * letters.unitsPerEm(), 0))
                    .append('"');
        }
        svg.append('>');
        int pen = 0;
        for (int codePoint : text.text().codePoints().toArray()) {
            if (codePoint != ' ') {
                used.add(codePoint);
                svg.append("<use href=\"#").append(name(codePoint)).append('"');
                svg.append(pen == 0 ? "" : " x=\"" + pen + "\"").append("/>");
            }
            pen += letters.advanceUnits(codePoint);
        }
        return svg.append("</g>").toString();
    }

    private static String name(int codePoint) {
        return "glyph-" + Integer.toHexString(codePoint);
    }

    /**
     * Returns the shapes of all letters written so far.
     *
     * @return a {@code defs} element, for the picture itself or for any other SVG element of the same page
     */
    public String defs() {
        StringBuilder defs = new StringBuilder("<defs>");
        for (int codePoint : used) {
            defs.append("<path id=\"")
                    .append(name(codePoint))
                    .append("\" d=\"")
                    .append(path(codePoint))
                    .append("\"/>");
        }
        return defs.append("</defs>").toString();
    }

    private String path(int codePoint) {
        StringBuilder path = new StringBuilder();
        float[] at = new float[6];
        for (PathIterator i = letters.glyph(codePoint).getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            path.append("MLQCZ".charAt(kind));
            int numbers = kind == PathIterator.SEG_CLOSE ? 0 : kind == PathIterator.SEG_QUADTO ? 4 : 2;
            if (kind == PathIterator.SEG_CUBICTO) {
                numbers = 6;
            }
            for (int n = 0; n < numbers; n++) {
                path.append(n == 0 ? "" : " ").append(Decimals.trimmed(at[n], 1));
            }
        }
        return path.toString();
    }
}
