package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Renders everything a person sees of the samples' packs to {@code target/look/}, for a person to look at, and fails on
 * what a machine can see: text over text, ink outside the page, small print on papers, and pages that reach for the
 * network. Runs with {@code mvn -Plook verify}.
 */
@Tag("look")
@NeedsChecker({Checker.CHROMIUM, Checker.MUTOOL, Checker.POPPLER})
class LookTest {

    private static final int DPI = 80;
    private static final double LEAST_POINTS = 11;
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final int A4_PIXELS = 794;
    private static final int PHONE_PIXELS = 390;
    private static final int SHEET_PIXELS = 1700;

    static List<Path> files(String suffix) throws IOException {
        List<Path> tops = new ArrayList<>(DomePacks.all());
        tops.add(ProjectFolder.top().resolve("output-samples"));
        List<Path> found = new ArrayList<>();
        for (Path top : tops) {
            try (Stream<Path> all = Files.walk(top)) {
                all.filter(p -> p.toString().endsWith(suffix)).sorted().forEach(found::add);
            }
        }
        return found;
    }

    static List<Path> pdfs() throws IOException {
        return files(".pdf");
    }

    static List<Path> svgs() throws IOException {
        return files(".svg");
    }

    static List<Path> pages() throws IOException {
        return files(".html");
    }

    @ParameterizedTest
    @MethodSource("pdfs")
    void pdf_everyPage_isReadableAndInsideThePaper(Path pdf) throws IOException {
        assertThat(faults(pdf, page -> picture(pdf, "-" + page)))
                .as(pdf.toString())
                .isEmpty();
    }

    private interface Target {
        Path of(int page) throws IOException;
    }

    /** Draws every page, and tells what cannot be read on it. */
    private static List<String> faults(Path pdf, Target pictures) throws IOException {
        List<Poppler.PageSize> sizes = Poppler.pages(pdf);
        List<String> faults = new ArrayList<>();
        for (int page = 1; page <= sizes.size(); page++) {
            Mutool.render(pdf, page, DPI, pictures.of(page));
            List<Mutool.Line> lines = Mutool.lines(pdf, page);
            Poppler.PageSize size = sizes.get(page - 1);
            Box paper = new Box(0, 0, size.width(), size.height());
            if (!paper.holds(Mutool.ink(pdf, page), 0.05)) {
                faults.add("page " + page + ": ink outside the paper, " + Mutool.ink(pdf, page));
            }
            for (Mutool.Line line : lines) {
                if (line.sizePoints() < LEAST_POINTS - 0.01) {
                    faults.add("page " + page + ": " + line.sizePoints() + " pt: " + line.text());
                }
            }
            overlaps(
                            lines.stream().map(Mutool.Line::box).toList(),
                            lines.stream().map(Mutool.Line::text).toList(),
                            page)
                    .forEach(faults::add);
        }
        return faults;
    }

    // A browser takes no picture of a bare SVG here, so each stands in a page of its own.
    @ParameterizedTest
    @MethodSource("svgs")
    void svg_inABrowser_drawsWithoutComplaint(Path svg) throws IOException {
        Path picture = picture(svg, "");
        Path page = picture.resolveSibling(picture.getFileName() + ".html");
        String drawing = Files.readString(svg).replaceFirst("<\\?xml[^>]*>", "");
        Files.writeString(page, "<!DOCTYPE html><html lang=\"en\"><body>" + drawing + "</body></html>\n");

        assertThat(Chromium.look(page, SHEET_PIXELS, picture).complaints()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void page_onPaperAndPhone_isReadableAndOffline(Path html) throws IOException {
        for (int width : List.of(A4_PIXELS, PHONE_PIXELS)) {
            Chromium.Page page = Chromium.look(html, width, picture(html, "-" + width));
            assertThat(page.complaints()).isEmpty();
            assertThat(page.requests()).allMatch(r -> r.startsWith("file:") || r.startsWith("data:"));
            assertThat(page.width()).as("no sideways scrolling at " + width).isLessThanOrEqualTo(width + 1);
            List<Box> boxes = page.texts().stream().map(Chromium.Text::box).toList();
            List<String> texts = page.texts().stream().map(Chromium.Text::text).toList();
            assertThat(overlaps(boxes, texts, width)).isEmpty();
        }
        Path print =
                picture(html, "-print").resolveSibling(picture(html, "-print").getFileName() + ".pdf");
        Chromium.print(html, "A4", print);
        assertThat(faults(print, page -> picture(html, "-print-" + page)))
                .as("printed " + html)
                .isEmpty();
    }

    private static List<String> overlaps(List<Box> boxes, List<String> texts, int page) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                // Line boxes hold room for ascenders and descenders that most letters leave empty.
                Box a = shrunk(boxes.get(i));
                if (a.overlaps(shrunk(boxes.get(j)), 0)) {
                    faults.add("page " + page + ": '" + texts.get(i) + "' over '" + texts.get(j) + "'");
                }
            }
        }
        return faults;
    }

    private static Box shrunk(Box box) {
        double dx = StrictMath.min(0.3 * POINTS_PER_MM, box.width() / 4);
        double dy = box.height() / 4;
        return new Box(box.x() + dx / 2, box.y() + dy, box.width() - dx, box.height() - 2 * dy);
    }

    private static Path picture(Path file, String suffix) throws IOException {
        Path samples = ProjectFolder.top().resolve("output-samples");
        Path top = file.startsWith(samples) ? samples : ProjectFolder.target().resolve("dome-packs");
        String name = top.relativize(file)
                .toString()
                .replace('\\', '/')
                .replace('/', '_')
                .replace('.', '_');
        Path look = ProjectFolder.target().resolve("look");
        Files.createDirectories(look);
        return look.resolve(name + suffix + ".png");
    }
}
