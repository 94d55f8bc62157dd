package collarwright.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobExceptionTest {
    private static final Finding STOP =
            Finding.stop(Code.JOB_BAD_LENGTH, new Where.Text("job.toml", 4, 8), "a length", "50 mm/s", "write 50 mm");
    private static final Finding NOTE =
            Finding.note(Code.NOT_MEASURED, new Where.Part("collar"), "a measured size", "nominal", "measure it");

    @Test
    void exception_severalFindings_namesAllInOrder() {
        List<Finding> findings = new ArrayList<>(List.of(NOTE, STOP));
        JobException exception = new JobException(findings);
        findings.clear();
        assertThat(exception.findings()).containsExactly(NOTE, STOP);
        assertThat(exception).hasMessage("NOT_MEASURED at collar; JOB_BAD_LENGTH at job.toml:4:8");
    }

    @Test
    void exception_nothingStops_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new JobException(List.of(NOTE)));
        assertThatIllegalArgumentException().isThrownBy(() -> new JobException(List.of()));
    }
}
