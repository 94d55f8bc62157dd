package collarwright.strut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlatEndsTest {

    private static RoundStock tube(Optional<Interval> wall) {
        Material steel = new Material("steel", "steel", false, 7850);
        return new RoundStock("t", "tube", steel, Interval.of(23.4), wall, false, false, 0, List.of(), "invented");
    }

    // The other way round: walk along the middle of the wall of the folded tube, two straights and two half circles
    // about
    // the ends of the closed bore, and compare with the round tube's.
    @ParameterizedTest
    @CsvSource({"23.4, 1.25", "17.9, 1.07", "60.3, 3.91", "20, 9.9"})
    void width_walkedAlongTheMiddleOfTheWall_keepsItsLength(double od, double wall) {
        double straight = FlatEnds.width(od, wall) - 2 * wall;
        double walked = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double from = StrictMath.PI * i / steps;
            double to = StrictMath.PI * (i + 1) / steps;
            walked += StrictMath.hypot(
                    wall / 2 * (StrictMath.cos(to) - StrictMath.cos(from)),
                    wall / 2 * (StrictMath.sin(to) - StrictMath.sin(from)));
        }

        assertThat(2 * straight + 2 * walked).isCloseTo(StrictMath.PI * (od - wall), within(1e-6));
    }

    @Test
    void width_ofTube_isFromItsNominalSizes_andOfBarRefused() {
        assertThat(FlatEnds.width(tube(Optional.of(Interval.of(1.25))))).isEqualTo(FlatEnds.width(23.4, 1.25));
        assertThat(FlatEnds.thickness(tube(Optional.of(Interval.of(1.25))))).isEqualTo(2.5);
        assertThatThrownBy(() -> FlatEnds.width(tube(Optional.empty()))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "NaN", "Infinity"})
    void flatEnds_ofNoLength_areRefused(double length) {
        assertThatThrownBy(() -> new FlatEnds(length)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 5", "5, 0", "NaN, 5", "5, -1"})
    void plugs_withoutSize_areRefused(double length, double diameter) {
        assertThatThrownBy(() -> new EndPlugs(length, diameter)).isInstanceOf(IllegalArgumentException.class);
    }
}
