package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsChecker(Checker.CHROMIUM)
class ChromiumTest {
    private static final String SOUND = """
            <!doctype html><html lang="en"><meta charset="utf-8"><title>t</title>
            <style>body{margin:0;font:11pt sans-serif}</style>
            <p>One line</p><svg viewBox="0 0 10 5" width="200"><text y="4" font-size="2">In the drawing</text></svg>
            """;

    @TempDir
    private Path folder;

    private Chromium.Page look(String page) throws IOException {
        Path file = Files.writeString(folder.resolve("page.html"), page);
        return Chromium.look(file, 390, folder.resolve("page.png"));
    }

    @Test
    void page_sound_isMeasuredAndPictured() throws IOException {
        Chromium.Page page = look(SOUND);

        assertThat(page.complaints()).isEmpty();
        assertThat(page.requests()).isEmpty();
        assertThat(page.width()).isEqualTo(390);
        assertThat(page.texts()).extracting(Chromium.Text::text).containsExactly("One line", "In the drawing");
        assertThat(page.texts().get(0).sizePixels()).isCloseTo(11 * 96 / 72.0, within(0.01));
        // 2 units of a drawing 10 units wide that is shown 200 pixels wide.
        assertThat(page.texts().get(1).sizePixels()).isCloseTo(40, within(0.01));
        assertThat(Files.readAllBytes(folder.resolve("page.png"))).startsWith(0x89, 'P', 'N', 'G');
    }

    @Test
    void page_broken_shows() throws IOException {
        assertThat(look(SOUND + "<script>nothing.there()</script>").complaints())
                .isNotEmpty();
        assertThat(look(SOUND + "<div style='width:700px'>x</div>").width()).isGreaterThanOrEqualTo(700);
        assertThat(look(SOUND + "<img src='http://example.invalid/a.png' alt=''>"))
                .satisfies(page -> {
                    assertThat(page.requests()).containsExactly("http://example.invalid/a.png");
                    assertThat(page.complaints()).isNotEmpty();
                });
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void page_printed_hasThePaperAskedFor() throws IOException {
        Path file = Files.writeString(folder.resolve("page.html"), SOUND);
        Path pdf = folder.resolve("page.pdf");

        Chromium.print(file, "A4", pdf);

        assertThat(Poppler.pages(pdf)).singleElement().satisfies(page -> {
            assertThat(page.width()).isCloseTo(210, within(0.5));
            assertThat(page.height()).isCloseTo(297, within(0.5));
        });
        assertThat(Poppler.text(pdf)).contains("One line");
    }
}
