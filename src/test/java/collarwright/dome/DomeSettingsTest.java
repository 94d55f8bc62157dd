package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DomeSettingsTest {
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 3", "64, 192", "64, 1"})
    void settings_inRange_areKept(int frequency, int rows) {
        assertThat(new DomeSettings(frequency, rows).rows()).isEqualTo(rows);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 1", "65, 1", "3, 0", "3, -1", "3, 10", "2147483647, 1", "1, 2147483647"})
    void settings_outOfRange_areRefused(int frequency, int rows) {
        assertThatIllegalArgumentException().isThrownBy(() -> new DomeSettings(frequency, rows));
    }
}
