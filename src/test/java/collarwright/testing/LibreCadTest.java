package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsChecker({Checker.LIBRECAD, Checker.MUTOOL})
class LibreCadTest {
    @TempDir
    private Path folder = Path.of("");

    private LibreCad.Reading read(String unit, String radius) throws IOException {
        Path file = Files.writeString(
                folder.resolve("a.dxf"),
                ("0|SECTION|2|HEADER|9|$ACADVER|1|AC1009|9|$INSUNITS|70|" + unit
                                + "|0|ENDSEC|0|SECTION|2|ENTITIES|0|LINE|8|CUT|10|0.0|20|0.0|30|0.0|11|100.0|21|0.0|31|0.0|"
                                + "0|CIRCLE|8|CUT|10|50.0|20|20.0|30|0.0|40|" + radius + "|0|ENDSEC|0|EOF|")
                        .replace('|', '\n'));
        return LibreCad.read(file, folder);
    }

    @Test
    void circleAndLine_areMeasured() throws IOException {
        LibreCad.Reading reading = read("4", "5.5");

        assertThat(reading.lines()).isEqualTo(1);
        assertThat(reading.circles()).isEqualTo(1);
        assertThat(reading.width()).isCloseTo(100, within(LibreCad.STEP));
        assertThat(reading.height()).isCloseTo(25.5, within(LibreCad.STEP));
    }

    @Test
    void wrongUnitAndWrongRadius_areSeen() throws IOException {
        assertThat(read("1", "5.5").width()).isCloseTo(2540, within(1.0));
        assertThat(read("4", "6.5").height()).isCloseTo(26.5, within(LibreCad.STEP));
    }
}
