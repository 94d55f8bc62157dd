package collarwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IntervalTest {
    @Test
    void of_value_hasNoSpread() {
        assertThat(Interval.of(40)).isEqualTo(new Interval(40, 40, 40));
        assertThat(Interval.of(-0.0).min()).isZero();
        assertThat(Interval.of(Double.MAX_VALUE).max()).isEqualTo(Double.MAX_VALUE);
    }

    @Test
    void between_limits_takesTheMiddle() {
        assertThat(Interval.between(6.2, 6.6)).isEqualTo(new Interval(6.2, (6.2 + 6.6) / 2, 6.6));
        assertThat(Interval.between(5, 5)).isEqualTo(Interval.of(5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void interval_notFinite_isRefused(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.of(value));
        for (int i = 0; i < 3; i++) {
            double min = i == 0 ? value : 1;
            double nominal = i == 1 ? value : 2;
            double max = i == 2 ? value : 3;
            assertThatIllegalArgumentException().isThrownBy(() -> new Interval(min, nominal, max));
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 3", "1, 3, 2", "3, 2, 1", "0, -1e-300, 0"})
    void interval_outOfOrder_isRefused(double min, double nominal, double max) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Interval(min, nominal, max));
    }

    @Test
    void between_tooLargeToHalve_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.between(1.5e308, 1.6e308));
    }

    @Test
    void between_drawnLimits_liesInOrder() {
        Seeds.each(500, draw -> {
            List<Double> ends = draw.numbers(2, -100, 100).stream().sorted().toList();
            Interval interval = Interval.between(ends.get(0), ends.get(1));
            assertThat(interval.nominal()).isBetween(interval.min(), interval.max());
        });
    }
}
