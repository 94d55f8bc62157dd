package collarwright.drawing;

import static collarwright.drawing.ExampleCollars.hole;
import static collarwright.drawing.ExampleCollars.pattern;
import static collarwright.drawing.ExampleCollars.saw;
import static collarwright.drawing.ExampleCollars.settings;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.testing.Seeds;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WrapTemplateTest {

    private static WrapSettings withPaper(double od, double paper) {
        WrapSettings usual = settings(pattern("CA", saw(30), 0, 90, 200), od, 80, true);
        return new WrapSettings(usual.pattern(), usual.body(), true, paper, usual.order());
    }

    private static List<Point> pilots(Sheet sheet) {
        return sheet.shapes(Role.MARK).stream()
                .filter(Circle.class::isInstance)
                .map(shape -> ((Circle) shape).centre())
                .toList();
    }

    private static double zeroLine(Sheet sheet) {
        // The only upright line that starts on the lower edge and is longer than any tick.
        return sheet.shapes(Role.MARK).stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.from().x() == line.to().x()
                        && line.from().y() == sheet.body().bottom()
                        && line.bounds().height() > 4.5)
                .mapToDouble(line -> line.from().x())
                .findFirst()
                .orElseThrow();
    }

    private static RolledBack rolled(WrapSettings settings, Sheet sheet) {
        double middle = (sheet.body().bottom() + sheet.body().top()) / 2;
        return new RolledBack(zeroLine(sheet), middle, settings.body().outerRadius() + settings.paper() / 2);
    }

    // Mean-diameter rule for ring blanks: L = π (OD − t), with the worked example of a rolled ring, TAFE NSW, sheet
    // metal
    // toolbox: mean diameter 640 mm gives 2010.62 mm. A paper of 4 mm round 636 mm is such a ring of OD 644 mm.
    @Test
    void length_isTheMeanGirthOfThePaper() {
        assertThat(WrapTemplate.of(withPaper(636, 4)).length()).isCloseTo(2010.62, offset(0.005));
    }

    @Test
    void length_growsWithThePaper() {
        double bare = WrapTemplate.of(withPaper(160, 0)).length();
        assertThat(bare).isCloseTo(502.65, offset(0.005));
        // 0.1 mm of paper adds 0.31 mm to a wrap, 1 mm of card 3.14 mm.
        assertThat(WrapTemplate.of(withPaper(160, 0.1)).length() - bare).isCloseTo(0.31, offset(0.005));
        assertThat(WrapTemplate.of(withPaper(160, 1)).length() - bare).isCloseTo(3.14, offset(0.005));
    }

    @Test
    void sheet_rolledBack_putsEveryAxisWhereItWasPlanned() {
        for (WrapSettings settings : ExampleCollars.all()) {
            Sheet sheet = WrapTemplate.of(settings).sheet();
            double radius = settings.body().outerRadius();
            List<Double> misses = rolled(settings, sheet)
                    .misses(pilots(sheet), settings.pattern().holes(), radius);
            assertThat(misses).allSatisfy(miss -> assertThat(miss).isLessThan(1e-9));
        }
    }

    @Test
    void sheet_mirrored_isCaught() {
        WrapSettings settings = ExampleCollars.lopsided();
        Sheet sheet = WrapTemplate.of(settings).sheet();
        RolledBack rolled = rolled(settings, sheet);
        List<Point> mirrored = pilots(sheet).stream()
                .map(p -> new Point(2 * rolled.zero() - p.x(), p.y()))
                .toList();
        List<Double> misses = rolled.misses(
                mirrored, settings.pattern().holes(), settings.body().outerRadius());
        // The 0° hole cannot tell; those at 50° and 170° do.
        assertThat(misses.get(0)).isLessThan(0.01);
        assertThat(misses.subList(1, 3)).allSatisfy(miss -> assertThat(miss).isGreaterThan(10));
    }

    @Test
    void sheet_anyPattern_outlinesRolledBackAreTheDrilledHoles() {
        Seeds.each(60, draw -> {
            WrapSettings settings = drawn(draw);
            Sheet sheet = WrapTemplate.of(settings).sheet();
            double radius = settings.body().outerRadius();
            RolledBack rolled = rolled(settings, sheet);
            List<Hole> holes = settings.pattern().holes();
            assertThat(rolled.misses(pilots(sheet), holes, radius))
                    .allSatisfy(miss -> assertThat(miss).isLessThan(0.01));
            for (int i = 0; i < holes.size(); i++) {
                Path outline = (Path) sheet.shapes(Role.CUT_INSIDE).get(i);
                for (Vertex v : outline.vertices()) {
                    assertThat(fromAxis(rolled.place(v.point(), radius), holes.get(i)))
                            .isCloseTo(holes.get(i).diameter() / 2, offset(1e-6));
                }
            }
        });
    }

    // Distance from the line that the drill runs along: through the pipe's axis, square to it.
    private static double fromAxis(RolledBack.Space p, Hole hole) {
        double x = StrictMath.cos(hole.azimuth());
        double y = -StrictMath.sin(hole.azimuth());
        double z = p.z() - hole.height();
        double across = p.x() * y - p.y() * x;
        assertThat(p.x() * x + p.y() * y).isPositive();
        return StrictMath.hypot(across, z);
    }

    /** A pattern that can be drilled. */
    static WrapSettings drawn(Seeds draw) {
        double od = draw.between(40, 220);
        int count = draw.whole(1, 7);
        double widest = od * StrictMath.sin(StrictMath.PI / StrictMath.max(3, count)) * 0.75;
        List<Hole> holes = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < count; i++) {
            double at = i == 0 ? 0 : (i + draw.between(-0.08, 0.08)) * 360 / count;
            double size = widest * draw.between(0.3, 1);
            most = StrictMath.max(most, size);
            holes.add(hole(i + 1, at, draw.between(-2, 2), saw(size, draw.oneOf(List.of("44 mm", "1-15/16 in")))));
        }
        Pattern pattern = new Pattern("CA", 3, holes, "X");
        CollarBody body = new CollarBody(od / 2, Interval.of(2), (most + 6) * draw.between(1.1, 2));
        return new WrapSettings(
                pattern,
                body,
                draw.coin(),
                draw.between(0, 1.2),
                new WrapSettings.OrderWords("Bee-yard windbreak", "HKVWTXNA", draw.whole(1, 30)));
    }

    @Test
    void holes_countFromTheZeroLineToTheLeft() {
        WrapTemplate template = WrapTemplate.of(ExampleCollars.lopsided());
        double radius = 55.05;
        WrapHole second = template.holes().get(1);
        assertThat(second.arcOnPaper()).isCloseTo(radius * StrictMath.toRadians(50), offset(1e-9));
        assertThat(second.arcOnCollar()).isCloseTo(55 * StrictMath.toRadians(50), offset(1e-9));
        assertThat(template.zeroFromLeftEnd() - second.fromLeftEnd()).isCloseTo(second.arcOnPaper(), offset(1e-9));
        assertThat(template.holes())
                .allSatisfy(hole -> assertThat(hole.fromLeftEnd()).isBetween(0.0, template.length()));
        assertThat(template.fromLeftEnd(StrictMath.toRadians(50))).isCloseTo(second.fromLeftEnd(), offset(1e-9));
    }

    @Test
    void settings_thatCannotBe_areRefused() {
        assertThatThrownBy(() -> withPaper(160, -0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> withPaper(160, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> withPaper(160, 6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WrapSettings.OrderWords("t", "r", 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WrapTemplate.of(settings(pattern("CA", saw(60), 0), 50, 80, true)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
