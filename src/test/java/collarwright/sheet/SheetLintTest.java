package collarwright.sheet;

import static collarwright.sheet.Sheets.empty;
import static collarwright.sheet.Sheets.slot;
import static collarwright.sheet.Sheets.square;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.drawing.Arc;
import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapTemplate;
import collarwright.finding.Code;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.units.Paper;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetLintTest {
    private static final Path PART = square(30, 30, 50);

    /** Every fault as "where: found". */
    private static List<String> faults(Sheets sheets) {
        return SheetLint.check(sheets.build()).stream()
                .map(f -> f.where().text().replace("sheet plate / ", "") + ": " + f.found())
                .toList();
    }

    private static void sound(Sheets sheets) {
        assertThat(faults(sheets)).isEmpty();
    }

    @Test
    void check_soundSheets_findNothing() {
        sound(empty());
        sound(empty().with(Role.CUT_OUTSIDE, PART)
                .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10), slot(40, 66))
                .with(Role.MARK, Label.of("8% 6e", 5, 100, 50), Line.of(40, 50, 60, 50)));
        ExampleCollars.all()
                .forEach(settings -> assertThat(
                                SheetLint.check(WrapTemplate.of(settings).sheet()))
                        .isEmpty());
    }

    @Test
    void check_chainOfLooseLinesAndArcs_isAContour() {
        sound(empty().with(
                        Role.CUT_OUTSIDE,
                        Line.of(40, 40, 60, 40),
                        new Arc(new Point(60, 50), 10, -StrictMath.PI / 2, StrictMath.PI),
                        Line.of(60, 60, 40, 60),
                        Line.of(40, 60, 40, 40)));
    }

    @Test
    void check_openContour_isFound() {
        assertThat(faults(empty().with(
                                Role.CUT_INSIDE,
                                Path.straight(
                                        List.of(new Point(40, 40), new Point(50, 40), new Point(50, 50)), false))))
                .containsExactly("CUT-INSIDE at 40,40: 1 that do", "CUT-INSIDE at 50,50: 1 that do");
    }

    @Test
    void check_cornerThatIsOffByALittle_isFound() {
        List<String> faults = faults(empty().with(
                        Role.CUT_OUTSIDE,
                        Line.of(40, 40, 60, 40),
                        Line.of(60, 40.001, 50, 60),
                        Line.of(50, 60, 40, 40)));
        assertThat(faults).containsExactly("CUT-OUTSIDE at 60,40: 1 that do", "CUT-OUTSIDE at 60,40.001: 1 that do");
    }

    @Test
    void check_differenceThatDoesNotPrint_isNone() {
        sound(empty().with(
                        Role.CUT_OUTSIDE,
                        Line.of(40, 40, 60, 40),
                        Line.of(60, 40.00001, 50, 60),
                        Line.of(50, 60, 40, 40)));
    }

    @Test
    void check_strayLineOnACutLayer_isFound() {
        assertThat(faults(empty().with(Role.CUT_OUTSIDE, PART, Line.of(120, 40, 130, 40))))
                .hasSize(2)
                .allMatch(fault -> fault.endsWith("1 that do"));
    }

    @Test
    void check_sameLineTwice_isFoundWhicheverWayItRuns() {
        Path turned = Path.straight(
                List.of(new Point(80, 80), new Point(80, 30), new Point(30, 30), new Point(30, 80)), true);
        assertThat(faults(empty().with(Role.CUT_OUTSIDE, PART, turned)))
                .contains("CUT-OUTSIDE 2: the same line as CUT-OUTSIDE 1");
        assertThat(faults(empty().with(Role.MARK, Line.of(40, 40, 50, 50), Line.of(50, 50, 40, 40))))
                .containsExactly("MARK 2: the same line as MARK 1");
        Circle circle = new Circle(new Point(50, 50), 5);
        assertThat(faults(empty().with(Role.MARK, circle, circle))).containsExactly("MARK 2: the same line as MARK 1");
        Label label = Label.of("A", 5, 50, 50);
        assertThat(faults(empty().with(Role.NOTE, label, label))).containsExactly("NOTE 2: the same line as NOTE 1");
        Arc arc = new Arc(new Point(50, 50), 5, 0, 1);
        Arc back = new Arc(new Point(50, 50), 5, 1, -1);
        assertThat(faults(empty().with(Role.MARK, arc, back))).containsExactly("MARK 2: the same line as MARK 1");
    }

    @Test
    void check_copyBesideItself_isFound() {
        assertThat(faults(empty().with(Role.CUT_INSIDE, square(40, 40, 10), square(40.01, 40.01, 10))))
                .anyMatch(fault -> fault.startsWith("CUT-INSIDE 1 and CUT-INSIDE 2: they meet near"));
        assertThat(faults(empty().with(Role.CUT_OUTSIDE, PART)
                        .with(Role.CUT_INSIDE, square(40, 40, 20), square(40.05, 40.05, 19.9))))
                .containsExactly("CUT-INSIDE 2: one inside another at x 40.05, y 40.05 mm");
    }

    @Test
    void check_holeOverTheEdge_isFound() {
        assertThat(faults(empty().with(Role.CUT_OUTSIDE, PART).with(Role.CUT_INSIDE, new Circle(new Point(78, 50), 5))))
                .anyMatch(fault -> fault.startsWith("CUT-INSIDE 1 and CUT-OUTSIDE 1: they meet near"));
    }

    @Test
    void check_holesThatTouch_areFound() {
        assertThat(faults(empty().with(Role.CUT_INSIDE, square(40, 40, 10), square(50, 40, 10))))
                .containsExactly("CUT-INSIDE 1 and CUT-INSIDE 2: they meet near x 50, y 40 mm");
    }

    @Test
    void check_contourThatCrossesItself_isFound() {
        Path bow = Path.straight(
                List.of(new Point(40, 40), new Point(60, 60), new Point(60, 40), new Point(40, 60)), true);
        assertThat(faults(empty().with(Role.CUT_INSIDE, bow)))
                .anyMatch(fault -> fault.startsWith("CUT-INSIDE 1 and CUT-INSIDE 1: they meet near"));
    }

    @Test
    void check_contourThatRunsBackOnItself_isFound() {
        Path spike = Path.straight(
                List.of(new Point(40, 40), new Point(60, 40), new Point(60, 60), new Point(60, 50), new Point(40, 50)),
                true);
        assertThat(faults(empty().with(Role.CUT_INSIDE, spike)))
                .anyMatch(fault -> fault.startsWith("CUT-INSIDE 1 and CUT-INSIDE 1: they meet near"));
    }

    @Test
    void check_holeOutsideThePart_isFound() {
        assertThat(faults(
                        empty().with(Role.CUT_OUTSIDE, PART).with(Role.CUT_INSIDE, new Circle(new Point(120, 50), 5))))
                .containsExactly("CUT-INSIDE 1: one outside at x 125, y 50 mm");
    }

    @Test
    void check_partInAPart_isFoundUnlessItLiesInAHole() {
        assertThat(faults(empty().with(Role.CUT_OUTSIDE, PART, square(40, 40, 10))))
                .containsExactly("CUT-OUTSIDE 2: one inside another at x 40, y 40 mm");
        sound(empty().with(Role.CUT_OUTSIDE, PART, square(40, 40, 10)).with(Role.CUT_INSIDE, square(35, 35, 20)));
    }

    @Test
    void check_linesOutsideTheSheetOrInItsMargin_areFound() {
        assertThat(faults(empty().with(Role.NOTE, Line.of(4.9, 10, 50, 10))))
                .containsExactly("NOTE 1: x 4.9 to 50, y 10 to 10 mm");
        assertThat(faults(empty().with(Role.NOTE, Line.of(10, 10, 300, 10)))).hasSize(1);
        assertThat(faults(empty().with(Role.MARK, Label.of("TOP", 5, 188, 95)))).hasSize(1);
        sound(empty().with(Role.NOTE, Line.of(5, 5, 195, 5)));
    }

    @Test
    void check_linesHalfInTheBody_areFound() {
        assertThat(faults(empty().with(Role.MARK, Line.of(10, 50, 50, 50))))
                .containsExactly("MARK 1: x 10 to 50, y 50 to 50 mm");
    }

    @Test
    void check_pointsInsteadOfLines_areFound() {
        assertThat(faults(empty().with(Role.MARK, Line.of(50, 50, 50.00001, 50))))
                .containsExactly("MARK 1: both ends at x 50, y 50 mm");
        assertThat(faults(empty().with(Role.MARK, new Circle(new Point(50, 50), 0.00002))))
                .containsExactly("MARK 1: 0.00002 mm");
        assertThat(faults(empty().with(
                                Role.MARK,
                                Path.straight(
                                        List.of(new Point(40, 40), new Point(50, 40), new Point(50, 40)), false))))
                .containsExactly("MARK 1 piece 2: both ends at x 50, y 40 mm");
        assertThat(faults(empty().with(Role.MARK, new Arc(new Point(50, 50), 0.00002, 0, 1))))
                .contains("MARK 1: 0.00002 mm");
    }

    @Test
    void check_lettersToCut_areFound() {
        assertThat(faults(empty().with(Role.CUT_INSIDE, Label.of("TOP", 5, 50, 50))))
                .containsExactly("CUT-INSIDE 1: letters \"TOP\"");
    }

    @Test
    void check_severalFaults_areAllTold() {
        assertThat(faults(empty().with(Role.MARK, Line.of(4, 50, 50, 50), Line.of(60, 60, 60, 60))
                        .with(Role.CUT_INSIDE, Line.of(70, 70, 75, 70))))
                .hasSize(5);
    }

    @Test
    void require_faultySheet_isStoppedByEveryWriter() {
        Sheet bad = empty().with(Role.MARK, Line.of(1, 1, 2, 2)).build();
        assertThatThrownBy(() -> SheetLint.require(bad))
                .isInstanceOfSatisfying(
                        JobException.class,
                        e -> assertThat(e.findings()).allSatisfy(f -> {
                            assertThat(f.code()).isEqualTo(Code.SHEET_FAULT);
                            assertThat(f.level()).isEqualTo(Level.STOP);
                            assertThat(f.where().text()).startsWith("sheet plate / MARK 1");
                        }));
        assertThatThrownBy(() -> SvgWriter.print(bad)).isInstanceOf(JobException.class);
        assertThatThrownBy(() -> DxfWriter.print(bad, DxfFlavour.R12)).isInstanceOf(JobException.class);
        assertThatThrownBy(() -> PdfWriter.print(bad, PdfSettings.of(Paper.A4))).isInstanceOf(JobException.class);
    }

    @Test
    void contours_inside_agreesWithWinding() {
        List<Point> ring = Contours.corners(slot(40, 40));
        assertThat(Contours.inside(new Point(50, 44), ring)).isTrue();
        assertThat(Contours.inside(new Point(37, 44), ring)).isTrue();
        assertThat(Contours.inside(new Point(35.9, 44), ring)).isFalse();
        assertThat(Contours.inside(new Point(37, 47.5), ring)).isFalse();
        Box box = ring.stream().map(p -> Box.of(p, p)).reduce(Box::with).orElseThrow();
        assertThat(box.grown(0.003).holds(slot(40, 40).bounds())).isTrue();
    }
}
