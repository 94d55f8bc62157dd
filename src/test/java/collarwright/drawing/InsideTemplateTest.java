package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.testing.Seeds;
import collarwright.tooling.Hole;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Templates laid in a pipe by the hand of a reader who stands on its axis: he looks along +x at the wall, TOP (+z) up, so
 * his right hand points along x × z = −y. Nothing here knows which way azimuth runs on the paper.
 */
class InsideTemplateTest {
    private record Space(double x, double y, double z) {}

    private static WrapSettings inside(WrapSettings usual, double wall) {
        CollarBody body = new CollarBody(
                usual.body().outerRadius(), Interval.of(wall), usual.body().width());
        return new WrapSettings(usual.pattern(), body, true, usual.paper(), false, usual.order(), Side.INSIDE);
    }

    private static List<Point> pilots(Sheet sheet) {
        return sheet.shapes(Role.MARK).stream()
                .filter(Circle.class::isInstance)
                .map(shape -> ((Circle) shape).centre())
                .toList();
    }

    /** Lays a point of the sheet on the bore, the pilot of hole 1 on +x; the length of the paper is once round. */
    private static Space laid(Sheet sheet, Point p, double bore) {
        double turn = 2
                * StrictMath.PI
                * (p.x() - pilots(sheet).get(0).x())
                / sheet.body().width();
        double middle = (sheet.body().bottom() + sheet.body().top()) / 2;
        return new Space(bore * StrictMath.cos(turn), -bore * StrictMath.sin(turn), p.y() - middle);
    }

    /** Azimuth is clockwise seen from above: from +x toward −y. */
    private static double off(Space at, Hole hole) {
        double dx = StrictMath.cos(hole.azimuth());
        double dy = -StrictMath.sin(hole.azimuth());
        double along = at.x() * dx + at.y() * dy;
        double across = at.x() * dy - at.y() * dx;
        return along > 0 ? StrictMath.hypot(across, at.z() - hole.height()) : Double.POSITIVE_INFINITY;
    }

    @Test
    void sheet_ofRolledStrip_saysThatItsHolesAreThoseOfPipe() {
        WrapSettings drilled = inside(ExampleCollars.lopsided(), 4);
        WrapSettings rolled = new WrapSettings(
                drilled.pattern(), drilled.body(), true, drilled.paper(), false, drilled.order(), Side.INSIDE, true);

        assertThat(WrapTemplate.of(rolled).sheet().heading().notes())
                .anyMatch(n -> n.startsWith("Holes as drilled in pipe."))
                .hasSize(WrapTemplate.of(drilled).sheet().heading().notes().size() + 1);
    }

    @Test
    void length_isTheGirthOfThePapersMiddleInside() {
        WrapSettings settings = inside(ExampleCollars.lopsided(), 4);
        double id = 2 * settings.body().innerRadius();

        assertThat(WrapTemplate.of(settings).length()).isCloseTo(StrictMath.PI * (id - settings.paper()), offset(1e-9));
    }

    @Test
    void sheet_anyPattern_laidBackPutsAxesAndOutlinesWhereTheDrillRuns() {
        Seeds.each(60, draw -> {
            WrapSettings usual = WrapTemplateTest.drawn(draw);
            WrapSettings settings = inside(usual, usual.body().outerRadius() * draw.between(0.02, 0.08));
            Sheet sheet = WrapTemplate.of(settings).sheet();
            double bore = settings.body().innerRadius();
            List<Hole> holes = settings.pattern().holes();
            for (int i = 0; i < holes.size(); i++) {
                Hole hole = holes.get(i);
                assertThat(off(laid(sheet, pilots(sheet).get(i), bore), hole)).isLessThan(0.01);
                Path outline = (Path) sheet.shapes(Role.CUT_INSIDE).get(i);
                for (Vertex v : outline.vertices()) {
                    assertThat(off(laid(sheet, v.point(), bore), hole)).isCloseTo(hole.diameter() / 2, offset(1e-6));
                }
            }
        });
    }

    @Test
    void sheet_mirroredOrForTheOutside_isCaught() {
        WrapSettings settings = inside(ExampleCollars.lopsided(), 4);
        Sheet sheet = WrapTemplate.of(settings).sheet();
        Sheet outside = WrapTemplate.of(ExampleCollars.lopsided()).sheet();
        double bore = settings.body().innerRadius();
        double zero = pilots(sheet).get(0).x();
        Hole second = settings.pattern().holes().get(1);
        Point right = pilots(sheet).get(1);

        assertThat(off(laid(sheet, right, bore), second)).isLessThan(0.01);
        assertThat(off(laid(sheet, new Point(2 * zero - right.x(), right.y()), bore), second))
                .isGreaterThan(10);
        assertThat(off(laid(outside, pilots(outside).get(1), bore), second)).isGreaterThan(10);
    }

    @Test
    void sheet_saysWhereItLiesAndWhichWayItRuns() {
        Sheet sheet = WrapTemplate.of(inside(ExampleCollars.lopsided(), 4)).sheet();

        assertThat(sheet.name()).endsWith("-inside");
        assertThat(sheet.heading().drawing()).startsWith("Inside template ");
        assertThat(sheet.heading().notes().get(0))
                .startsWith("Inside, seen from the axis: ")
                .contains("TOP up", "Mirrored against the outside template");
        assertThat(sheet.heading().notes()).anyMatch(n -> n.contains(" ID 102 mm, measured."));
        assertThat(sheet.heading().table().get(0)).contains("right of 0° line").doesNotContain("left of 0° line");
        assertThat(sheet.shapes(Role.MARK))
                .anyMatch(s -> s instanceof Label l && l.text().startsWith("lay inside, this face to the axis"))
                .anyMatch(s -> s instanceof Label l && l.text().equals("TOP"))
                .noneMatch(s -> s instanceof Label l && l.text().contains("wrap outside"));
    }
}
