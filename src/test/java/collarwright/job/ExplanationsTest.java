package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import org.junit.jupiter.api.Test;

class ExplanationsTest {

    private final Explanations explanations = Explanations.bundled();

    @Test
    void bundled_everyKind_hasCauseExampleAndCure() {
        // Tables for kinds that are not there any more are unknown keys, and bundled() refuses them.
        for (Code code : Code.values()) {
            Explanation explanation = explanations.of(code);
            assertThat(explanation.code()).isEqualTo(code);
            assertThat(explanation.cause()).as(code.name()).endsWith(".");
            assertThat(explanation.example()).as(code.name()).isNotBlank();
            assertThat(explanation.cure()).as(code.name()).endsWith(".");
        }
    }

    @Test
    void find_anyCapitals_findsIt() {
        assertThat(explanations.find(" job_syntax ")).map(Explanation::code).contains(Code.JOB_SYNTAX);
        assertThat(explanations.find("JOB_SINTAX")).isEmpty();
        assertThat(Explanations.near("JOB_SINTAX").get(0)).isEqualTo("JOB_SYNTAX");
    }
}
