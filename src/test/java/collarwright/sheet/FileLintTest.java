package collarwright.sheet;

import static collarwright.sheet.Sheets.empty;
import static collarwright.sheet.Sheets.slot;
import static collarwright.sheet.Sheets.square;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.drawing.Circle;
import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.ScaleBars;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapTemplate;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Files that were spoilt by hand after they were written. */
class FileLintTest {
    private static final Sheet SOUND = empty().with(Role.CUT_OUTSIDE, square(30, 30, 50))
            .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10), slot(40, 66))
            .with(Role.MARK, Label.of("8% 6e", 5, 100, 50), Line.of(40, 50, 60, 50))
            .with(Role.LEAD_IN, Line.of(50, 45, 50, 40))
            .with(Role.NOTE, ScaleBars.lying(60, 6).toArray(Shape[]::new))
            .build();
    private static final String R12 = DxfWriter.print(SOUND, DxfFlavour.R12);
    private static final String R2000 = DxfWriter.print(SOUND, DxfFlavour.R2000, DxfOutlines.POLYLINES);
    private static final String SVG = SvgWriter.print(SOUND);

    /** Every fault as "expected: found". */
    private static List<String> faults(String text) {
        return FileLint.check("f", text).findings().stream()
                .peek(f -> assertThat(f.code()).isEqualTo(Code.SHEET_FAULT))
                .map(f -> f.expected() + ": " + f.found())
                .toList();
    }

    private static String spoilt(String text, String what, String by) {
        assertThat(text).contains(what);
        return text.replaceFirst(java.util.regex.Pattern.quote(what), java.util.regex.Matcher.quoteReplacement(by));
    }

    private static String dxf(String... lines) {
        return String.join("\r\n", lines) + "\r\n";
    }

    private static String entity(String... lines) {
        return spoilt(R12, dxf("ENTITIES"), dxf("ENTITIES") + dxf(lines));
    }

    @Test
    void check_whatWasWritten_isSoundInEveryFormat() {
        for (String text : List.of(
                R12,
                R2000,
                SVG,
                DxfWriter.print(SOUND, DxfFlavour.R12, DxfOutlines.POLYLINES),
                DxfWriter.print(SOUND, DxfFlavour.R2000))) {
            assertThat(faults(text)).isEmpty();
            assertThat(FileLint.check("f", text).summary())
                    .contains("sheet 200 x 100 mm, 3 closed contours (2 inside, 1 outside)")
                    .contains("bars 1 of 100 mm, 1 of 4 in");
        }
        ExampleCollars.all().forEach(settings -> {
            Sheet sheet = WrapTemplate.of(settings).sheet();
            Stream.of(
                            DxfWriter.print(sheet, DxfFlavour.R12),
                            DxfWriter.print(sheet, DxfFlavour.R2000, DxfOutlines.POLYLINES),
                            SvgWriter.print(sheet))
                    .forEach(text -> assertThat(faults(text)).isEmpty());
        });
    }

    @Test
    void check_cornerMoved_isOpenAtBothPlaces() {
        assertThat(faults(spoilt(SVG, "M30 70L80 70L80 20L30 20Z", "M30 70L80 70L80 20L30 20")))
                .containsExactly(
                        "a closed contour: two ends meet: 1 end on CUT-OUTSIDE at x 30, y 30 mm",
                        "a closed contour: two ends meet: 1 end on CUT-OUTSIDE at x 30, y 80 mm");
        assertThat(faults(spoilt(R12, dxf("11", "80.0", "21", "30.0"), dxf("11", "80.0", "21", "30.001"))))
                .contains(
                        "a closed contour: two ends meet: 1 end on CUT-OUTSIDE at x 80, y 30.001 mm",
                        "a closed contour: two ends meet: 1 end on CUT-OUTSIDE at x 80, y 30 mm");
    }

    @Test
    void check_lineTwice_isFoundAlsoTheOtherWayRound() {
        List<String> faults = faults(entity(
                "0",
                "LINE",
                "8",
                "CUT-OUTSIDE",
                "10",
                "80.0",
                "20",
                "30.0",
                "30",
                "0.0",
                "11",
                "30.0",
                "21",
                "30.0",
                "31",
                "0.0"));

        assertThat(faults).anyMatch(f -> f.startsWith("every line once: LINE on \"CUT-OUTSIDE\""));
        assertThat(faults).anyMatch(f -> f.contains("3 ends on CUT-OUTSIDE"));
    }

    @Test
    void check_strayAndCrossing_areFound() {
        List<String> faults = faults(entity(
                "0",
                "LINE",
                "8",
                "CUT-INSIDE",
                "10",
                "20.0",
                "20",
                "50.0",
                "30",
                "0.0",
                "11",
                "45.0",
                "21",
                "50.0",
                "31",
                "0.0"));

        assertThat(faults).anyMatch(f -> f.startsWith("a line of a contour: LINE on \"CUT-INSIDE\" alone"));
        assertThat(faults)
                .filteredOn(f -> f.startsWith("cut lines that keep apart"))
                .hasSize(2);
    }

    @Test
    void check_overlapAlongALine_isFound() {
        for (String other : List.of("M40 70L60 70L60 90L40 90Z", "M30 70L50 70L50 90L30 90Z")) {
            List<String> faults = faults(spoilt(
                    SVG, "<path id=\"CUT-OUTSIDE-1\"", "<path d=\"" + other + "\"/>\n<path id=\"CUT-OUTSIDE-1\""));

            assertThat(faults).anyMatch(f -> f.startsWith("cut lines that keep apart: path on \"CUT-OUTSIDE\""));
        }
    }

    @Test
    void check_holeOutsideThePart_isFound() {
        assertThat(faults(spoilt(SVG, "cx=\"50\"", "cx=\"150\"")))
                .anyMatch(f -> f.startsWith("a hole inside a part: circle"));
    }

    @Test
    void check_outsideTheSheet_isFound() {
        assertThat(faults(spoilt(SVG, "x1=\"40\" y1=\"50\"", "x1=\"4\" y1=\"50\"")))
                .containsExactly("inside the sheet, 5 mm from its edges: line on \"MARK\" at x 4, y 50 mm");
    }

    @Test
    void check_radiusNoneAndLengthNone_areFound() {
        assertThat(faults(spoilt(SVG, "r=\"10\"", "r=\"0\"")))
                .anyMatch(f -> f.equals("a radius above 0 mm: circle of radius 0 mm"));
        assertThat(faults(spoilt(SVG, "x1=\"40\" y1=\"50\"", "x1=\"60\" y1=\"50\"")))
                .containsExactly("a line with a length: line on \"MARK\" at x 60, y 50 mm");
    }

    @Test
    void check_entitiesOfOtherKinds_areRefusedByTheirLine() {
        List<Finding> findings = FileLint.check(
                        "f", entity("0", "SPLINE", "8", "CUT-INSIDE", "0", "TEXT", "8", "MARK", "30", "2.0"))
                .findings();

        assertThat(findings)
                .extracting(Finding::found)
                .contains("\"SPLINE\" on layer \"CUT-INSIDE\"", "\"TEXT\" on layer \"MARK\"", "z \"2.0\"");
        assertThat(findings.get(0).where()).isInstanceOf(Where.Text.class);
        int line = ((Where.Text) findings.get(0).where()).line();
        assertThat(R12.split("\r\n")[line - 2]).isEqualTo("ENTITIES");
        assertThat(faults(spoilt(SVG, "</svg>", "<rect/><g transform=\"scale(2)\"/></svg>")))
                .contains("svg, title, g, circle, line and path: \"rect\"", "no transform: transform \"scale(2)\"");
    }

    @Test
    void check_layers_mustBeOursAndDeclared() {
        assertThat(faults(R12.replace("CUT-INSIDE", "HOLES")))
                .anyMatch(f -> f.startsWith("layer CUT-INSIDE"))
                .anyMatch(f -> f.equals("one of our layers, declared in the file: CIRCLE on \"HOLES\""));
    }

    @Test
    void check_trueSize_isAskedOfUnitsSheetAndBars() {
        assertThat(faults(spoilt(R12, dxf("$INSUNITS", "70", "4"), dxf("$INSUNITS", "70", "1"))))
                .containsExactly("$INSUNITS 4, millimetres: 1");
        assertThat(faults(spoilt(R2000, dxf("$MEASUREMENT", "70", "1"), dxf("$MEASUREMENT", "70", "0"))))
                .containsExactly("$MEASUREMENT 1, metric: 0");
        assertThat(faults(spoilt(SVG, "viewBox=\"0 0 200 100\"", "viewBox=\"0 0 100 50\"")))
                .containsExactly("viewBox 0 0 200 100: 1 unit is 1 mm: \"0 0 100 50\"");
        Sheet small = empty().with(
                        Role.NOTE,
                        ScaleBars.lying(60, 6).stream()
                                .map(s -> s instanceof Line l ? shrunk(l) : s)
                                .toArray(Shape[]::new))
                .build();
        assertThat(faults(SvgWriter.print(small)))
                .containsExactlyInAnyOrder(
                        "a bar of 100 mm: true size: 97 mm", "a bar of 101.6 mm: true size: 98.552 mm");
    }

    private static Line shrunk(Line l) {
        boolean level = l.from().y() == l.to().y();
        return level
                ? Line.of(60, l.from().y(), 60 + (l.to().x() - 60) * 0.97, l.to().y())
                : Line.of(60 + (l.from().x() - 60) * 0.97, l.from().y(), 60 + (l.to().x() - 60) * 0.97, l.to().y());
    }

    @Test
    void check_leadInToNowhere_isFound() {
        assertThat(faults(spoilt(SVG, "y2=\"60\"", "y2=\"57\"")))
                .containsExactly("a lead-in that ends on a cut line: line on \"LEAD-IN\" to x 50, y 43 mm");
    }

    @Test
    void check_numbersThatOnlySomeRead_areRefused() {
        for (String bad : List.of("1e1", "NaN", "10,0", "Infinity", "0x10", "1000000")) {
            assertThat(faults(spoilt(SVG, "r=\"10\"", "r=\"" + bad + "\"")))
                    .anyMatch(f -> f.startsWith("r as plain digits"));
        }
    }

    @Test
    void check_brokenOff_isFoundWhereverItEnds() {
        for (String text : List.of(R12, R2000, SVG)) {
            for (int end = 20; end < text.length() - 3; end += text.length() / 97) {
                String cut = text.substring(0, end);
                try {
                    assertThat(FileLint.check("f", cut).findings())
                            .as("cut at " + end)
                            .isNotEmpty();
                } catch (JobException e) {
                    assertThat(e.findings()).allMatch(f -> f.code() == Code.DRAWING_FILE);
                }
            }
        }
    }

    @Test
    void check_noCutFile_isRefusedAsSuch() {
        for (String text : List.of("hello", "<svg/>", "<svg><![CDATA[x]]></svg>", "0\nEOF\n", "0\nx\ny\nz\n")) {
            assertThatThrownBy(() -> FileLint.check("f", text))
                    .isInstanceOfSatisfying(
                            JobException.class,
                            e -> assertThat(e.findings())
                                    .extracting(Finding::code)
                                    .containsExactly(Code.DRAWING_FILE));
        }
    }
}
