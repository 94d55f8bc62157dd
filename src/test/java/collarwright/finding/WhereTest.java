package collarwright.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhereTest {
    @Test
    void text_eachKind_readsAsAPlace() {
        assertThat(new Where.Text("Größe é/job.toml", 12, 3).text()).isEqualTo("Größe é/job.toml:12:3");
        assertThat(new Where.Part("pattern CA / hole 3").text()).isEqualTo("pattern CA / hole 3");
        assertThat(new Where.Path("C:\\jobs\\é x").text()).isEqualTo("C:\\jobs\\é x");
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "-1, 5", "-2147483648, -2147483648"})
    void text_countsFromOne_elseRefused(int line, int column) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Where.Text("job.toml", line, column));
    }

    @Test
    @SuppressWarnings("NullAway")
    void where_withoutItsName_isRefused() {
        assertThatNullPointerException().isThrownBy(() -> new Where.Text(null, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Where.Part(" "));
        assertThatIllegalArgumentException().isThrownBy(() -> new Where.Path(""));
    }
}
