package collarwright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * The one typeface of everything that people read, Liberation Sans, as the PDF library carries it, without the fonts of
 * the machine. It has Latin, Greek, Cyrillic and Hebrew letters.
 */
public final class Typeface {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private Typeface() {}

    /**
     * Opens the typeface; takes some milliseconds. It is without ligatures, whose widths no layout here knows; looking for
     * them takes most of the time of a page, too.
     *
     * @return a font of the caller's own, since a document that embeds one closes it
     */
    public static TrueTypeFont open() {
        try (InputStream file = PDFont.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IllegalStateException("the PDF library came without its typeface");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface cannot be read", e);
        }
    }
}
