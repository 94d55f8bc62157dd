package collarwright.sheet;

import static collarwright.sheet.Sheets.empty;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.drawing.Arc;
import collarwright.drawing.Circle;
import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.NeedsChecker;
import collarwright.testing.SvgElements;
import collarwright.testing.Xmllint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SvgWriterTest {
    @TempDir
    Path folder;

    private static Sheet small() {
        return empty().titled("Tom & <Jerry> \"é\" \u0001")
                .with(Role.CUT_OUTSIDE, Sheets.square(30, 30, 50))
                .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10.5), Sheets.slot(40, 66))
                .with(
                        Role.MARK,
                        Line.of(40, 50, 60, 50),
                        new Arc(new Point(100, 50), 10, 0, -4),
                        Label.of("L", 5, 120, 50))
                .build();
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("sheet.svg"), text);
    }

    @Test
    void print_smallSheet_isThisText() {
        assertThat(SvgWriter.print(small())).isEqualTo("""
                        <?xml version="1.0" encoding="UTF-8"?>
                        <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="200mm" height="100mm" viewBox="0 0 200 100">
                        <title>Tom &amp; &lt;Jerry&gt; &quot;é&quot; ?, Plate, rev HKVWTXNA</title>
                        <g id="CUT-INSIDE" fill="none" stroke="#ff0000" stroke-width="0.1">
                        <circle id="CUT-INSIDE-1" cx="50" cy="50" r="10.5"/>
                        <path id="CUT-INSIDE-2" d="M40 34L60 34A4 4 0 0 0 60 26L40 26A4 4 0 0 0 40 34Z"/>
                        </g>
                        <g id="CUT-OUTSIDE" fill="none" stroke="#0000ff" stroke-width="0.1">
                        <path id="CUT-OUTSIDE-1" d="M30 70L80 70L80 20L30 20Z"/>
                        </g>
                        <g id="MARK" fill="none" stroke="#000000" stroke-width="0.1">
                        <line id="MARK-1" x1="40" y1="50" x2="60" y2="50"/>
                        <path id="MARK-2" d="M110 50A10 10 0 1 1 93.4636 42.432"/>
                        <path id="MARK-3" d="M120 45L120 50L122.5 50"/>
                        </g>
                        <g id="NOTE" fill="none" stroke="#505050" stroke-width="0.1">
                        </g>
                        </svg>
                        """);
    }

    @Test
    void print_hairline_isTheCuttersOwn() {
        assertThat(SvgWriter.print(small(), 0.0254))
                .contains("stroke-width=\"0.0254\"")
                .doesNotContain("\"0.1\"");
        assertThatThrownBy(() -> SvgWriter.print(small(), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SvgWriter.print(small(), Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void print_templates_haveNothingACutterStumblesOver() {
        for (WrapSettings settings : ExampleCollars.all()) {
            String text = SvgWriter.print(WrapTemplate.of(settings).sheet());
            assertThat(text)
                    .doesNotContain("transform")
                    .doesNotContain("style")
                    .doesNotContain("<text")
                    .doesNotContain("NaN")
                    .doesNotContain("-0 ")
                    .doesNotContain("\r");
            assertThat(text.codePoints().allMatch(c -> c < 127)).isTrue();
        }
    }

    @Test
    @NeedsChecker(Checker.XMLLINT)
    void print_anyTitle_isWellFormed() throws IOException {
        assertThat(Xmllint.faults(write(SvgWriter.print(small())))).isEmpty();
        for (WrapSettings settings : ExampleCollars.all()) {
            assertThat(Xmllint.faults(
                            write(SvgWriter.print(WrapTemplate.of(settings).sheet()))))
                    .isEmpty();
        }
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void print_smallSheet_measuresTrueInABrowser() throws IOException {
        Chromium.Drawing seen = Chromium.measure(write(SvgWriter.print(small())));
        assertThat(seen.complaints()).isEmpty();
        same(seen.boxes().get("CUT-INSIDE-1"), new Box(39.5, 39.5, 21, 21), 5e-3);
        same(seen.boxes().get("CUT-INSIDE-2"), new Box(36, 26, 28, 8), 5e-3);
        same(seen.boxes().get("CUT-OUTSIDE-1"), new Box(30, 20, 50, 50), 5e-3);
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void print_template_measuresTrueInABrowser() throws IOException {
        WrapSettings settings = ExampleCollars.six();
        Sheet sheet = WrapTemplate.of(settings).sheet();
        Chromium.Drawing seen = Chromium.measure(write(SvgWriter.print(sheet)));
        assertThat(seen.complaints()).isEmpty();
        assertThat(seen.pageWidth()).isCloseTo(sheet.size().width(), offset(0.01));
        assertThat(seen.pageHeight()).isCloseTo(sheet.size().height(), offset(0.01));
        Box wrap = seen.boxes().get("CUT-OUTSIDE-1");
        assertThat(wrap.width()).isCloseTo(StrictMath.PI * 160.1, offset(0.01));
        assertThat(wrap.height()).isCloseTo(80, offset(0.01));
        for (double length : new double[] {100, 101.6}) {
            assertThat(seen.boxes().values())
                    .anyMatch(box -> StrictMath.abs(box.width() - length) < 0.005 && box.height() < 0.005);
            assertThat(seen.boxes().values())
                    .anyMatch(box -> StrictMath.abs(box.height() - length) < 0.005 && box.width() < 0.005);
        }
    }

    @Test
    @NeedsChecker(Checker.SVGELEMENTS)
    void print_template_measuresTrueInAnotherReader() throws IOException {
        Sheet sheet = WrapTemplate.of(ExampleCollars.five()).sheet();
        SvgElements.Sizes sizes = SvgElements.measure(write(SvgWriter.print(sheet)));
        assertThat(sizes.pageWidth()).isCloseTo(sheet.size().width(), offset(1e-3));
        Box hole = sizes.boxes().get("CUT-INSIDE-1");
        // 2 in wide up the pipe, 2 (R + τ/2) arcsin(p / R) round it.
        assertThat(hole.height()).isCloseTo(50.8, offset(1e-3));
        assertThat(hole.width()).isCloseTo(2 * 57.2 * StrictMath.asin(25.4 / 57.15), offset(1e-3));
    }

    private static void same(Box seen, Box expected, double slack) {
        assertThat(List.of(seen.x(), seen.y(), seen.width(), seen.height()))
                .usingElementComparator((a, b) -> StrictMath.abs(a - b) <= slack ? 0 : Double.compare(a, b))
                .containsExactly(expected.x(), expected.y(), expected.width(), expected.height());
    }
}
