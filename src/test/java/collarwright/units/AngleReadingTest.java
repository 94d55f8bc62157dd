package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleReadingTest {

    @ParameterizedTest
    @CsvSource({
        "0.5 deg, 0.5",
        "0.5°, 0.5",
        "0.5 degrees, 0.5",
        "2, 2",
        "-1.5 DEG, -1.5",
        "22 1/2 deg, 22.5",
        "22½°, 22.5"
    })
    void parseDegrees_reads(String text, double degrees) {
        assertThat(Angles.parseDegrees(text).found()).contains(degrees);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5 mm", "0.5 rad", "nan", "inf deg", "1e3", "0,5 deg", "deg", "1/0 deg"})
    void parseDegrees_other_isRefused(String text) {
        assertThat(Angles.parseDegrees(text).refusal()).isPresent();
    }

    @Test
    void parseDegrees_length_isNamedAsOne() {
        assertThat(Angles.parseDegrees("5 mm").refusal().orElseThrow().found())
                .isEqualTo("\"5 mm\"; mm is a unit of length");
    }

    @ParameterizedTest
    @CsvSource({"3 %, 3", "3%, 3", "3, 3", "12.5 percent, 12.5", "0 %, 0", "-0, 0", "100 %, 100"})
    void percent_reads(String text, double percent) {
        assertThat(Percents.parse(text).found()).contains(percent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1 %", "101 %", "3 mm", "nan %", "1e400", "3,5 %", "%", "1/0 %"})
    void percent_other_isRefused(String text) {
        assertThat(Percents.parse(text).refusal()).isPresent();
    }

    @Test
    void percent_awkwardNumbers_areRefusedOrInRange() {
        for (double number : collarwright.testing.Seeds.AWKWARD) {
            Percents.from(number)
                    .found()
                    .ifPresent(percent -> assertThat(percent).isBetween(0.0, 100.0));
        }
        assertThat(1 / Percents.from(-0.0).found().orElseThrow()).isPositive();
    }
}
