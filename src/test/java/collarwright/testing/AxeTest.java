package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsChecker(Checker.AXE)
class AxeTest {

    @TempDir
    private Path folder;

    private Axe.Reading read(String body) throws IOException {
        Path file = folder.resolve("page.html");
        Files.writeString(
                file,
                "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Page</title></head><body>" + body
                        + "</body></html>");
        return Axe.read(file, 360);
    }

    @Test
    void page_sound_hasNoViolations() throws IOException {
        Axe.Reading reading = read("<main><h1>Collars</h1><p>Twelve of them.</p></main>");
        assertThat(reading.violations()).isEmpty();
        assertThat(reading.passed()).isGreaterThan(5);
        assertThat(reading.width()).isEqualTo(360);
    }

    @Test
    void page_withFaults_hasEachOfThem() throws IOException {
        Axe.Reading reading = read("<main><h1>Collars</h1><p style=\"color:#bbb;background:#fff\">pale</p>"
                + "<img src=\"data:,\"><div style=\"width:900px\">wide</div></main>");
        assertThat(reading.violations())
                .anyMatch(v -> v.startsWith("color-contrast"))
                .anyMatch(v -> v.startsWith("image-alt"));
        assertThat(reading.width()).isGreaterThan(880);
    }
}
