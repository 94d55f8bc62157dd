package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.Lettering;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {

    private final Wrapping wrapping = new Wrapping(Lettering.load(), 4);

    private double[] widths(double room, String... fields) {
        Grid grid = new Grid(
                "trial",
                Arrays.stream(fields).map(f -> Column.words("")).toList(),
                List.of(Arrays.stream(fields).map(Cell::of).toList()));
        return new ColumnWidths(wrapping).share(grid, room);
    }

    @Test
    void columns_fillTheRoom() {
        for (double room : new double[] {20, 60, 100, 180}) {
            assertThat(Arrays.stream(widths(room, "one", "a longer field of some words", "two words"))
                            .sum())
                    .isBetween(room - 1e-9, room + 1e-9);
        }
    }

    @Test
    void shortFields_stayWhole_whileLongOnesWrap() {
        double[] widths =
                widths(100, "pattern CA / hole 1", "a very long hint that has to be broken into lines in any case");
        assertThat(widths[0]).isGreaterThanOrEqualTo(wrapping.width("pattern CA / hole 1") + 2 * ColumnWidths.PAD);
    }
}
