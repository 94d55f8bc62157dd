package collarwright.sheet;

import static collarwright.drawing.ExampleCollars.hole;
import static collarwright.drawing.ExampleCollars.saw;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.CollarBody;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.drawing.Side;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.geometry.Interval;
import collarwright.testing.Seeds;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Paper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whatever collar a job describes, its sheet is drawn, is sound and is printed; the seed of a failure is told. */
class AnyCollarTest {

    @Test
    void print_anySmallCollar_neverThrows() {
        Seeds.each(40, draw -> prints(drawn(draw, draw.between(3, 60), draw.whole(1, 8))));
    }

    @Test
    void print_anyLargeCollar_neverThrows() {
        Seeds.each(4, draw -> prints(drawn(draw, draw.between(200, 1500), draw.whole(1, 24))));
    }

    @Test
    void print_anyCrowdedNarrowCollar_neverThrows() {
        Seeds.each(10, draw -> prints(drawn(draw, draw.between(30, 120), draw.whole(9, 30))));
    }

    @Test
    void sheet_noRoomForTop_saysWhichEdgeItIs() {
        List<Hole> holes = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            holes.add(hole(i + 1, i * 45, 0, saw(4.4)));
        }
        Sheet sheet = WrapTemplate.of(new WrapSettings(
                        new Pattern("CA", 3, holes, "X"),
                        new CollarBody(6, Interval.of(1), 4.6),
                        true,
                        0.1,
                        new WrapSettings.OrderWords("Bee-yard windbreak", "HKVWTXNA", 1)))
                .sheet();
        assertThat(sheet.heading().notes()).anyMatch(note -> note.contains("the upper edge is TOP"));
        assertThat(sheet.shapes(Role.CUT_INSIDE)).hasSize(8);
    }

    private static void prints(WrapSettings settings) {
        Sheet sheet = WrapTemplate.of(settings).sheet();
        assertThat(SheetLint.check(sheet)).isEmpty();
        assertThat(SvgWriter.print(sheet)).isNotEmpty();
        assertThat(DxfWriter.print(sheet, DxfFlavour.R12)).isNotEmpty();
        for (Paper paper : Paper.values()) {
            assertThat(PdfWriter.print(sheet, PdfSettings.of(paper))).isNotEmpty();
        }
    }

    // Holes leave a thousandth of the girth between them and of the width beside them at least.
    private static WrapSettings drawn(Seeds draw, double od, int count) {
        double share = 2 * StrictMath.PI / count;
        double widest = od * StrictMath.sin(StrictMath.min(share, StrictMath.PI) / 2 * 0.998) * 0.998;
        List<Hole> holes = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < count; i++) {
            double size = widest * draw.between(0.05, 1);
            most = StrictMath.max(most, size);
            String marked = draw.oneOf(List.of("44 mm", "1-15/16 in", "no. 30", "5"));
            holes.add(hole(i + 1, i * 360.0 / count, 0, saw(size, marked)));
        }
        Pattern pattern = new Pattern("CA", 3, holes, "X");
        CollarBody body = new CollarBody(od / 2, Interval.of(od / 50), most * draw.between(1.002, 2));
        String title = draw.oneOf(List.of("", " ", "Bee-yard windbreak", "Größe Щ 蜂", "w".repeat(200)));
        return new WrapSettings(
                pattern,
                body,
                draw.coin(),
                draw.between(0, 1.2),
                draw.coin(),
                new WrapSettings.OrderWords(title, "HKVWTXNA", draw.whole(1, 3000)),
                draw.oneOf(List.of(Side.values())));
    }
}
