package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DomeSettingsTest {
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 3", "158, 474", "64, 1"})
    void settings_inRange_areKept(int frequency, int rows) {
        assertThat(Dome.of(new DomeSettings(frequency, rows)).tierCount()).isEqualTo(rows + 1);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 1", "159, 1", "3, 0", "3, -1", "3, 10", "2147483647, 1", "1, 2147483647"})
    void settings_outOfRange_areRefused(int frequency, int rows) {
        assertThatIllegalArgumentException().isThrownBy(() -> new DomeSettings(frequency, rows));
    }
}
