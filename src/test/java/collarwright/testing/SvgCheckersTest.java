package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SvgCheckersTest {
    private static final String SOUND = """
            <?xml version="1.0" encoding="UTF-8"?>
            <svg xmlns="http://www.w3.org/2000/svg" width="210mm" height="297mm" viewBox="0 0 210 297">
              <g id="CUT" fill="none" stroke="black" stroke-width="0.1">
                <path id="bar" d="M 10 10 H 110"/>
                <circle id="hole" cx="50" cy="60" r="5.5"/>
              </g>
            </svg>
            """;

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("Größe é.svg");
    }

    private Path drawing(String from, String to) throws IOException {
        assertThat(SOUND).contains(from);
        return Files.writeString(file, SOUND.replace(from, to));
    }

    @Test
    @NeedsChecker(Checker.SVGELEMENTS)
    void svgelements_sound_isMeasured() throws IOException {
        var sizes = SvgElements.measure(drawing("", ""));

        // It turns millimetres into pixels by a rounded number, 5e-7 off.
        assertThat(sizes.pageWidth()).isCloseTo(210, within(0.001));
        assertThat(sizes.pageHeight()).isCloseTo(297, within(0.001));
        assertThat(sizes.boxes().get("bar").width()).isCloseTo(100, within(0.001));
        assertThat(sizes.boxes().get("hole").height()).isCloseTo(11, within(0.001));
    }

    @Test
    @NeedsChecker(Checker.SVGELEMENTS)
    void svgelements_broken_shows() throws IOException {
        assertThat(SvgElements.measure(drawing("210mm", "210")).pageWidth()).isCloseTo(55.5625, within(0.001));
        Path cut = Files.writeString(file, SOUND.substring(0, SOUND.length() / 2));
        assertThatThrownBy(() -> SvgElements.measure(cut)).isInstanceOf(AssertionError.class);
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void chromium_sound_isMeasured() throws IOException {
        var drawing = Chromium.measure(drawing("", ""));

        assertThat(drawing.complaints()).isEmpty();
        assertThat(drawing.pageWidth()).isCloseTo(210, within(0.01));
        assertThat(drawing.boxes().get("bar").width()).isCloseTo(100, within(0.005));
        assertThat(drawing.boxes().get("bar").x()).isCloseTo(10, within(0.005));
        assertThat(drawing.boxes().get("hole").height()).isCloseTo(11, within(0.005));
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void chromium_broken_shows() throws IOException {
        assertThat(Chromium.measure(drawing("H 110", "H NaN")).complaints()).isNotEmpty();
        assertThat(Chromium.measure(drawing("width=\"210mm\"", "width=\"210\"")).pageWidth())
                .isCloseTo(55.56, within(0.01));
    }

    @Test
    @NeedsChecker(Checker.XMLLINT)
    void xmllint_sound_passes() throws IOException {
        assertThat(Xmllint.faults(drawing("", ""))).isEmpty();
    }

    @Test
    @NeedsChecker(Checker.XMLLINT)
    void xmllint_broken_isFaulty() throws IOException {
        assertThat(Xmllint.faults(drawing("</g>", ""))).isNotEmpty();
        assertThat(Xmllint.faults(drawing("id=\"hole\"", "id=\"bar\"")))
                .singleElement()
                .asString()
                .contains("bar");
        // The same id on a child of the first.
        assertThat(Xmllint.faults(drawing("id=\"hole\"", "id=\"CUT\"")))
                .singleElement()
                .asString()
                .contains("CUT");
    }
}
