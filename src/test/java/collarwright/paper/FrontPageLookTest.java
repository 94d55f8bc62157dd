package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** Opens the front pages in a browser, on a desk, a phone and A4 paper, and measures their words. */
@Tag("look")
@NeedsChecker(Checker.CHROMIUM)
class FrontPageLookTest {

    private static final double ELEVEN_POINTS = 11 * 96 / 72.0;

    @TestFactory
    List<DynamicTest> pages_areReadableEverywhere() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, Paperwork> work : TravellerLookTest.works().entrySet()) {
            Path folder = Files.createDirectories(ProjectFolder.target().resolve("look/front"));
            Path page = folder.resolve(work.getKey() + ".html");
            Files.write(page, FrontPage.print(work.getValue()));
            for (int width : new int[] {390, 794, 1280}) {
                tests.add(DynamicTest.dynamicTest(work.getKey() + " " + width, () -> screen(page, width)));
            }
            tests.add(DynamicTest.dynamicTest(work.getKey() + " A4", () -> paper(page)));
        }
        return tests;
    }

    private static void screen(Path page, int width) {
        String name = page.getFileName().toString().replace(".html", "-" + width + ".png");
        Chromium.Page shown = Chromium.look(page, width, page.resolveSibling(name));
        assertThat(shown.complaints()).isEmpty();
        assertThat(shown.requests()).isEmpty();
        assertThat(shown.width()).isLessThanOrEqualTo(width);
        List<Chromium.Text> texts = shown.texts();
        for (int i = 0; i < texts.size(); i++) {
            Chromium.Text text = texts.get(i);
            assertThat(text.sizePixels()).as(text.text()).isGreaterThanOrEqualTo(ELEVEN_POINTS);
            assertThat(text.box().x()).as(text.text()).isGreaterThanOrEqualTo(0);
            assertThat(text.box().right()).as(text.text()).isLessThanOrEqualTo(width);
            Box box = text.box();
            for (int j = 0; j < i; j++) {
                assertThat(box.overlaps(texts.get(j).box(), 4))
                        .as("%s over %s", text, texts.get(j))
                        .isFalse();
            }
        }
    }

    private static void paper(Path page) throws IOException {
        Path pdf = page.resolveSibling(page.getFileName().toString().replace(".html", "-a4.pdf"));
        Chromium.print(page, "A4", pdf);
        assertThat(Poppler.pages(pdf))
                .allSatisfy(size -> assertThat(size.width()).isBetween(209.0, 211.0));
        List<List<PdfText.Letter>> pages = PdfText.letters(Files.readAllBytes(pdf));
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .as("page %d", i + 1)
                    .allSatisfy(l -> assertThat(l.points()).as("%s", l).isGreaterThanOrEqualTo(11));
            assertThat(PdfText.clashes(pages.get(i))).as("page %d", i + 1).isEmpty();
        }
    }
}
