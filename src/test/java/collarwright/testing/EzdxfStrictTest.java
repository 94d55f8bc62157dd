package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.EzdxfStrict.Point;
import collarwright.testing.EzdxfStrict.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@NeedsChecker(Checker.EZDXF)
class EzdxfStrictTest {
    /** An R12 drawing: group code and value by turns, here parted by blanks and bars. */
    private static final String R12 = "0|SECTION|2|HEADER|9|$ACADVER|1|AC1009|9|$INSUNITS|70|4|0|ENDSEC|"
            + "0|SECTION|2|TABLES|0|TABLE|2|LTYPE|70|1|0|LTYPE|2|CONTINUOUS|70|0|3|Solid|72|65|73|0|40|0.0|0|ENDTAB|"
            + "0|TABLE|2|LAYER|70|1|0|LAYER|2|CUT|70|0|62|1|6|CONTINUOUS|0|ENDTAB|0|ENDSEC|"
            + "0|SECTION|2|ENTITIES|0|LINE|8|CUT|10|0.0|20|0.0|30|0.0|11|100.0|21|0.0|31|0.0|"
            + "0|CIRCLE|8|CUT|10|50.0|20|20.0|30|0.0|40|5.5|0|ENDSEC|0|EOF|";

    @TempDir
    private Path folder;

    private Reading read(String bars) throws IOException {
        Path file = folder.resolve("drawing é.dxf");
        Files.writeString(file, bars.replace('|', '\n'), StandardCharsets.UTF_8);
        return EzdxfStrict.read(file);
    }

    /** An R2000 drawing that ezdxf writes itself, changed by us. */
    private Reading readR2000(String from, String to) throws IOException {
        Path file = folder.resolve("r2000.dxf");
        Run.of(List.of(
                        Checker.python(),
                        "-c",
                        "import sys, ezdxf; d = ezdxf.new('R2000'); d.layers.add('CUT'); m = d.modelspace();"
                                + "m.add_lwpolyline([(0, 0), (40, 0, 0, 0, 0.5), (40, 30)], close=True,"
                                + " dxfattribs={'layer': 'CUT'}); d.saveas(sys.argv[1])",
                        file.toString()))
                .orFail();
        String text = Files.readString(file, StandardCharsets.UTF_8);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to), StandardCharsets.UTF_8);
        return EzdxfStrict.read(file);
    }

    @Test
    void r12_sound_isReadWhole() throws IOException {
        Reading reading = read(R12).orFail();

        assertThat(reading.version()).isEqualTo("AC1009");
        assertThat(reading.insunits()).hasValue(4);
        assertThat(reading.layers()).contains("CUT");
        assertThat(reading.extents()).hasValue(new Box(0, 0, 100, 25.5));
        assertThat(reading.entities("LINE").get(0).points()).containsExactly(new Point(0, 0, 0), new Point(100, 0, 0));
        assertThat(reading.entities("CIRCLE").get(0).radius()).isEqualTo(5.5);
    }

    @Test
    void r2000_sound_isReadWhole() throws IOException {
        Reading reading = readR2000("LWPOLYLINE", "LWPOLYLINE").orFail();

        assertThat(reading.version()).isEqualTo("AC1015");
        assertThat(reading.entities()).singleElement().satisfies(outline -> {
            assertThat(outline.closed()).isTrue();
            assertThat(outline.points()).hasSize(3);
            assertThat(outline.points().get(1).bulge()).isCloseTo(0.5, within(1e-12));
        });
    }

    @ParameterizedTest
    @CsvSource({
        "0|EOF|, '', no EOF",
        "40|5.5, 40|0.0, CIRCLE of radius 0.0",
        "40|5.5, 40|NaN, CIRCLE: group 40 is NaN",
        "40|5.5, '40|5,5', 'not a number'",
        "8|CUT|10|50, 8|CUTS|10|50, layer CUTS is not defined",
        "11|100.0, 11|0.0, LINE of no length",
        "0|CIRCLE, 0|SOLID, unexpected entity SOLID",
        "0|ENDSEC|0|EOF|, '0|TEXT|8|CUT|10|1.0|20|1.0|30|0.0|40|4.0|1|Größe|0|ENDSEC|0|EOF|', text beyond ASCII"
    })
    void r12_broken_isFaulty(String from, String to, String fault) throws IOException {
        assertThat(R12).contains(from);
        Reading reading = read(R12.replace(from, to));

        assertThat(reading.faults()).anyMatch(found -> found.contains(fault));
        assertThatThrownBy(reading::orFail).isInstanceOf(AssertionError.class);
    }

    @Test
    void r2000_broken_isFaulty() throws IOException {
        assertThat(readR2000("\n 90\n3\n", "\n 90\n4\n").faults()).contains("LWPOLYLINE says 4 vertices, has 3");
        assertThat(readR2000("LWPOLYLINE\n  5\n", "LWPOLYLINE\n  5\n1\n999\n").faults())
                .anyMatch(fault -> fault.equals("handle 1 used twice"));
        assertThat(readR2000("\nLWPOLYLINE\n", "\nLWPOLYLINE\n330\nFFFF\n").faults())
                .contains("LWPOLYLINE: owner or pointer FFFF does not exist");
    }
}
