package collarwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.geometry.Interval;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundStockTest {
    private static final Material PVC = new Material("pvc", "PVC-U", true, 1400);

    private static RoundStock pipe(Interval od, Interval wall, double outOfRound, List<Double> lengths) {
        return new RoundStock(
                "p", "pipe", PVC, od, Optional.of(wall), false, false, outOfRound, lengths, "our choice, no source");
    }

    private static RoundStock pipe(Interval od, Interval wall) {
        return pipe(od, wall, 0, List.of());
    }

    @Test
    void stock_measured_countsWithTheNominalDiameter() {
        RoundStock stock = pipe(new Interval(159.8, 160.1, 160.4), Interval.between(6.2, 6.6), 0.6, List.of(5e3, 3e3));
        assertThat(stock.outerRadius()).isEqualTo(80.05);
        assertThat(stock.lengths()).containsExactly(3e3, 5e3);
    }

    @Test
    void stock_bar_hasNoWall() {
        RoundStock bar = new RoundStock(
                "b", "bar", PVC, Interval.of(10), Optional.empty(), true, true, 0, List.of(), "our choice, no source");
        assertThat(bar.wall()).isEmpty();
        assertThat(bar.outerRadius()).isEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1e-9, -40})
    void stock_noDiameter_isRefused(double od) {
        assertThatIllegalArgumentException().isThrownBy(() -> pipe(new Interval(od, 40, 41), Interval.of(3)));
    }

    @ParameterizedTest
    @CsvSource({"0, 3", "-0.0, 3", "-1, 3", "3, 20", "3, 21", "3, 1e300"})
    void stock_wallOutsideTheRadius_isRefused(double least, double most) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pipe(new Interval(40, 41, 42), Interval.between(least, most)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void stock_outOfRoundNotALength_isRefused(double outOfRound) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pipe(Interval.of(40), Interval.of(3), outOfRound, List.of()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -3000, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void stock_lengthNotAbove0_isRefused(double length) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pipe(Interval.of(40), Interval.of(3), 0, List.of(3000.0, length)));
    }

    @Test
    void stock_tinyAndHuge_areAllowed() {
        assertThat(pipe(Interval.of(1e-300), Interval.of(1e-301)).outerRadius()).isEqualTo(5e-301);
        assertThat(pipe(Interval.of(1e300), Interval.of(1)).outerRadius()).isEqualTo(5e299);
    }
}
