package collarwright.sheet;

import static collarwright.sheet.Sheets.empty;
import static collarwright.sheet.Sheets.square;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.drawing.Circle;
import collarwright.drawing.Line;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.finding.JobException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Files that a machine would read otherwise than they look, and files that another program saved and that are sound. */
class FileLintStrictTest {
    private static final Sheet SHEET = empty().with(Role.CUT_OUTSIDE, square(30, 30, 50))
            .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10))
            .with(Role.MARK, Line.of(100, 50, 110, 50))
            .build();
    private static final String R12 = DxfWriter.print(SHEET, DxfFlavour.R12, DxfOutlines.POLYLINES);
    private static final String R2000 = DxfWriter.print(SHEET, DxfFlavour.R2000, DxfOutlines.POLYLINES);
    private static final String SVG = SvgWriter.print(SHEET);

    private static List<String> faults(String text) {
        return FileLint.check("f", text).findings().stream()
                .map(f -> f.expected() + ": " + f.found())
                .toList();
    }

    private static String spoilt(String text, String what, String by) {
        assertThat(text).contains(what);
        return text.replaceFirst(java.util.regex.Pattern.quote(what), java.util.regex.Matcher.quoteReplacement(by));
    }

    /** The circle of the drawing with more groups at its end. */
    private static String circleWith(String... groups) {
        return spoilt(R12, "40\r\n10.0\r\n", "40\r\n10.0\r\n" + String.join("\r\n", groups) + "\r\n");
    }

    @Test
    void check_groupsThatHideOrTurnALine_areFound() {
        Map<String, String> bad = Map.ofEntries(
                Map.entry("210 1.0", "0 in group 210: seen from above"),
                Map.entry("220 0.5", "0 in group 220: seen from above"),
                Map.entry("230 -1.0", "1 in group 230: seen from above"),
                Map.entry("67 1", "0 in group 67: a line on the sheet, not in paper space"),
                Map.entry("60 1", "0 in group 60: a line that is shown"),
                Map.entry("39 2.0", "0 in group 39: no thickness"),
                Map.entry("6 DASHED", "an unbroken line, CONTINUOUS"),
                Map.entry("420 255", "CIRCLE without group 420"),
                Map.entry("50 0.0", "CIRCLE without group 50"),
                Map.entry("40 11.0", "group 40 once in a CIRCLE"));
        bad.forEach((group, expected) -> {
            String[] parts = group.split(" ", 2);
            assertThat(faults(circleWith(parts)))
                    .as(group)
                    .containsExactly(expected + ": group " + parts[0] + " \"" + parts[1] + "\"");
        });
    }

    @Test
    void check_groupsThatChangeNothing_areSound() {
        assertThat(faults(circleWith(
                        "210", "0.0", "220", "0.0", "230", "1.0", "67", "0", "60", "0", "39", "0.0", "6", "ByLayer")))
                .isEmpty();
        assertThat(faults(circleWith("370", "25", "999", "remark", "1001", "OTHER", "1040", "3.0")))
                .isEmpty();
        assertThat(faults(spoilt(
                        R12, "CIRCLE\r\n8\r\nCUT-INSIDE\r\n62\r\n1\r\n", "CIRCLE\r\n8\r\nCUT-INSIDE\r\n62\r\n256\r\n")))
                .isEmpty();
    }

    @Test
    void check_colours_areThoseOfTheLayers() {
        String circle = "CIRCLE\r\n8\r\nCUT-INSIDE\r\n62\r\n";
        String layer = "2\r\nCUT-INSIDE\r\n70\r\n0\r\n62\r\n";

        assertThat(faults(spoilt(R12, circle + "1", circle + "5")))
                .containsExactly("the colour of its layer, 1: group 62 \"5\"");
        assertThat(faults(spoilt(R12, layer + "1", layer + "-1")))
                .containsExactly("layers that are on: a colour above 0: layer \"CUT-INSIDE\" is off");
        assertThat(faults(spoilt(spoilt(R12, layer + "1", layer + "5"), circle + "1", circle + "5")))
                .containsExactly("layer CUT-INSIDE in its colour, 1: \"5\"");
        assertThat(faults(spoilt(SVG, "stroke=\"#ff0000\"", "stroke=\"#0000ff\"")))
                .containsExactly("layer CUT-INSIDE in its colour, #ff0000: \"#0000ff\"");
    }

    @Test
    void check_frozenLayer_isFound() {
        assertThat(faults(spoilt(R12, "2\r\nCUT-INSIDE\r\n70\r\n0", "2\r\nCUT-INSIDE\r\n70\r\n65")))
                .containsExactly("layers that are not frozen: layer \"CUT-INSIDE\" is frozen");
        assertThat(faults(spoilt(R12, "2\r\nCUT-INSIDE\r\n70\r\n0", "2\r\nCUT-INSIDE\r\n70\r\n64")))
                .isEmpty();
    }

    @Test
    void check_bitsOfPolylines_areReadOneByOne() {
        for (String text : List.of(
                spoilt(R2000, "90\r\n4\r\n70\r\n1\r\n", "90\r\n4\r\n70\r\n129\r\n"),
                spoilt(R12, "30\r\n0.0\r\n70\r\n1\r\n", "30\r\n0.0\r\n70\r\n129\r\n"))) {
            assertThat(faults(text)).isEmpty();
        }
        assertThat(faults(spoilt(R12, "30\r\n0.0\r\n70\r\n1\r\n", "30\r\n0.0\r\n70\r\n9\r\n")))
                .containsExactly("a flat polyline, 0, 1, 128 or 129 in group 70: group 70 \"9\"");
    }

    @Test
    void check_wholeTurnAsAnArc_isAClosedContour() {
        String arc = spoilt(R12, "0\r\nCIRCLE", "0\r\nARC")
                .replace("40\r\n10.0\r\n", "40\r\n10.0\r\n50\r\n0.0\r\n51\r\n360.0\r\n");

        assertThat(faults(arc)).isEmpty();
        assertThat(FileLint.check("f", arc).summary()).contains("2 closed contours (1 inside, 1 outside)");
    }

    @Test
    void check_attributesThatAreNotOurs_areFound() {
        for (String attribute : List.of(
                "display=\"none\"",
                "visibility=\"hidden\"",
                "opacity=\"0\"",
                "style=\"x\"",
                "class=\"x\"",
                "transform=\"scale(2)\"",
                "stroke-dasharray=\"1\"",
                "clip-path='url(#a)'")) {
            String name = attribute.substring(0, attribute.indexOf('='));
            assertThat(faults(spoilt(SVG, "<circle ", "<circle " + attribute + " ")))
                    .singleElement()
                    .asString()
                    .startsWith("no " + name + ": " + name + " \"");
        }
        assertThat(faults(spoilt(SVG, "cx=\"50\"", "cx=\"50\" cx=\"50\"")))
                .containsExactly("every attribute once: \"cx\" again");
        assertThat(faults(spoilt(SVG, "fill=\"none\"", "fill=\"red\"")))
                .containsExactly("fill none: lines only: fill \"red\"");
        assertThat(faults(spoilt(SVG, "stroke-width=\"0.1\"", "stroke-width=\"0\"")))
                .containsExactly("a stroke-width above 0: \"0\"");
    }

    @Test
    void check_elementsInOneAnother_areFound() {
        String nested = spoilt(SVG, "<circle ", "<svg x=\"50\"></svg><circle ");
        assertThat(faults(nested))
                .containsExactly("no x: x \"50\"", "one svg, groups in it, lines in them: svg in \"g\"");
        assertThat(faults(SVG + "<svg/>")).containsExactly("one svg, groups in it, lines in them: svg outside");
        assertThat(faults(spoilt(SVG, "</g>", "<g id=\"X\" fill=\"none\" stroke=\"#ff0000\" stroke-width=\"1\"/></g>")))
                .containsExactly("one svg, groups in it, lines in them: g in \"g\"");
    }

    @Test
    void check_idTwice_isFound() {
        assertThat(faults(spoilt(SVG, "id=\"CUT-INSIDE-1\"", "id=\"CUT-OUTSIDE-1\"")))
                .containsExactly("every id once: \"CUT-OUTSIDE-1\" again");
    }

    @Test
    void check_savedByAnotherProgram_isSound() {
        assertThat(faults("\uFEFF" + SVG)).isEmpty();
        assertThat(faults("\uFEFF" + R12)).isEmpty();
        assertThat(faults(spoilt(SVG, "<circle ", "<!-- <rect> -- \n --><circle ")))
                .isEmpty();
        assertThat(faults(spoilt(SVG, "cx=\"50\"", "cx = '50'\n"))).isEmpty();
        assertThatThrownBy(() -> faults(spoilt(SVG, "<circle ", "<!-- <circle ")))
                .isInstanceOf(JobException.class);
    }

    @Test
    void check_numbersInMessages_areWrittenPlainly() {
        assertThat(faults(spoilt(R12, "$EXTMAX\r\n10\r\n110.0", "$EXTMAX\r\n10\r\n11.0")))
                .containsExactly("$EXTMAX x where the drawing ends, 110 mm: 11 mm");
    }
}
