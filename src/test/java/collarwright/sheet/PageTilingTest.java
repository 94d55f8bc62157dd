package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import collarwright.drawing.Box;
import collarwright.sheet.PageTiling.Room;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageTilingTest {
    private static final Room LYING = new Room(260, 160);
    private static final Room STANDING = new Room(175, 245);

    @Test
    void of_smallDrawing_takesOnePage() {
        PageTiling tiling = PageTiling.of(new Box(10, 20, 200, 100), List.of(), LYING, STANDING);
        assertThat(tiling.count()).isEqualTo(1);
        assertThat(tiling.landscape()).isTrue();
        assertThat(tiling.tile(0)).isEqualTo(new Box(10, 20, 200, 100));
        assertThat(tiling.crosses(2, 3)).isEmpty();
    }

    @Test
    void of_tallDrawing_takesStandingPages() {
        PageTiling tiling = PageTiling.of(new Box(0, 0, 150, 240), List.of(), LYING, STANDING);
        assertThat(tiling.landscape()).isFalse();
        assertThat(tiling.count()).isEqualTo(1);
    }

    @Test
    void of_drawingThatJustFits_takesNoPageMore() {
        assertThat(PageTiling.of(new Box(0, 0, 510, 100), List.of(), LYING, STANDING)
                        .count())
                .isEqualTo(2);
        assertThat(PageTiling.of(new Box(0, 0, 510.1, 100), List.of(), LYING, STANDING)
                        .count())
                .isEqualTo(3);
    }

    @Test
    void tiles_anyDrawing_coverItWithExactOverlaps() {
        Seeds.each(500, draw -> {
            Box area = new Box(30, 40, 30 + draw.between(20, 1500), 40 + draw.between(20, 700));
            List<Box> holes = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double x = draw.between(area.left(), area.right());
                double y = draw.between(area.bottom(), area.top());
                holes.add(new Box(x, y, x + 30, y + 30));
            }
            PageTiling tiling = PageTiling.of(area, holes, LYING, STANDING);
            Room room = tiling.landscape() ? LYING : STANDING;
            Box all = tiling.tile(0);
            for (int page = 0; page < tiling.count(); page++) {
                Box tile = tiling.tile(page);
                all = all.with(tile);
                assertThat(tile.width()).isLessThanOrEqualTo(room.width() + 1e-6);
                assertThat(tile.height()).isLessThanOrEqualTo(room.height() + 1e-6);
                if (page % tiling.columns() > 0) {
                    assertThat(tiling.tile(page - 1).right() - tile.left()).isCloseTo(10, offset(1e-9));
                }
                if (page >= tiling.columns()) {
                    Box above = tiling.tile(page - tiling.columns());
                    assertThat(tile.top() - above.bottom()).isCloseTo(10, offset(1e-9));
                }
            }
            assertThat(all).isEqualTo(area);
            assertThat(tiling.tallest()).isLessThanOrEqualTo(room.height() + 1e-6);
        });
    }

    @Test
    void joins_keepClearOfHolesWhereTheyCan() {
        Box area = new Box(0, 0, 367, 88);
        // The even share would cut through the middle hole.
        List<Box> holes = List.of(new Box(160, 20, 207, 60), new Box(90, 20, 137, 60), new Box(230, 20, 277, 60));
        PageTiling tiling = PageTiling.of(area, holes, LYING, STANDING);
        assertThat(tiling.count()).isEqualTo(2);
        Box overlap = new Box(tiling.tile(1).left(), 0, tiling.tile(0).right(), 88);
        assertThat(holes).noneMatch(hole -> hole.meets(overlap));
    }

    @Test
    void crosses_standInTheOverlapsOfBothPages() {
        PageTiling tiling = PageTiling.of(new Box(0, 0, 700, 300), List.of(), LYING, STANDING);
        assertThat(tiling.rows()).isEqualTo(2);
        assertThat(tiling.crosses(2, 3)).isNotEmpty().allSatisfy(cross -> {
            Box at = Box.of(cross.at(), cross.at());
            long pages = 0;
            for (int page = 0; page < tiling.count(); page++) {
                pages += tiling.tile(page).holds(at) ? 1 : 0;
            }
            assertThat(pages).isGreaterThanOrEqualTo(2);
        });
    }

    @Test
    void of_pageWithoutRoom_isRefused() {
        assertThatThrownBy(() -> PageTiling.of(new Box(0, 0, 100, 100), List.of(), new Room(15, 100), STANDING))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
