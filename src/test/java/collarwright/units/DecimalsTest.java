package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.testing.Seeds;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 2, 0.00",
        "-0.0, 2, 0.00",
        "-0.004, 2, 0.00",
        "-0.005, 2, -0.01",
        "0.125, 2, 0.13",
        "-0.125, 2, -0.13",
        "2.675, 2, 2.68",
        "1.005, 2, 1.01",
        "49.2125, 3, 49.213",
        "49.2125, 0, 49",
        "0.5, 0, 1",
        "-0.4999, 0, 0",
        "999.9996, 3, 1000.000",
        "1e-300, 3, 0.000",
        "4.9e-324, 0, 0",
        "1e21, 1, 1000000000000000000000.0",
        "12345678.9, 1, 12345678.9"
    })
    void fixed_finite_roundsAsAPersonReads(double value, int decimals, String text) {
        assertThat(Decimals.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 0",
        "-0.0, 3, 0",
        "-0.0001, 3, 0",
        "49.2000, 3, 49.2",
        "49.2125, 3, 49.213",
        "-1.10, 2, -1.1",
        "1200, 2, 1200",
        "1e3, 0, 1000",
        "0.5, 0, 1",
        "1e-300, 5, 0",
        "25.4, 4, 25.4"
    })
    void trimmed_finite_hasNoTrailingZeros(double value, int decimals, String text) {
        assertThat(Decimals.trimmed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void fixed_notFinite_isRefused(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Decimals.fixed(value, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Decimals.trimmed(value, 2));
    }

    @Test
    void fixed_largest_hasNoExponent() {
        assertThat(Decimals.fixed(Double.MAX_VALUE, 1)).matches("\\d{309}\\.0");
        assertThat(Decimals.trimmed(-Double.MAX_VALUE, 1)).matches("-\\d{309}");
    }

    @Test
    void fixed_otherLocale_printsTheSame() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG", "hi-IN"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(Decimals.fixed(-1234.5, 2)).isEqualTo("-1234.50");
                assertThat(Decimals.trimmed(1234.5, 2)).isEqualTo("1234.5");
                assertThat(Angles.degreesMinutes(1)).isEqualTo("57° 18'");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void fixed_drawnValues_areWithinHalfTheLastDigitAndShaped() {
        Seeds.each(2000, draw -> {
            int decimals = draw.whole(0, 6);
            double value = draw.between(-1, 1) * StrictMath.pow(10, draw.whole(-4, 8));
            String fixed = Decimals.fixed(value, decimals);
            assertThat(fixed).matches(decimals == 0 ? "-?\\d+" : "-?\\d+\\.\\d{" + decimals + "}");
            assertThat(fixed).doesNotMatch("-0+(\\.0*)?");
            BigDecimal error =
                    new BigDecimal(fixed).subtract(new BigDecimal(value)).abs();
            assertThat(error).isLessThanOrEqualTo(new BigDecimal("0.500001").movePointLeft(decimals));
            assertThat(new BigDecimal(Decimals.trimmed(value, decimals))).isEqualByComparingTo(new BigDecimal(fixed));
        });
    }

    // A tie is one of the decimal that a person reads, such as 2.675, not of the double that stands for it.
    @Test
    void fixed_nearATie_goesAsTheShortestDecimalSays() {
        Seeds.each(4000, draw -> {
            int decimals = draw.whole(0, 6);
            long whole = draw.whole(-2_000_000, 2_000_000);
            double value = new BigDecimal(2 * whole + 1)
                    .divide(BigDecimal.valueOf(2))
                    .movePointLeft(decimals)
                    .doubleValue();
            for (int step = draw.whole(0, 3); step > 0; step--) {
                value = draw.coin() ? Math.nextUp(value) : Math.nextDown(value);
            }
            BigDecimal shortest = new BigDecimal(Double.toString(value));
            BigDecimal below = shortest.movePointRight(decimals).abs().setScale(0, RoundingMode.DOWN);
            boolean up = shortest.movePointRight(decimals).abs().subtract(below).compareTo(new BigDecimal("0.5")) >= 0;
            BigDecimal expected = (up ? below.add(BigDecimal.ONE) : below).movePointLeft(decimals);
            assertThat(new BigDecimal(Decimals.fixed(value, decimals)).abs()).isEqualByComparingTo(expected);
        });
    }
}
