package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import collarwright.drawing.Sheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Prints the body of a sheet at full size on office paper, over as many pages as it takes, with scale bars both ways on
 * every page, register crosses where pages overlap, and the sheet's notes and table in text that can be searched.
 *
 * <p>The file asks for "no scaling" in its viewer preferences; the bars show whether the printer obeyed. Nothing comes
 * nearer to the paper's edge than {@link #MARGIN}, which every office printer can print (common practice, no source).
 */
public final class PdfWriter {
    /** Edge of the paper that stays free. */
    public static final double MARGIN = 10;

    private static final double POINTS_PER_MM = 72 / 25.4;

    private PdfWriter() {}

    /**
     * Prints a sheet.
     *
     * @param sheet what to print; it has to pass the lint
     * @param settings paper and printer correction
     * @return the PDF file
     * @throws collarwright.finding.JobException SHEET_FAULT if the lint finds anything
     */
    public static byte[] print(Sheet sheet, PdfSettings settings) {
        return print(SoundSheet.of(sheet), settings);
    }

    /**
     * Prints a sheet that was looked through.
     *
     * @param sound what to print
     * @param settings paper and printer correction
     * @return the PDF file
     */
    public static byte[] print(SoundSheet sound, PdfSettings settings) {
        Sheet sheet = sound.sheet();
        try {
            PDDocument document = new PDDocument();
            try {
                PdfLayout layout = PdfLayout.of(sheet, settings, PdfText.in(document));
                describe(document, sheet.heading());
                for (int page = 0; page < layout.pageCount(); page++) {
                    add(document, layout, page);
                }
                return StablePdf.bytes(document, layout.name());
            } finally {
                document.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void describe(PDDocument document, Heading heading) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(heading.job() + ", " + heading.drawing() + ", rev " + heading.revision());
        document.setDocumentInformation(information);
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private static void add(PDDocument document, PdfLayout layout, int number) throws IOException {
        Box paper = layout.paper();
        PDPage page = new PDPage(
                new PDRectangle((float) (paper.width() * POINTS_PER_MM), (float) (paper.height() * POINTS_PER_MM)));
        document.addPage(page);
        try (PDPageContentStream content =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false)) {
            new PdfPage(layout, PdfPen.plain(content, layout.text()), number).draw();
        }
    }
}
