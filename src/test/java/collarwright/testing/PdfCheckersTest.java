package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfCheckersTest {
    private static final float POINTS_PER_MM = (float) (72 / 25.4);

    @TempDir
    private Path folder;

    private Path file;

    /** An A4 page with a bar of 100 mm, 20 mm from the left and 30 mm from the top, and a line of text in 12 pt. */
    @BeforeEach
    void draw() throws IOException {
        file = folder.resolve("Größe é.pdf");
        try (PDDocument document = new PDDocument();
                InputStream letters = PDDocument.class.getResourceAsStream(
                        "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            PDFont font = PDType0Font.load(document, letters, true);
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.moveTo(20 * POINTS_PER_MM, 267 * POINTS_PER_MM);
                content.lineTo(120 * POINTS_PER_MM, 267 * POINTS_PER_MM);
                content.stroke();
                content.beginText();
                content.setFont(font, 12);
                content.newLineAtOffset(100, 200);
                content.showText("Größe 100 mm");
                content.endText();
            }
            document.save(file.toFile());
        }
    }

    private Path cutShort() throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        return Files.write(folder.resolve("short.pdf"), Arrays.copyOf(bytes, bytes.length / 2));
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void mutool_bar_isMeasured() {
        assertThat(Mutool.strokes(file, 1)).singleElement().satisfies(bar -> {
            assertThat(bar.length()).isCloseTo(100, within(0.001));
            assertThat(bar.x0()).isCloseTo(20, within(0.001));
            // PDFBox' A4 is 841.8898 pt high, 297.0 mm.
            assertThat(bar.y0()).isCloseTo(30, within(0.01));
        });
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void mutool_text_hasSizeAndPlace() {
        assertThat(Mutool.lines(file, 1)).singleElement().satisfies(line -> {
            assertThat(line.text()).isEqualTo("Größe 100 mm");
            assertThat(line.sizePoints()).isCloseTo(12, within(0.01));
            assertThat(line.box().x()).isCloseTo(100 / POINTS_PER_MM, within(0.01));
        });
        // The bar with a mitre of 10 line widths of 1 pt at most, and the text below it.
        Box ink = Mutool.ink(file, 1);
        assertThat(ink.holds(new Box(20, 30, 100, 60), 0.01)).isTrue();
        assertThat(new Box(16, 26, 108, 202).holds(ink, 0.01)).isTrue();
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void mutool_page_isRendered() throws IOException {
        Path picture = folder.resolve("page.png");
        Mutool.render(file, 1, 50, picture);
        assertThat(Files.readAllBytes(picture)).startsWith(0x89, 'P', 'N', 'G');
    }

    @Test
    @NeedsChecker(Checker.QPDF)
    void qpdf_seesWhatIsCutShort() throws IOException {
        assertThat(Qpdf.faults(file)).isEmpty();
        assertThat(Qpdf.faults(cutShort())).isNotEmpty();
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void poppler_sound_isRead() {
        assertThat(Poppler.pages(file)).singleElement().satisfies(page -> {
            assertThat(page.width()).isCloseTo(210, within(0.01));
            assertThat(page.height()).isCloseTo(297, within(0.01));
        });
        assertThat(Poppler.text(file)).contains("Größe 100 mm");
        assertThat(Poppler.fonts(file)).singleElement().satisfies(font -> {
            assertThat(font.name()).endsWith("LiberationSans");
            assertThat(font.embedded()).isTrue();
        });
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void poppler_broken_fails() throws IOException {
        Path broken = Files.writeString(folder.resolve("no.pdf"), "not a PDF");
        assertThatThrownBy(() -> Poppler.pages(broken)).isInstanceOf(AssertionError.class);
    }
}
