package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnglesTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "180, 3.141592653589793", "-90, -1.5707963267948966", "1e-300, 1.7453292519943295e-302"})
    void radians_degrees_agree(double degrees, double radians) {
        assertThat(Angles.radians(degrees)).isCloseTo(radians, within(1e-15 * StrictMath.abs(radians)));
        assertThat(Angles.degrees(radians)).isCloseTo(degrees, within(1e-15 * StrictMath.abs(degrees)));
    }

    @Test
    void degrees_awkwardNumbers_stayWhatTheyAre() {
        assertThat(Angles.degrees(Double.NaN)).isNaN();
        assertThat(Angles.radians(Double.POSITIVE_INFINITY)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Angles.degrees(Double.NEGATIVE_INFINITY)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(1 / Angles.degrees(-0.0)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void radians_ofDegreesOfRadians_isTheAngle() {
        Seeds.each(1000, draw -> {
            double angle = draw.between(-10, 10);
            assertThat(Angles.radians(Angles.degrees(angle))).isCloseTo(angle, within(1e-15 * 10));
        });
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0° 00'",
        "58.2825, 58° 17'",
        "63.4349, 63° 26'",
        "72, 72° 00'",
        "9.0083, 9° 00'",
        "9.0084, 9° 01'",
        "59.9917, 60° 00'",
        "59.9916, 59° 59'",
        "359.995, 360° 00'",
        "1e-12, 0° 00'"
    })
    void degreesMinutes_angle_roundsAndCarries(double degrees, String text) {
        assertThat(Angles.degreesMinutes(Angles.radians(degrees))).isEqualTo(text);
    }

    @Test
    void degreesMinutes_minusZero_isZero() {
        assertThat(Angles.degreesMinutes(-0.0)).isEqualTo("0° 00'");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1e-9, -1, -1e300})
    void degreesMinutes_notAnAngle_isRefused(double radians) {
        assertThatIllegalArgumentException().isThrownBy(() -> Angles.degreesMinutes(radians));
    }
}
