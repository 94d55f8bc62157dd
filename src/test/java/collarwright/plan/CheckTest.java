package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTest {
    private static final Where PLACE = new Where.Part("pattern CA / hole 3");

    private static Check check(Quantity quantity, Sense sense, double value, OptionalDouble stop, double warn) {
        return new Check(
                Code.WEB_TO_EDGE,
                PLACE,
                quantity,
                sense,
                value,
                new Check.Limits(stop, warn, "geometry"),
                List.of("cut it wider"));
    }

    @ParameterizedTest
    @CsvSource({
        "25, ",
        "20, ",
        "19.9999999999, ",
        "19.99999999, WARN",
        "1, WARN",
        "0, WARN",
        "-0.0, WARN",
        "-1e-10, WARN",
        "-1e-8, STOP",
        "-1e300, STOP",
        "-Infinity, STOP",
        "NaN, STOP",
        "Infinity, "
    })
    void verdict_atLeast_stopsBelowItsLimits(double value, Level level) {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, value, OptionalDouble.of(0), 20)
                        .verdict())
                .isEqualTo(Optional.ofNullable(level));
    }

    @ParameterizedTest
    @CsvSource({
        "1, ",
        "2, ",
        "2.0000000001, ",
        "2.00000001, WARN",
        "5, WARN",
        "5.1, STOP",
        "Infinity, STOP",
        "NaN, STOP",
        "-Infinity, ",
        "4.9e-324, "
    })
    void verdict_atMost_stopsAboveItsLimits(double value, Level level) {
        assertThat(check(Quantity.ANGLE, Sense.AT_MOST, value, OptionalDouble.of(5), 2)
                        .verdict())
                .isEqualTo(Optional.ofNullable(level));
    }

    @Test
    void verdict_noStop_onlyWarns() {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, -1e9, OptionalDouble.empty(), 0)
                        .verdict())
                .contains(Level.WARN);
    }

    @Test
    void margin_eachSense_isNegativeBeyondTheWarning() {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, 15, OptionalDouble.of(0), 20)
                        .margin())
                .isEqualTo(-5);
        assertThat(check(Quantity.ANGLE, Sense.AT_MOST, 15, OptionalDouble.of(0), 20)
                        .margin())
                .isEqualTo(5);
    }

    @Test
    void finding_length_namesTheLimitThatWasMissed() {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, 12.345, OptionalDouble.of(0), 20)
                        .finding())
                .contains(Finding.warn(Code.WEB_TO_EDGE, PLACE, "at least 20.00 mm", "12.35 mm", "cut it wider"));
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, -3, OptionalDouble.of(0), 20)
                        .finding())
                .contains(Finding.stop(Code.WEB_TO_EDGE, PLACE, "at least 0.00 mm", "-3.00 mm", "cut it wider"));
    }

    @Test
    void finding_angle_isShownInDegrees() {
        double degree = StrictMath.PI / 180;
        assertThat(check(Quantity.ANGLE, Sense.AT_MOST, 3 * degree, OptionalDouble.empty(), 2 * degree)
                        .finding())
                .contains(Finding.warn(Code.WEB_TO_EDGE, PLACE, "at most 2.00°", "3.00°", "cut it wider"));
    }

    @Test
    void finding_notFinite_isSaidInWords() {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, Double.NEGATIVE_INFINITY, OptionalDouble.of(0), 20)
                        .finding())
                .map(Finding::found)
                .contains("nothing left");
        assertThat(check(Quantity.LENGTH, Sense.AT_MOST, Double.POSITIVE_INFINITY, OptionalDouble.of(0), 20)
                        .finding())
                .map(Finding::found)
                .contains("no limit");
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, Double.NaN, OptionalDouble.of(0), 20)
                        .finding())
                .map(Finding::found)
                .contains("nothing left");
    }

    @Test
    void finding_passed_isNone() {
        assertThat(check(Quantity.LENGTH, Sense.AT_LEAST, 21, OptionalDouble.of(0), 20)
                        .finding())
                .isEmpty();
    }
}
