package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.testing.Seeds;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;

class RatioTest {

    @Test
    void ratio_isKeptInLowestTermsWithTheSignAbove() {
        assertThat(new Ratio(BigInteger.valueOf(6), BigInteger.valueOf(-4))).isEqualTo(Ratio.of(-3, 2));
        assertThat(Ratio.of(0, 7)).isEqualTo(Ratio.ZERO);
    }

    @Test
    void ratio_nothingBelowTheLine_isRefused() {
        assertThatThrownBy(() -> Ratio.of(1, 0)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void from_decimals_isExact() {
        assertThat(Ratio.from(new BigDecimal("0.1"))).isEqualTo(Ratio.of(1, 10));
        assertThat(Ratio.from(new BigDecimal("1e3"))).isEqualTo(Ratio.of(1000, 1));
    }

    @Test
    void arithmetic_agreesWithDoublesOnWholeParts() {
        Seeds.each(500, draw -> {
            long a = draw.whole(-999, 999);
            long b = draw.whole(1, 999);
            long c = draw.whole(1, 999);
            long d = draw.whole(1, 999);
            Ratio x = Ratio.of(a, b);
            Ratio y = Ratio.of(c, d);
            assertThat(x.plus(y)).isEqualTo(Ratio.of(a * d + c * b, b * d));
            assertThat(x.times(y)).isEqualTo(Ratio.of(a * c, b * d));
            assertThat(x.over(y)).isEqualTo(Ratio.of(a * d, b * c));
            assertThat(Integer.signum(x.compareTo(y))).isEqualTo(Long.signum(a * d - c * b));
            // Both whole numbers are exact doubles, so that one division rounds once, to the nearest.
            assertThat(x.value()).isEqualTo((double) a / b);
        });
    }
}
