package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.testing.Checker;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.NeedsChecker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LayerMapTest {
    private static final LayerMap OWN = map(false);
    private static final LayerMap CUT_ONLY = map(true);

    @TempDir
    private Path folder = Path.of("");

    private static LayerMap map(boolean cutOnly) {
        Map<Role, LayerMap.Style> styles = new EnumMap<>(Role.class);
        int colour = 20;
        for (Role role : Role.values()) {
            styles.put(role, new LayerMap.Style("OWN_" + role.name(), colour, "#0000" + colour));
            colour++;
        }
        return new LayerMap(styles, cutOnly);
    }

    private static Sheet sheet() {
        return Sheets.empty()
                .with(Role.CUT_OUTSIDE, Sheets.square(30, 30, 50))
                .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10.5))
                .with(Role.MARK, Label.of("O 8", 5, 40, 65))
                .with(Role.NOTE, Line.of(10, 10, 110, 10))
                .build();
    }

    private static List<String> files(LayerMap map) {
        return List.of(
                SvgWriter.print(sheet(), 0.1, map),
                DxfWriter.print(sheet(), DxfFlavour.R12, DxfOutlines.LINES_AND_ARCS, map),
                DxfWriter.print(sheet(), DxfFlavour.R2000, DxfOutlines.POLYLINES, map));
    }

    @Test
    void print_namesOfOnesOwn_areTheOnlyOnes() {
        for (String text : files(OWN)) {
            assertThat(text).contains("OWN_CUT_INSIDE", "OWN_MARK").doesNotContain("CUT-INSIDE", "CUT-OUTSIDE");
            assertThat(FileLint.check("a", text, OWN).findings()).isEmpty();
            assertThatThrownBy(() -> FileLint.check("a", text)).hasMessageContaining("DRAWING_FILE");
        }
    }

    @Test
    void print_cutOnly_leavesMarksAndNotesOut() {
        for (String text : files(CUT_ONLY)) {
            assertThat(text).contains("OWN_CUT_INSIDE").doesNotContain("OWN_MARK", "OWN_NOTE");
            assertThat(FileLint.check("a", text, CUT_ONLY).findings()).isEmpty();
        }
        assertThat(files(OWN))
                .allSatisfy(
                        text -> assertThat(FileLint.check("a", text, CUT_ONLY).findings())
                                .isNotEmpty());
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void print_cutOnly_isSoundWithColoursOfOnesOwn() throws IOException {
        for (DxfFlavour flavour : DxfFlavour.values()) {
            String text = DxfWriter.print(sheet(), flavour, DxfOutlines.LINES_AND_ARCS, CUT_ONLY);
            Path file = Files.writeString(folder.resolve(flavour.suffix() + ".dxf"), text);
            EzdxfStrict.Reading reading = EzdxfStrict.read(file).orFail();

            assertThat(reading.layers())
                    .contains("OWN_CUT_INSIDE", "OWN_CUT_OUTSIDE")
                    .doesNotContain("OWN_MARK", "OWN_NOTE");
            assertThat(reading.entities()).hasSize(5);
            assertThat(text).contains("OWN_CUT_INSIDE\r\n62\r\n20\r\n");
            // Extents are those of what is printed.
            assertThat(reading.extents().orElseThrow().width()).isEqualTo(50);
            assertThat(text).contains("$EXTMAX\r\n10\r\n80.0\r\n20\r\n80.0\r\n");
        }
    }

    @Test
    void map_withoutALayerForEachRole_isRefused() {
        Map<Role, LayerMap.Style> styles = new EnumMap<>(OWN.styles());
        styles.put(Role.NOTE, new LayerMap.Style("OWN_MARK", 1, "#000000"));
        assertThatThrownBy(() -> new LayerMap(styles, false)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LayerMap.Style("own layer", 1, "#000000"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LayerMap.Style("OWN", 256, "#000000"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
