package collarwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.cutting.SheetPacker.Nest;
import collarwright.cutting.SheetPacker.Rectangle;
import collarwright.cutting.SheetPacker.Spot;
import collarwright.cutting.SheetPacker.Stock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;

class SheetPackerTest {
    private static final Stock BARE = new Stock(600, 400, 0, 0, false);

    private static List<Rectangle> alike(int count, double length, double width) {
        return Collections.nCopies(count, new Rectangle(length, width));
    }

    @Test
    void pack_tilesOfTheSheet_fillItWhole() {
        Nest nest = SheetPacker.pack(alike(24, 100, 100), BARE);

        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.leastSheets()).isEqualTo(1);
        assertThat(nest.used()).isEqualTo(1.0);
        assertThat(SheetPacker.pack(alike(25, 100, 100), BARE).sheets()).isEqualTo(2);
    }

    @Test
    void pack_gapAndMargin_areCountedOnce() {
        // 5 x 100 + 4 x 20 = 580 = 600 - 2 x 10; 3 x 100 + 2 x 20 = 340 of 380.
        Nest nest = SheetPacker.pack(alike(15, 100, 100), new Stock(600, 400, 20, 10, false));

        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.spots().get(0)).isEqualTo(new Spot(0, 0, 10, 10, false));
        assertThat(SheetPacker.pack(alike(15, 100, 100), new Stock(599.9, 400, 20, 10, false))
                        .sheets())
                .isEqualTo(2);
    }

    @Test
    void pack_partThatOnlyFitsTurned_isTurnedOnlyIfAllowed() {
        List<Rectangle> one = List.of(new Rectangle(300, 590));
        Stock turning = new Stock(600, 400, 2, 5, true);

        assertThat(SheetPacker.pack(one, turning).spots()).containsExactly(new Spot(0, 0, 5, 5, true));
        Stock straight = new Stock(600, 400, 2, 5, false);
        assertThat(straight.holds(one.get(0))).isFalse();
        assertThatThrownBy(() -> SheetPacker.pack(one, straight)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void pack_nothing_needsNoSheet() {
        assertThat(SheetPacker.pack(List.of(), BARE)).isEqualTo(new Nest(List.of(), 0, 0, 0));
    }

    /** Envelopes of JTS, a general library, say whether parts overlap; areas are summed anew. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void pack_drawnParts_lieApartInsideAndNearTheBound(long seed) {
        Random random = new Random(seed);
        Stock stock = new Stock(1200, 800, random.nextInt(4) * 2, random.nextInt(3) * 5, random.nextBoolean());
        List<Rectangle> parts = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            parts.add(new Rectangle(40 + random.nextInt(200), 40 + random.nextInt(200)));
        }

        Nest nest = SheetPacker.pack(parts, stock);

        assertThat(nest.spots()).extracting(Spot::part).containsExactlyElementsOf(sequence(parts.size()));
        double area = 0;
        List<Envelope> placed = new ArrayList<>();
        for (Spot spot : nest.spots()) {
            Rectangle part = parts.get(spot.part());
            area += part.length() * part.width();
            double along = spot.turned() ? part.width() : part.length();
            double across = spot.turned() ? part.length() : part.width();
            Envelope box = new Envelope(spot.x(), spot.x() + along, spot.y(), spot.y() + across);
            Envelope room = new Envelope(0, stock.length(), 0, stock.width());
            room.expandBy(1e-6 - stock.margin());
            assertThat(room.contains(box))
                    .as("seed %d, part %d", seed, spot.part())
                    .isTrue();
            Envelope wide = new Envelope(box);
            wide.expandBy(stock.gap() - 1e-6);
            // Sheets lie apart in the list of envelopes.
            wide.translate(0, spot.sheet() * 10_000.0);
            box.translate(0, spot.sheet() * 10_000.0);
            assertThat(placed).as("seed %d, part %d", seed, spot.part()).noneMatch(wide::intersects);
            placed.add(box);
        }
        assertThat(nest.used())
                .isCloseTo(area / (nest.sheets() * 1200.0 * 800), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(nest.sheets()).as("seed %d", seed).isBetween(nest.leastSheets(), nest.leastSheets() + 1);
        assertThat(SheetPacker.pack(parts, stock)).isEqualTo(nest);
    }

    private static List<Integer> sequence(int count) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(i);
        }
        return all;
    }
}
