package collarwright.strut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.testing.Seeds;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SizeRuleTest {
    static Stream<Double> awkward() {
        return Seeds.AWKWARD.stream();
    }

    @ParameterizedTest
    @MethodSource("awkward")
    void rule_awkwardSize_isRefusedUnlessAbove0(double value) {
        if (value > 0 && value < Double.POSITIVE_INFINITY) {
            assertThat(new SizeRule.Radius(value).value()).isEqualTo(value);
            assertThat(new SizeRule.FloorDiameter(value).value()).isEqualTo(value);
            assertThat(new SizeRule.Height(value).value()).isEqualTo(value);
            assertThat(new SizeRule.LongestStrut(value).value()).isEqualTo(value);
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> new SizeRule.Radius(value));
            assertThatIllegalArgumentException().isThrownBy(() -> new SizeRule.FloorDiameter(value));
            assertThatIllegalArgumentException().isThrownBy(() -> new SizeRule.Height(value));
            assertThatIllegalArgumentException().isThrownBy(() -> new SizeRule.LongestStrut(value));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, 18",
        "-0.0, 18",
        "-1, 18",
        "NaN, 18",
        "-Infinity, 18",
        "6, 0",
        "6, -0.0",
        "6, -1",
        "6, NaN",
        "6, -Infinity"
    })
    void tieHole_notAbove0_isRefused(double diameter, double fromEnd) {
        assertThatIllegalArgumentException().isThrownBy(() -> new TieHole(diameter, fromEnd));
    }
}
