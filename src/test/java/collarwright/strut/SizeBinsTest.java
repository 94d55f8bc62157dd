package collarwright.strut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Interval;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizeBinsTest {

    // By hand: 38 to 44 mm in three bins of 2 mm each.
    @Test
    void equal_dividesTheRange_withoutGapsOrOverlap() {
        SizeBins bins = SizeBins.equal(Interval.between(38, 44), 3, Optional.of(2));
        assertThat(bins.limits()).containsExactly(38.0, 40.0, 42.0, 44.0);
        assertThat(bins.count()).isEqualTo(3);
        assertThat(bins.bin(2)).isEqualTo(new Interval(40, 41, 42));
        assertThat(bins.whole()).isEqualTo(new Interval(38, 41, 44));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 7, 9})
    void equal_anyNumber_keepsBothEndsExactly(int count) {
        SizeBins bins = SizeBins.equal(Interval.between(37.7, 44.1), count, Optional.empty());
        assertThat(bins.limits().get(0)).isEqualTo(37.7);
        assertThat(bins.limits().get(count)).isEqualTo(44.1);
        for (int bin = 1; bin <= count; bin++) {
            assertThat(bins.bin(bin).max() - bins.bin(bin).min()).isCloseTo(6.4 / count, within(1e-12));
        }
    }

    @Test
    void limits_thatDoNotAscend_areRefused() {
        refused(List.of(38.0, 40.0), Optional.empty());
        refused(List.of(38.0, 40.0, 40.0), Optional.empty());
        refused(List.of(0.0, 40.0, 41.0), Optional.empty());
        refused(List.of(38.0, Double.NaN, 41.0), Optional.empty());
        refused(List.of(38.0, 40.0, Double.POSITIVE_INFINITY), Optional.empty());
        refused(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0), Optional.empty());
        refused(List.of(38.0, 40.0, 41.0), Optional.of(0));
        refused(List.of(38.0, 40.0, 41.0), Optional.of(3));
    }

    private static void refused(List<Double> limits, Optional<Integer> chosen) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SizeBins(limits, chosen));
    }
}
