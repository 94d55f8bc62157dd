package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Axe;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The front pages of the samples, looked at by a program that knows the rules for pages that everybody can use. */
@NeedsChecker(Checker.AXE)
class FrontPageAccessTest {

    @ParameterizedTest
    // 320 px: Web Content Accessibility Guidelines 2.2, 2023, success criterion 1.4.10 (reflow).
    @CsvSource({
        "cloche, 320",
        "cloche, 360",
        "cloche, 1200",
        "orchard-net, 320",
        "orchard-net, 360",
        "orchard-net, 1200",
        "seedling-house, 320",
        "seedling-house, 360",
        "seedling-house, 1200"
    })
    void page_ofEverySample_isForEverybodyAndNeverWider(String sample, int width) {
        Path page =
                ProjectFolder.top().resolve("output-samples").resolve(sample).resolve("pack/index.html");
        Axe.Reading reading = Axe.read(page, width);
        assertThat(reading.violations()).isEmpty();
        assertThat(reading.incomplete()).isEmpty();
        assertThat(reading.passed()).isGreaterThan(20);
        assertThat(reading.width()).isLessThanOrEqualTo(width);
    }
}
