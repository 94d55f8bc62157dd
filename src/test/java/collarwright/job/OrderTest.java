package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderTest {

    @ParameterizedTest
    @CsvSource({
        "1, 3, 100, 103",
        "1, 3, 101, 105",
        "1, 3, 10, 11",
        "2, 3, 50, 103",
        "1, 0, 7, 7",
        "1, 3, 0, 0",
        "1, 100, 7, 14"
    })
    void made_countsSparesUpward_atLeastOneOfAType(int domes, double percent, int perDome, int made) {
        assertThat(new Order(domes, percent).made(perDome)).isEqualTo(made);
    }

    @Test
    void made_tooMany_isNoQuietOverflow() {
        assertThatThrownBy(() -> new Order(10_000, 3).made(1_000_000)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void order_outOfRange_isRefused() {
        assertThatThrownBy(() -> new Order(0, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Order(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Limits(1, 0.5, 0, 0.5, 0, 1, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
