package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsChecker(Checker.DXF_JS)
class DxfJsTest {
    @Test
    void circleAndLine_areMeasured(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("a.dxf"),
                ("0|SECTION|2|ENTITIES|0|LINE|8|CUT|10|0.0|20|0.0|30|0.0|11|100.0|21|0.0|31|0.0|"
                                + "0|CIRCLE|8|CUT|10|50.0|20|20.0|30|0.0|40|5.5|0|ENDSEC|0|EOF|")
                        .replace('|', '\n'));

        DxfJs.Reading reading = DxfJs.read(file);

        assertThat(reading.counts())
                .containsEntry("LINE", 1)
                .containsEntry("CIRCLE", 1)
                .hasSize(2);
        assertThat(reading.box().width()).isCloseTo(100, within(1e-9));
        assertThat(reading.box().height()).isCloseTo(25.5, within(0.01));
    }
}
