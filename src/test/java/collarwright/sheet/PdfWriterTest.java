package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Heading;
import collarwright.drawing.Sheet;
import collarwright.drawing.Side;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.Qpdf;
import collarwright.units.Paper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfWriterTest {
    @TempDir
    Path folder;

    private int files;

    private Path write(Sheet sheet, PdfSettings settings) throws IOException {
        files++;
        return Files.write(folder.resolve(files + ".pdf"), PdfWriter.print(sheet, settings));
    }

    private static Sheet sheet(WrapSettings settings) {
        return WrapTemplate.of(settings).sheet();
    }

    private static Sheet titled(String title) {
        WrapSettings usual = ExampleCollars.three();
        return sheet(new WrapSettings(
                usual.pattern(), usual.body(), true, 0.1, new WrapSettings.OrderWords(title, "HKVWTXNA", 2)));
    }

    private static Sheet withRows(Sheet sheet, int rows) {
        List<List<String>> table = new ArrayList<>(List.of(List.of("hole", "azimuth")));
        for (int i = 0; i < rows; i++) {
            table.add(List.of(i + "", i * 7 + "°"));
        }
        Heading was = sheet.heading();
        Heading heading = new Heading(was.drawing(), was.job(), was.revision(), was.notes(), table);
        return new Sheet(sheet.name(), heading, sheet.size(), sheet.body(), sheet.layers());
    }

    /** Lengths of the level or upright lines of a page. */
    private static double[] lengths(Path file, int page, boolean level) {
        return Mutool.strokes(file, page).stream()
                .filter(s -> StrictMath.abs(level ? s.y1() - s.y0() : s.x1() - s.x0()) < 1e-4)
                .mapToDouble(Mutool.Stroke::length)
                .toArray();
    }

    private static boolean has(double[] lengths, double length) {
        return DoubleStream.of(lengths).anyMatch(l -> StrictMath.abs(l - length) < 0.004);
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER, Checker.QPDF})
    void print_templates_haveTrueBarsBothWaysOnEveryPage() throws IOException {
        for (WrapSettings settings : ExampleCollars.all()) {
            for (Paper paper : Paper.values()) {
                Path file = write(sheet(settings), PdfSettings.of(paper));
                assertThat(Qpdf.faults(file)).isEmpty();
                List<Poppler.PageSize> pages = Poppler.pages(file);
                for (int page = 1; page <= pages.size(); page++) {
                    for (boolean level : new boolean[] {true, false}) {
                        assertThat(has(lengths(file, page, level), 100.00)).isTrue();
                        assertThat(has(lengths(file, page, level), 101.60)).isTrue();
                    }
                }
            }
        }
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void print_templates_stayOnThePaperWithTextApart() throws IOException {
        for (WrapSettings settings : ExampleCollars.all()) {
            for (Paper paper : Paper.values()) {
                Path file = write(sheet(settings), PdfSettings.of(paper));
                List<Poppler.PageSize> pages = Poppler.pages(file);
                for (int page = 1; page <= pages.size(); page++) {
                    looksRight(file, page, pages.get(page - 1), paper);
                }
            }
        }
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void print_inchTemplates_stayOnThePaperWithTextApart() throws IOException {
        List<WrapSettings> several = new ArrayList<>(ExampleCollars.all());
        several.add(ExampleCollars.settings(
                ExampleCollars.pattern("CA", ExampleCollars.saw(12, "1-15/16 in"), 0, 100, 200), 50, 200, true));
        for (WrapSettings usual : several) {
            WrapSettings inches = new WrapSettings(
                    usual.pattern(), usual.body(), usual.measured(), 0.1, true, usual.order(), Side.OUTSIDE);
            for (Paper paper : Paper.values()) {
                Path file = write(sheet(inches), PdfSettings.of(paper));
                List<Poppler.PageSize> pages = Poppler.pages(file);
                for (int page = 1; page <= pages.size(); page++) {
                    looksRight(file, page, pages.get(page - 1), paper);
                }
                assertThat(Poppler.text(file)).contains(" in)").contains("left of 0°");
            }
        }
    }

    private static void looksRight(Path file, int page, Poppler.PageSize size, Paper paper) {
        assertThat(StrictMath.min(size.width(), size.height())).isCloseTo(paper.shortSide(), offset(0.01));
        assertThat(StrictMath.max(size.width(), size.height())).isCloseTo(paper.longSide(), offset(0.01));
        Box free = new Box(10, 10, size.width() - 20, size.height() - 20);
        List<Mutool.Line> lines = Mutool.lines(file, page);
        assertThat(lines).isNotEmpty();
        for (int i = 0; i < lines.size(); i++) {
            assertThat(lines.get(i).sizePoints()).isGreaterThanOrEqualTo(10.99);
            assertThat(free.holds(lines.get(i).box(), 0.7))
                    .as(lines.get(i).toString())
                    .isTrue();
            for (int k = 0; k < i; k++) {
                assertThat(lines.get(i).box().overlaps(lines.get(k).box(), 0.4))
                        .as(lines.get(i) + " and " + lines.get(k))
                        .isFalse();
            }
        }
        assertThat(free.holds(Mutool.ink(file, page), 0.5))
                .as(Mutool.ink(file, page) + " in " + free)
                .isTrue();
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void print_template_canBeSearched() throws IOException {
        Path file = write(sheet(ExampleCollars.six()), PdfSettings.of(Paper.A4));
        assertThat(Poppler.pages(file)).hasSize(2);
        String text = Poppler.text(file);
        assertThat(text)
                .contains("Bee-yard windbreak, east slope")
                .contains("Wrap template CA, rev HKVWTXNA, A4 landscape")
                .contains("page 1 of 2, left to right")
                .contains("page 2 of 2, left to right")
                .contains("Print at 100 %, no scaling. Check the bars.")
                .contains("nominal, not measured")
                .contains("Join the pages so that crosses with the same letter meet.")
                .contains("297.85°");
        assertThat(Poppler.fonts(file)).hasSize(1).allSatisfy(font -> {
            assertThat(font.embedded()).isTrue();
            assertThat(font.name()).endsWith("LiberationSans");
        });
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void print_pages_areAsFewAsThePaperAllows() throws IOException {
        assertThat(Poppler.pages(write(sheet(ExampleCollars.three()), PdfSettings.of(Paper.A4))))
                .hasSize(1);
        assertThat(Poppler.pages(write(sheet(ExampleCollars.three()), PdfSettings.of(Paper.LETTER))))
                .hasSize(1);
        assertThat(Poppler.pages(write(sheet(ExampleCollars.six()), PdfSettings.of(Paper.LETTER))))
                .hasSize(3);
        assertThat(Poppler.pages(write(sheet(ExampleCollars.five()), PdfSettings.of(Paper.A4))))
                .hasSize(2);
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void print_wrap_isAtFullSizeWhereItIsWhole() throws IOException {
        WrapSettings settings = ExampleCollars.three();
        Path file = write(sheet(settings), PdfSettings.of(Paper.A4));
        double girth = StrictMath.PI * 60.1;
        assertThat(has(lengths(file, 1, true), girth)).isTrue();
        assertThat(has(lengths(file, 1, false), 45)).isTrue();
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void print_printerCorrection_stretchesDrawingAndBarsAlike() throws IOException {
        PdfSettings settings = new PdfSettings(Paper.A4, 1.01, 0.98);
        Path file = write(sheet(ExampleCollars.three()), settings);
        assertThat(has(lengths(file, 1, true), 101.0)).isTrue();
        assertThat(has(lengths(file, 1, true), 1.01 * 101.6)).isTrue();
        assertThat(has(lengths(file, 1, true), 1.01 * StrictMath.PI * 60.1)).isTrue();
        assertThat(has(lengths(file, 1, false), 98.0)).isTrue();
        assertThat(has(lengths(file, 1, false), 0.98 * 45)).isTrue();
        assertThat(Mutool.lines(file, 1)).anyMatch(line -> line.text().contains("printer correction x 1.01, y 0.98"));
    }

    // Paper goes the same way through the printer however the drawing lies on it.
    @Test
    @NeedsChecker(Checker.MUTOOL)
    void print_printerCorrection_turnsWithAStandingPage() throws IOException {
        WrapSettings tall = ExampleCollars.settings(
                ExampleCollars.pattern("CA", ExampleCollars.saw(12), 0, 100, 200), 50, 200, true);
        Path file = write(sheet(tall), new PdfSettings(Paper.A4, 1.01, 0.98));
        assertThat(Mutool.lines(file, 1)).anyMatch(line -> line.text().contains("printer correction x 0.98, y 1.01"));
        assertThat(has(lengths(file, 1, true), 98.0)).isTrue();
        assertThat(has(lengths(file, 1, false), 101.0)).isTrue();
        assertThat(has(lengths(file, 1, false), 1.01 * 200)).isTrue();
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void print_longTable_goesOnAPageOfItsOwn() throws IOException {
        Path file = write(withRows(sheet(ExampleCollars.six()), 25), PdfSettings.of(Paper.A4));
        List<Poppler.PageSize> pages = Poppler.pages(file);
        assertThat(pages).hasSize(3);
        assertThat(Poppler.text(file)).contains("page 3 of 3").contains("168°");
        looksRight(file, 3, pages.get(2), Paper.A4);
        assertThat(has(lengths(file, 3, true), 100)).isTrue();
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void print_emptyTable_isNoTrouble() throws IOException {
        Sheet sheet = Sheets.empty().build();
        Path file = write(sheet, PdfSettings.of(Paper.LETTER));
        looksRight(file, 1, Poppler.pages(file).get(0), Paper.LETTER);
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void print_titlesInOtherScripts_areShownOrMarked() throws IOException {
        assertThat(Poppler.text(write(titled("Größe Щука Κύπρος Łódź"), PdfSettings.of(Paper.A4))))
                .contains("Größe Щука Κύπρος Łódź");
        assertThat(Poppler.text(write(titled("蜂の庭 two"), PdfSettings.of(Paper.A4))))
                .contains("??? two");
        assertThat(Poppler.text(write(titled("🐝 नमस्ते مرحبا"), PdfSettings.of(Paper.A4))))
                .contains("?");
        assertThat(Poppler.text(write(titled(""), PdfSettings.of(Paper.A4)))).contains("page 1 of 1");
    }

    @Test
    void inWritingOrder_hebrew_isTurnedRound() {
        assertThat(PdfText.inWritingOrder("abc")).isEqualTo("abc");
        assertThat(PdfText.inWritingOrder("גן 12")).isEqualTo("12 ןג");
        assertThat(PdfText.inWritingOrder("yard שלום 3")).isEqualTo("yard 3 םולש");
    }

    @Test
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void print_longTitle_isWrappedAndShortenedAtTheFourthLine() throws IOException {
        Path file = write(titled("windbreak ".repeat(100)), PdfSettings.of(Paper.LETTER));
        looksRight(file, 1, Poppler.pages(file).get(0), Paper.LETTER);
        assertThat(Poppler.text(file)).contains("...");
        Path word = write(titled("x".repeat(400)), PdfSettings.of(Paper.A4));
        looksRight(word, 1, Poppler.pages(word).get(0), Paper.A4);
    }

    @Test
    void print_file_asksForNoScalingAndHasNoDate() {
        String file = new String(
                PdfWriter.print(sheet(ExampleCollars.three()), PdfSettings.of(Paper.A4)), StandardCharsets.ISO_8859_1);
        assertThat(file)
                .contains("/PrintScaling /None")
                .doesNotContain("CreationDate")
                .doesNotContain("ModDate")
                .doesNotContain("FlateDecode");
    }

    @Test
    void print_twice_givesTheSameBytes() {
        Sheet sheet = sheet(ExampleCollars.six());
        assertThat(PdfWriter.print(sheet, PdfSettings.of(Paper.A4)))
                .isEqualTo(PdfWriter.print(sheet, PdfSettings.of(Paper.A4)));
        assertThat(PdfWriter.print(sheet, PdfSettings.of(Paper.A4)))
                .isNotEqualTo(PdfWriter.print(sheet, PdfSettings.of(Paper.LETTER)));
    }

    @Test
    void settings_wildCorrection_isRefused() {
        for (double bad : new double[] {0, -1, 0.94, 1.06, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new PdfSettings(Paper.A4, bad, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new PdfSettings(Paper.A4, 1, bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
