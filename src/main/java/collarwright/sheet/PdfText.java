package collarwright.sheet;

import collarwright.drawing.LineBreaks;
import collarwright.units.PlainText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Text for people in a PDF: Liberation Sans, embedded, so that it looks the same everywhere and can be searched. It has
 * Latin, Greek, Cyrillic and Hebrew; other letters are said in Latin ones or shown as {@code ?}.
 */
final class PdfText {
    /** Least size for people's text on paper, points. */
    static final double LEAST_POINTS = 11;

    private static final double MM_PER_POINT = 25.4 / 72;

    private final PDType0Font font;
    private final CmapLookup letters;

    private PdfText(PDType0Font font, CmapLookup letters) {
        this.font = font;
        this.letters = letters;
    }

    /** Embeds the font in a document; only the letters that are used go into the file. */
    static PdfText in(PDDocument document) {
        TrueTypeFont ttf = Typeface.open();
        document.registerTrueTypeFontForClosing(ttf);
        try {
            return new PdfText(PDType0Font.load(document, ttf, true), ttf.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDFont font() {
        return font;
    }

    /** The text in letters that the font has, in one line. */
    String sayable(String text) {
        return PlainText.of(text, c -> letters.getGlyphId(c) > 0);
    }

    /** The width of a sayable text, mm. */
    double width(String text, double points) {
        try {
            return font.getStringWidth(text) / 1000 * points * MM_PER_POINT;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Breaks a text into lines, between words, within a word only if it alone is too long. */
    List<String> lines(String text, double points, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : LineBreaks.words(sayable(text))) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, points) <= room) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, points) > room && line.length() > 1) {
                int fits = fitting(line, points, room);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        lines.add(line);
        return lines.stream().map(PdfText::inWritingOrder).toList();
    }

    private int fitting(String word, double points, double room) {
        int fits = word.offsetByCodePoints(0, 1);
        while (fits < word.length() && width(word.substring(0, word.offsetByCodePoints(fits, 1)), points) <= room) {
            fits = word.offsetByCodePoints(fits, 1);
        }
        return fits;
    }

    // A PDF shows letters from left to right; Hebrew is turned round for it.
    static String inWritingOrder(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        Object[] characters = new Object[line.length()];
        byte[] levels = new byte[line.length()];
        for (int i = 0; i < line.length(); i++) {
            characters[i] = line.charAt(i);
            levels[i] = (byte) bidi.getLevelAt(i);
        }
        Bidi.reorderVisually(levels, 0, characters, 0, characters.length);
        StringBuilder out = new StringBuilder();
        for (Object character : characters) {
            out.append(character);
        }
        return out.toString();
    }
}
