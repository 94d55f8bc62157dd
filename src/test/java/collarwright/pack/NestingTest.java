package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.cutting.SheetPacker;
import collarwright.drawing.Box;
import collarwright.drawing.FlatPart;
import collarwright.drawing.Layer;
import collarwright.drawing.NestedSheet;
import collarwright.drawing.Path;
import collarwright.drawing.Role;
import collarwright.testing.Seeds;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NestingTest {
    private static FlatPart part(String name, double length, double width) {
        return new FlatPart(
                name, List.of(new Layer(Role.CUT_OUTSIDE, List.of(Path.rectangle(new Box(0, 0, length, width))))));
    }

    private static Box box(NestedSheet.Place place) {
        Box part = place.part().bounds();
        double along = place.turned() ? part.height() : part.width();
        double across = place.turned() ? part.width() : part.height();
        return new Box(place.x(), place.y(), place.x() + along, place.y() + across);
    }

    /** No two boxes nearer than the gap, all within the margin: looked at pair by pair. */
    private static void apart(Nesting nesting) {
        SheetPacker.Stock stock = nesting.stock();
        Box room = new Box(
                stock.margin(), stock.margin(), stock.length() - stock.margin(), stock.width() - stock.margin());
        for (Nesting.Layout layout : nesting.layouts()) {
            List<Box> boxes = layout.places().stream().map(NestingTest::box).toList();
            for (int i = 0; i < boxes.size(); i++) {
                assertThat(room.grown(1e-6).holds(boxes.get(i))).isTrue();
                for (int k = 0; k < i; k++) {
                    Box a = boxes.get(i);
                    Box b = boxes.get(k);
                    double dx = Math.max(a.left() - b.right(), b.left() - a.right());
                    double dy = Math.max(a.bottom() - b.top(), b.bottom() - a.top());
                    assertThat(Math.max(dx, dy)).isGreaterThanOrEqualTo(stock.gap() - 1e-6);
                }
            }
        }
    }

    private static Map<String, Long> laid(Nesting nesting) {
        Map<String, Long> laid = new HashMap<>();
        nesting.layouts()
                .forEach(layout ->
                        layout.places().forEach(p -> laid.merge(p.part().name(), layout.sheets(), Long::sum)));
        return laid;
    }

    @Test
    void alike_anyOrder_liesWholeAndApart() {
        Seeds.each(60, draw -> {
            double length = draw.between(100, 500);
            double width = draw.between(20, 90);
            SheetPacker.Stock stock = new SheetPacker.Stock(
                    length + draw.between(20, 900), width + draw.between(20, 600), draw.between(0, 8), 10, draw.coin());
            List<Nesting.Wanted> wanted = List.of(
                    new Nesting.Wanted(part("a", length, width), draw.whole(1, 200)),
                    new Nesting.Wanted(part("b", length, width), draw.whole(1, 9)),
                    new Nesting.Wanted(part("c", length, width), draw.whole(1, 60)));

            Nesting nesting = Nesting.alike(wanted, stock);

            apart(nesting);
            wanted.forEach(w -> assertThat(laid(nesting)).containsEntry(w.part().name(), w.pieces()));
            assertThat(nesting.sheets()).isGreaterThanOrEqualTo(nesting.leastSheets());
            assertThat(nesting.used())
                    .isCloseTo(
                            nesting.parts() * length * width / (nesting.sheets() * stock.length() * stock.width()),
                            within(1e-9));
            // As many as rows of parts that all lie one way, or more.
            long rows = (long) Math.floor((stock.length() - 20 + stock.gap() + 1e-9) / (length + stock.gap()))
                    * (long) Math.floor((stock.width() - 20 + stock.gap() + 1e-9) / (width + stock.gap()));
            assertThat(nesting.sheets()).isLessThanOrEqualTo((nesting.parts() + rows - 1) / rows);
        });
    }

    /** An order of a billion is counted, not laid piece by piece. */
    @Test
    void alike_hugeOrder_isAFewLayouts() {
        Nesting nesting = Nesting.alike(
                List.of(
                        new Nesting.Wanted(part("a", 300, 50), 1_000_000_000L),
                        new Nesting.Wanted(part("b", 300, 50), 7)),
                new SheetPacker.Stock(1000, 600, 5, 10, true));

        assertThat(nesting.layouts()).hasSizeLessThan(5);
        assertThat(laid(nesting)).containsEntry("a", 1_000_000_000L).containsEntry("b", 7L);
    }

    @Test
    void of_sheetsAlike_areOneLayout() {
        List<FlatPart> plates = java.util.Collections.nCopies(9, part("a", 200, 200));

        Nesting nesting = Nesting.of(plates, new SheetPacker.Stock(450, 250, 5, 10, true));

        assertThat(nesting.layouts()).extracting(Nesting.Layout::sheets).containsExactly(4L, 1L);
        apart(nesting);
        assertThat(nesting.leastSheets()).isEqualTo(4);
    }
}
