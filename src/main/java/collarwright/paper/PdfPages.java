package collarwright.paper;

import collarwright.paper.PageItem.Area;
import collarwright.picture.Ink;
import collarwright.picture.Lettering;
import collarwright.picture.Sketch;
import collarwright.picture.Written;
import collarwright.sheet.StablePdf;
import collarwright.sheet.Typeface;
import collarwright.units.Paper;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** Prints pages as PDF: head and foot on each, text as text in an embedded typeface, no dates. */
final class PdfPages {

    private static final double POINTS = 72 / 25.4;

    private final Lettering letters;
    private final String title;
    private final String revision;

    private final String kind;
    private final PDRectangle area;
    private final double foot;

    PdfPages(Lettering letters, String title, String revision) {
        this(letters, title, revision, new Form("traveller", Paper.A4));
    }

    /**
     * What is printed on what.
     *
     * @param kind what the paper is, for its title
     * @param paper its size
     */
    record Form(String kind, Paper paper) {}

    PdfPages(Lettering letters, String title, String revision, Form form) {
        this.letters = letters;
        this.title = title;
        this.revision = revision;
        this.kind = form.kind();
        this.area = form.paper() == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
        this.foot = form.paper().longSide() - Paper.A4.longSide();
    }

    byte[] print(List<Page> pages) {
        try (PDDocument document = new PDDocument()) {
            describe(document);
            PDFont font = PDType0Font.load(document, Typeface.open(), true);
            PDDocumentOutline outline = new PDDocumentOutline();
            String last = "";
            for (int i = 0; i < pages.size(); i++) {
                PDPage sheet = new PDPage(area);
                document.addPage(sheet);
                print(document, sheet, font, framed(pages.get(i), i + 1, pages.size()));
                if (!pages.get(i).section().equals(last)) {
                    last = pages.get(i).section();
                    PDOutlineItem entry = new PDOutlineItem();
                    entry.setTitle(last);
                    entry.setDestination(sheet);
                    outline.addLast(entry);
                }
            }
            document.getDocumentCatalog().setDocumentOutline(outline);
            return StablePdf.bytes(document, name());
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF in memory could not be written", e);
        }
    }

    private void describe(PDDocument document) {
        document.getDocumentInformation().setTitle(name());
        document.getDocumentInformation().setProducer("collarwright");
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private String name() {
        return title + ", " + kind + ", revision " + revision;
    }

    private Page framed(Page page, int number, int count) {
        List<PageItem> items = new java.util.ArrayList<>(page.items());
        Wrapping wrapping = new Wrapping(letters, Flow.BODY);
        double right = Flow.LEFT + Flow.WIDTH;
        items.add(words(page.section(), Flow.LEFT, 14));
        items.add(words("Revision " + revision, right - wrapping.width("Revision " + revision), 14));
        items.add(new PageItem.Rule(new Area(Flow.LEFT, 16.5, Flow.WIDTH, 0.25), Ink.INK));
        String place = "page " + number + " of " + count;
        items.add(new PageItem.Rule(new Area(Flow.LEFT, 281.5 + foot, Flow.WIDTH, 0.25), Ink.INK));
        double room = Flow.WIDTH - wrapping.width(place) - 8;
        items.add(words(wrapping.shortened(title, room), Flow.LEFT, 287 + foot));
        items.add(words(place, right - wrapping.width(place), 287 + foot));
        return new Page(page.section(), items);
    }

    private PageItem words(String text, double x, double baseline) {
        String visible = letters.visible(text);
        return new PageItem.Words(
                new Written(visible, x, baseline, letters.width(visible, Flow.BODY), Flow.BODY, Ink.INK, false));
    }

    private void print(PDDocument document, PDPage sheet, PDFont font, Page page) throws IOException {
        // One stream, no compression: packed bytes differ between builds of the packing library.
        try (PDPageContentStream pen =
                new PDPageContentStream(document, sheet, PDPageContentStream.AppendMode.OVERWRITE, false)) {
            for (PageItem item : page.items()) {
                if (item instanceof PageItem.Words words) {
                    write(pen, font, words.text(), 0, 0);
                } else if (item instanceof PageItem.Shown shown) {
                    show(document, pen, font, shown);
                } else {
                    shape(pen, item);
                }
            }
        }
    }

    private static float points(double length) {
        return (float) (length * POINTS);
    }

    private float up(double y) {
        return area.getHeight() - points(y);
    }

    private void shape(PDPageContentStream pen, PageItem item) throws IOException {
        if (item instanceof PageItem.Fill fill) {
            rectangle(pen, fill.area());
            pen.setNonStrokingColor(fill.ink().color());
            pen.fill();
        } else if (item instanceof PageItem.Rule rule) {
            Area area = rule.area();
            rectangle(pen, new Area(area.x(), area.y() - area.height() / 2, area.width(), area.height()));
            pen.setNonStrokingColor(rule.ink().color());
            pen.fill();
        } else if (item instanceof PageItem.Frame frame) {
            pen.setStrokingColor(Ink.GREY.color());
            pen.setLineWidth(points(0.25));
            rectangle(pen, frame.area());
            pen.stroke();
        }
    }

    private void rectangle(PDPageContentStream pen, Area area) throws IOException {
        pen.addRect(points(area.x()), up(area.y() + area.height()), points(area.width()), points(area.height()));
    }

    private void write(PDPageContentStream pen, PDFont font, Written text, double dx, double dy) throws IOException {
        if (text.text().isEmpty()) {
            return;
        }
        pen.beginText();
        pen.setFont(font, points(text.size()));
        pen.setNonStrokingColor(text.ink().color());
        pen.setRenderingMode(text.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        if (text.bold()) {
            pen.setStrokingColor(text.ink().color());
            pen.setLineWidth(points(Lettering.BOLD * text.size()));
        }
        pen.newLineAtOffset(points(text.x() + dx), up(text.baseline() + dy));
        pen.showText(text.text());
        pen.endText();
    }

    // Lines and areas of a picture go in as a form, its words as words of the page, so that they can be searched.
    private void show(PDDocument document, PDPageContentStream pen, PDFont font, PageItem.Shown shown)
            throws IOException {
        var picture = shown.picture();
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, points(picture.width()), points(picture.height()));
        graphics.scale(POINTS, POINTS);
        Sketch sketch = Sketch.on(graphics, letters, text -> {});
        picture.paint(sketch);
        graphics.dispose();
        pen.saveGraphicsState();
        pen.transform(Matrix.getTranslateInstance(points(shown.x()), up(shown.y() + picture.height())));
        pen.drawForm(graphics.getXFormObject());
        pen.restoreGraphicsState();
        for (Written text : sketch.written()) {
            write(pen, font, text, shown.x(), shown.y());
        }
    }
}
