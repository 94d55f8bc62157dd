package collarwright.paper;

import collarwright.job.LabelSheet;
import collarwright.kit.SiteLabel;
import collarwright.kit.SiteLabels;
import collarwright.picture.Lettering;
import collarwright.picture.Written;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.sheet.StablePdf;
import collarwright.sheet.Typeface;
import collarwright.units.Paper;
import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/**
 * Prints labels on sheets of labels: those of one dome, to be printed once for each dome, and from a new sheet on those of
 * the spares. Each has a QR code with plain ids, and the same text in letters.
 */
public final class LabelPages {

    /** More labels than this are not printed: tables have them. Our choice, no source. */
    static final int MOST = 12_000;

    private static final double POINTS = 72 / 25.4;

    private final LabelSheet sheet;
    private final LabelLayout layout;
    private final float paperHeight;

    private LabelPages(Lettering letters, LabelSheet sheet) {
        this.sheet = sheet;
        this.layout = new LabelLayout(letters, sheet);
        this.paperHeight = points(sheet.paper().longSide());
    }

    /**
     * Tells the sheet that a job's labels are printed on.
     *
     * @param plan the plan
     * @return the job's own, or the usual one of its units
     */
    public static LabelSheet sheet(Plan plan) {
        return plan.job()
                .site()
                .labels()
                .orElse(LabelSheet.usual(UnitWords.inches(plan.job()) ? Paper.LETTER : Paper.A4));
    }

    /**
     * Tells whether there are few enough labels to print.
     *
     * @param labels the labels
     * @return false for very large domes
     */
    public static boolean printed(SiteLabels labels) {
        return labels.perDome().size() <= MOST;
    }

    /**
     * Counts sheets.
     *
     * @param sheet the sheet
     * @param labels how many
     * @return sheets
     */
    public static int sheets(LabelSheet sheet, int labels) {
        return (labels + sheet.perSheet() - 1) / sheet.perSheet();
    }

    /**
     * Prints the labels.
     *
     * @param plan the plan
     * @param labels what they say
     * @return a PDF file; the same bytes for the same plan
     */
    public static byte[] print(Plan plan, SiteLabels labels) {
        LabelPages pages = new LabelPages(Lettering.load(), sheet(plan));
        try (PDDocument document = new PDDocument()) {
            String name =
                    plan.job().title() + ", labels, revision " + plan.job().revision();
            document.getDocumentInformation().setTitle(name);
            document.getDocumentInformation().setProducer("collarwright");
            document.getDocumentCatalog().setLanguage("en");
            PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
            preferences.setDisplayDocTitle(true);
            // Labels lie where they lie at true size only.
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            PDFont font = PDType0Font.load(document, Typeface.open(), true);
            pages.pages(document, font, labels.perDome());
            pages.pages(document, font, labels.spares());
            return StablePdf.bytes(document, name);
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF in memory could not be written", e);
        }
    }

    private void pages(PDDocument document, PDFont font, List<SiteLabel> labels) throws IOException {
        for (int from = 0; from < labels.size(); from += sheet.perSheet()) {
            PDPage page = new PDPage(new PDRectangle(points(sheet.paper().shortSide()), paperHeight));
            document.addPage(page);
            // One stream, no compression: packed bytes differ between builds of the packing library.
            try (PDPageContentStream pen =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false)) {
                pen.setNonStrokingColor(Color.BLACK);
                pen.setStrokingColor(Color.BLACK);
                List<SiteLabel> here = labels.subList(from, StrictMath.min(labels.size(), from + sheet.perSheet()));
                for (int i = 0; i < here.size(); i++) {
                    double x = sheet.left() + sheet.nudgeX() + i % sheet.columns() * sheet.pitchX();
                    int row = i / sheet.columns();
                    double y = sheet.top() + sheet.nudgeY() + row * sheet.pitchY();
                    code(pen, here.get(i), x, y);
                    words(pen, font, layout.words(here.get(i)), x, y);
                }
            }
        }
    }

    private static float points(double length) {
        return (float) (length * POINTS);
    }

    private float up(double y) {
        return paperHeight - points(y);
    }

    // Modules are whole numbers in a frame of their own, so that a sheet stays a small file.
    private void code(PDPageContentStream pen, SiteLabel label, double x, double y) throws IOException {
        QrCode code = QrCode.of(label.code());
        double module = layout.square() / (code.modules() + 2 * QrCode.QUIET);
        double left = x + layout.squareLeft() + QrCode.QUIET * module;
        double top = y + layout.squareTop() + QrCode.QUIET * module;
        pen.saveGraphicsState();
        pen.transform(new Matrix(points(module), 0, 0, -points(module), points(left), up(top)));
        for (QrCode.Run run : code.runs()) {
            pen.addRect(run.column(), run.row(), run.length(), 1);
        }
        pen.fill();
        pen.restoreGraphicsState();
    }

    private void words(PDPageContentStream pen, PDFont font, List<Written> lines, double x, double y)
            throws IOException {
        for (Written line : lines) {
            pen.beginText();
            pen.setFont(font, points(line.size()));
            pen.setRenderingMode(line.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
            if (line.bold()) {
                pen.setLineWidth(points(Lettering.BOLD * line.size()));
            }
            pen.newLineAtOffset(points(x + line.x()), up(y + line.baseline()));
            pen.showText(line.text());
            pen.endText();
        }
    }
}
