package collarwright.pack;

import static collarwright.drawing.ExampleCollars.hole;
import static collarwright.drawing.ExampleCollars.saw;
import static collarwright.drawing.ExampleCollars.settings;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.drawing.ExampleCollars;
import collarwright.drawing.WrapTemplate;
import collarwright.tooling.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoleTableCsvTest {

    @Test
    void print_pattern_hasOneLineForEveryHole() {
        // Arcs: 50° of 110 mm pipe is 47.997 mm on the pipe, 48.040 mm on 0.1 mm paper; the outline of 40 mm is
        // 2 × 55.05 × arcsin(20 / 55) = 40.976 mm wide.
        assertThat(HoleTableCsv.print(WrapTemplate.of(ExampleCollars.lopsided()))
                        .lines())
                .containsExactly(
                        "hole,azimuth_deg,azimuth_dm,arc_on_od_mm,arc_on_template_mm,from_left_end_mm,height_mm,"
                                + "cutter,cutter_marked,as_drilled_mm,outline_width_mm,outline_height_mm",
                        "1,0.0000,0 deg 00 min,0.000,0.000,254.613,0.000,HS-40 mm,40 mm,40.000,40.976,40.000",
                        "2,50.0000,50 deg 00 min,47.997,48.040,206.573,0.000,HS-40 mm,40 mm,40.000,40.976,40.000",
                        "3,170.0000,170 deg 00 min,163.188,163.337,91.276,0.000,HS-40 mm,40 mm,40.000,40.976,40.000");
    }

    @Test
    void print_anyCutterName_isOneHarmlessCell() {
        Pattern pattern = new Pattern(
                "CA",
                1,
                List.of(
                        hole(1, 0, 1.25, saw(40, "1-3/4\", worn")),
                        hole(2, 90, -0.0001, saw(40, "=2+2")),
                        hole(3, 200, 0, saw(40, "-5"))),
                "X");
        List<String> lines = HoleTableCsv.print(WrapTemplate.of(settings(pattern, 160, 80, true)))
                .lines()
                .toList();
        assertThat(lines.get(1)).contains(",1.250,\"HS-1-3/4\"\", worn\",\"1-3/4\"\", worn\",40.000,");
        assertThat(lines.get(2)).contains(",0.000,HS-=2+2,'=2+2,40.000,");
        assertThat(lines.get(3)).contains(",HS--5,'-5,40.000,");
    }

    @Test
    void print_lines_endInCarriageReturnAndLineFeed() {
        String text = HoleTableCsv.print(WrapTemplate.of(ExampleCollars.six()));
        assertThat(text).endsWith("\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
        assertThat(text.chars().allMatch(c -> c < 127)).isTrue();
    }
}
