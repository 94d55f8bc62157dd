package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.testing.Seeds;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
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

    @Test
    void value_ofFractionsOfManyDigits_isTheNearestDouble() {
        Seeds.each(500, draw -> {
            long a = (long) draw.whole(-(1 << 30), 1 << 30) << 30 | draw.whole(0, (1 << 30) - 1);
            long b = (long) draw.whole(1, 1 << 30) << 30 | draw.whole(0, (1 << 30) - 1);
            // The nearest double to 400 digits of the quotient, by the JDK's own rounding.
            double nearest = new BigDecimal(a)
                    .divide(new BigDecimal(b), new MathContext(400))
                    .doubleValue();
            assertThat(Ratio.of(a, b).value()).isEqualTo(nearest);
            assertThat(Ratio.of(a >> 8, (b >> 8) + 1).value())
                    .isEqualTo(new BigDecimal(a >> 8)
                            .divide(new BigDecimal((b >> 8) + 1), new MathContext(400))
                            .doubleValue());
        });
    }
}
