package collarwright.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What can be read in a PDF file: its text, and where every letter stands. */
final class PdfText {

    private PdfText() {}

    /**
     * A letter on a page, in points from its top left corner.
     *
     * @param text the letter
     * @param x left
     * @param baseline y of the line that it stands on, y down
     * @param width to the right
     * @param points size of the letters
     */
    record Letter(String text, double x, double baseline, double width, double points) {

        private boolean touches(Letter other) {
            // Browsers move some pairs of letters together, such as P and A.
            double gap = 0.12 * points;
            return x + gap < other.x + other.width
                    && other.x + gap < x + width
                    && baseline - 0.69 * points < other.baseline + 0.1 * other.points
                    && other.baseline - 0.69 * other.points < baseline + 0.1 * points;
        }
    }

    /** The text of each page. */
    static List<String> pages(byte[] file) {
        return each(file, page -> {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(page.number());
            stripper.setEndPage(page.number());
            return stripper.getText(page.document());
        });
    }

    /** The letters of each page, blanks left out. */
    static List<List<Letter>> letters(byte[] file) {
        return each(file, page -> {
            List<Letter> letters = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition at) {
                    if (!at.getUnicode().isBlank()) {
                        letters.add(new Letter(at.getUnicode(), at.getX(), at.getY(), at.getWidth(), at.getYScale()));
                    }
                }
            };
            stripper.setStartPage(page.number());
            stripper.setEndPage(page.number());
            stripper.getText(page.document());
            return letters;
        });
    }

    /** Pairs of letters that run into each other. */
    static List<String> clashes(List<Letter> letters) {
        List<String> clashes = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            for (int j = i + 1; j < letters.size(); j++) {
                if (letters.get(i).touches(letters.get(j))) {
                    clashes.add(letters.get(i) + " on " + letters.get(j));
                }
            }
        }
        return clashes;
    }

    private record Place(PDDocument document, int number) {}

    private interface Reading<T> {
        T read(Place page) throws IOException;
    }

    private static <T> List<T> each(byte[] file, Reading<T> reading) {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<T> results = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                results.add(reading.read(new Place(document, page)));
            }
            return results;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
