package collarwright.drawing;

import static collarwright.drawing.ExampleCollars.pattern;
import static collarwright.drawing.ExampleCollars.saw;
import static collarwright.drawing.ExampleCollars.settings;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import collarwright.testing.Seeds;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WrapSheetTest {

    private static List<Label> labels(Sheet sheet, Role role) {
        return sheet.shapes(role).stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    private static List<String> texts(Sheet sheet, Role role) {
        return labels(sheet, role).stream().map(Label::text).toList();
    }

    private static String notes(WrapSettings settings) {
        return String.join("\n", WrapTemplate.of(settings).sheet().heading().notes());
    }

    @Test
    void sheet_saysOnTheWrapWhatTheBenchNeeds() {
        for (WrapSettings settings : ExampleCollars.all()) {
            Sheet sheet = WrapTemplate.of(settings).sheet();
            List<String> marks = texts(sheet, Role.MARK);
            String id = settings.pattern().id();
            assertThat(marks).contains("TOP", "0°", id, "rev HKVWTXNA");
            settings.pattern().holes().forEach(hole -> assertThat(marks).contains(hole.number() + ""));
            assertThat(marks.stream().filter(text -> text.contains("drills")))
                    .hasSameSizeAs(settings.pattern().holes());
            assertThat(String.join("\n", sheet.heading().notes())).doesNotContain("No room");
            labels(sheet, Role.MARK)
                    .forEach(label ->
                            assertThat(sheet.body().holds(label.bounds())).isTrue());
        }
    }

    @Test
    void sheet_roomyCollar_hasLargeLetters() {
        Sheet sheet = WrapTemplate.of(ExampleCollars.six()).sheet();
        for (Label label : labels(sheet, Role.MARK)) {
            boolean number = label.text().matches("[1-6]");
            assertThat(label.height()).as(label.text()).isGreaterThanOrEqualTo(number ? 4 : 3.5);
        }
    }

    @Test
    void sheet_saysOnceOutsideTheWrapHowToUseIt() {
        Sheet sheet = WrapTemplate.of(ExampleCollars.six()).sheet();
        String notes = String.join(" ", texts(sheet, Role.NOTE));
        assertThat(notes)
                .contains("Wrap outside, this face out, TOP up.")
                .contains("Print at 100 %, no scaling. Check the bars.")
                .contains("OD 160 mm, nominal, not measured")
                .contains("Length 502.97 mm for paper of 0.1 mm")
                .contains("seam gap 0.0 mm")
                .contains("12 collars")
                .contains("no kerf")
                .contains("Bee-yard windbreak, east slope")
                .contains("Wrap template CA rev HKVWTXNA");
        assertThat(notes(ExampleCollars.four()))
                .contains("OD 160.1 mm, measured.")
                .doesNotContain("nominal, not");
    }

    @Test
    void sheet_collarThatLooksAlike_warns() {
        assertThat(notes(ExampleCollars.five())).contains("Looks alike");
        assertThat(notes(settings(pattern("CA", saw(30), 0, 60, 180), 160, 80, true)))
                .doesNotContain("Looks alike");
    }

    @Test
    void sheet_barsBothWays_areTrue() {
        Sheet sheet = WrapTemplate.of(ExampleCollars.three()).sheet();
        List<Box> lines = sheet.shapes(Role.NOTE).stream()
                .filter(Line.class::isInstance)
                .map(Shape::bounds)
                .toList();
        for (double length : new double[] {100, 101.6}) {
            assertThat(lines).anyMatch(box -> StrictMath.abs(box.width() - length) < 1e-9 && box.height() == 0);
            assertThat(lines).anyMatch(box -> StrictMath.abs(box.height() - length) < 1e-9 && box.width() == 0);
        }
        assertThat(lines).allMatch(box -> !sheet.body().meets(box));
    }

    @Test
    void sheet_edges_areOneClosedRectangle() {
        Sheet sheet = WrapTemplate.of(ExampleCollars.six()).sheet();
        assertThat(sheet.shapes(Role.CUT_OUTSIDE)).containsExactly(Path.rectangle(sheet.body()));
        assertThat(sheet.body().width()).isCloseTo(StrictMath.PI * 160.1, offset(1e-9));
        assertThat(sheet.body().height()).isCloseTo(80, offset(1e-9));
        assertThat(sheet.size().grown(-Sheet.MARGIN).holds(sheet.extents())).isTrue();
    }

    @Test
    void sheet_zeroLine_runsFromEdgeToEdgeButForLetters() {
        Sheet sheet = WrapTemplate.of(ExampleCollars.five()).sheet();
        double zero =
                sheet.body().left() + WrapTemplate.of(ExampleCollars.five()).zeroFromLeftEnd();
        List<Box> pieces = sheet.shapes(Role.MARK).stream()
                .filter(Line.class::isInstance)
                .map(Shape::bounds)
                .filter(box -> box.width() == 0 && StrictMath.abs(box.left() - zero) < 1e-9)
                .toList();
        assertThat(pieces.get(0).bottom()).isEqualTo(sheet.body().bottom());
        assertThat(pieces.get(pieces.size() - 1).top()).isEqualTo(sheet.body().top());
        double drawn = pieces.stream().mapToDouble(Box::height).sum();
        assertThat(drawn).isBetween(55.0, 76.0);
        for (Label label : labels(sheet, Role.MARK)) {
            assertThat(pieces).noneMatch(box -> box.meets(label.bounds().grown(0.3)));
        }
    }

    @Test
    void sheet_anyPattern_lettersTouchNeitherOneAnotherNorAnyCut() {
        Seeds.each(
                60,
                draw -> lettersKeepApart(
                        WrapTemplate.of(WrapTemplateTest.drawn(draw)).sheet()));
        ExampleCollars.all()
                .forEach(settings -> lettersKeepApart(WrapTemplate.of(settings).sheet()));
    }

    private static void lettersKeepApart(Sheet sheet) {
        List<Label> labels = Stream.concat(labels(sheet, Role.MARK).stream(), labels(sheet, Role.NOTE).stream())
                .toList();
        for (int i = 0; i < labels.size(); i++) {
            for (int k = 0; k < i; k++) {
                assertThat(labels.get(i).bounds().grown(0.2).meets(labels.get(k).bounds()))
                        .as(labels.get(i) + " and " + labels.get(k))
                        .isFalse();
            }
        }
        for (Label label : labels) {
            Box box = label.bounds();
            for (Shape cut : sheet.shapes(Role.CUT_INSIDE)) {
                for (Vertex v : ((Path) cut).vertices()) {
                    assertThat(box.grown(0.4).meets(Box.of(v.point(), v.point())))
                            .as(label.text())
                            .isFalse();
                }
            }
            for (Shape mark : sheet.shapes(Role.MARK)) {
                assertThat(mark instanceof Line && box.meets(mark.bounds()))
                        .as(label.text() + " on " + mark)
                        .isFalse();
            }
        }
    }

    @Test
    void sheet_tinyCollar_marksGiveWayButHolesAndTopStay() {
        WrapSettings tiny = settings(pattern("CA", saw(14.5, "1-15/16 in"), 0, 90, 180, 270), 41.3, 17, false);
        Sheet sheet = WrapTemplate.of(tiny).sheet();
        assertThat(texts(sheet, Role.MARK)).contains("TOP", "1", "2", "3", "4");
        assertThat(notes(tiny)).contains("No room on the wrap for: ").contains("1-15/16 in drills 14.5");
        lettersKeepApart(sheet);
    }

    @Test
    void sheet_foreignTitle_isSaidInLatinOnTheDrawingAndKeptInTheHeading() {
        WrapSettings usual = ExampleCollars.six();
        WrapSettings foreign = new WrapSettings(
                usual.pattern(), usual.body(), true, 0.1, new WrapSettings.OrderWords("Größe Щ 蜂", "HKVWTXNA", 1));
        Sheet sheet = WrapTemplate.of(foreign).sheet();
        assertThat(texts(sheet, Role.NOTE)).contains("Grosse Shch ?");
        assertThat(sheet.heading().job()).isEqualTo("Größe Щ 蜂");
        assertThat(notes(foreign)).contains("1 collar,");
    }

    @Test
    void sheet_longTitle_staysOnTheSheet() {
        WrapSettings usual = ExampleCollars.three();
        String title = "very long title ".repeat(40) + "x".repeat(300);
        WrapSettings wordy = new WrapSettings(
                usual.pattern(), usual.body(), true, 0.1, new WrapSettings.OrderWords(title, "HKVWTXNA", 2));
        Sheet sheet = WrapTemplate.of(wordy).sheet();
        assertThat(sheet.size().grown(-Sheet.MARGIN).holds(sheet.extents())).isTrue();
    }

    @Test
    void sheet_inchShop_saysBothUnits() {
        WrapSettings usual = ExampleCollars.lopsided();
        WrapSettings inches =
                new WrapSettings(usual.pattern(), usual.body(), true, 0.1, true, usual.order(), Side.OUTSIDE);
        // 110 mm / 25.4 = 4.331 in, 70 mm = 2.756 in, π · 110.1 mm = 345.89 mm = 13.618 in, 0.1 mm = 0.004 in.
        assertThat(notes(inches))
                .contains("70 mm (2.756 in) wide, OD 110 mm (4.331 in), measured.")
                .contains("Length 345.89 mm (13.618 in) for paper of 0.1 mm (0.004 in).")
                .contains("1/32 in of gap or overlap: OD is off by 0.01 in.");
        assertThat(notes(usual)).doesNotContain(" in)");
        // 48.04 mm = 1.891 in and 206.57 mm = 8.133 in.
        assertThat(WrapTemplate.of(inches).sheet().heading().table())
                .contains(
                        List.of("hole", "azimuth", "left of 0°", "in", "from left", "in", "height", "cutter", "drills"))
                .contains(List.of("2", "50.00°", "48.04", "1.891", "206.57", "8.133", "0.00", "40 mm", "40.00"));
    }

    @Test
    void heading_table_hasEveryHoleInOrder() {
        List<List<String>> table =
                WrapTemplate.of(ExampleCollars.lopsided()).sheet().heading().table();
        assertThat(table)
                .containsExactly(
                        List.of("hole", "azimuth", "left of 0° line", "from left end", "height", "cutter", "drills"),
                        // The seam: 170° + half of the web between 170° and 360°, holes of 40 mm in 110 mm alike.
                        List.of("1", "0.00°", "0.00", "254.61", "0.00", "40 mm", "40.00"),
                        List.of("2", "50.00°", "48.04", "206.57", "0.00", "40 mm", "40.00"),
                        List.of("3", "170.00°", "163.34", "91.28", "0.00", "40 mm", "40.00"));
    }
}
