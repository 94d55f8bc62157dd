package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class MoveTest {

    private static final Grid MM = new Grid(ProgramUnits.MM, 3, 3);

    // The same block as rs274 of linuxcnc-uspace 2.9 takes it apart: G98 G83 X20 Z-6 R2 Q3 from Z25.
    @Test
    void expanded_threePecks_areThoseOfG83() {
        assertThat(new Move.Cycle(20, 2, -6, 3, 100, 25).expanded(MM, 0))
                .containsExactly(
                        new Move.Rapid(Axis.X, 20),
                        new Move.Rapid(Axis.Z, 2),
                        new Move.Feed(-1, 100),
                        new Move.Rapid(Axis.Z, 2),
                        new Move.Rapid(Axis.Z, -0.746),
                        new Move.Feed(-4, 100),
                        new Move.Rapid(Axis.Z, 2),
                        new Move.Rapid(Axis.Z, -3.746),
                        new Move.Feed(-6, 100),
                        new Move.Rapid(Axis.Z, 25));
    }

    @Test
    void expanded_withoutPecks_isOneCut() {
        assertThat(new Move.Cycle(20, 2, -6, 0, 100, 25).expanded(MM, 20))
                .containsExactly(new Move.Rapid(Axis.Z, 2), new Move.Feed(-6, 100), new Move.Rapid(Axis.Z, 25));
    }

    @Test
    void peck_drawnDepths_sumToTheDepthInNoMoreBitesThanNeeded() {
        Seeds.each(500, draw -> {
            Grid grid = new Grid(draw.oneOf(List.of(ProgramUnits.MM, ProgramUnits.INCH)), draw.whole(3, 5), 3);
            double retract = grid.snap(draw.between(20, 90));
            double bottom = grid.snap(retract - draw.between(0.5, 60));
            double most = draw.between(1, 20);
            double peck = Move.Cycle.peck(retract - bottom, most, grid);

            double reached = retract;
            int bites = 0;
            for (Move move : new Move.Cycle(0, retract, bottom, peck, 1, 99).expanded(grid, 0)) {
                if (move instanceof Move.Feed feed) {
                    double bite = reached - feed.z();
                    assertThat(bite).isPositive().isLessThanOrEqualTo(most + 3 * grid.step());
                    reached = feed.z();
                    bites++;
                }
            }
            assertThat(reached).isEqualTo(bottom);
            // A bite is up to two steps longer than equal, which may save a bite or two in a deep hole.
            assertThat(bites).isBetween(1, (int) Math.ceil((retract - bottom) / most));
        });
    }

    @Test
    void cycle_heightsOutOfOrder_isRefused() {
        assertThatThrownBy(() -> new Move.Cycle(0, 2, 3, 0, 1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Move.Cycle(0, 6, 3, 0, 1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Move.Cycle(0, 4, 3, 0, 0, 5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void grid_snap_isIdempotentAndPrintsAsItSnaps() {
        Seeds.each(500, draw -> {
            Grid grid = new Grid(
                    draw.oneOf(List.of(ProgramUnits.MM, ProgramUnits.INCH)), draw.whole(3, 5), draw.whole(3, 5));
            double length = draw.between(-500, 2000);
            double snapped = grid.snap(length);
            assertThat(grid.snap(snapped)).isEqualTo(snapped);
            assertThat(Math.abs(snapped - length)).isLessThanOrEqualTo(grid.step() / 2 + 1e-9);
            assertThat(Double.parseDouble(grid.length(snapped)) * grid.units().millimetres())
                    .isCloseTo(snapped, within(1e-9));
            assertThat(grid.snapUp(length)).isBetween(length - 1e-5 * grid.step(), length + grid.step());
            assertThat(grid.snapUp(snapped)).isEqualTo(snapped);
        });
    }
}
