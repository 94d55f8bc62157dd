package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CheckerConditionTest {
    private static final Optional<String> GONE = Optional.of("program rs274 not found");

    @Test
    void checker_there_testRuns() {
        assertThat(CheckerCondition.decide(Checker.RS274, Optional.empty(), true)
                        .isDisabled())
                .isFalse();
    }

    @Test
    void checker_absentAndOptional_testIsSkippedWithReason() {
        var decision = CheckerCondition.decide(Checker.RS274, GONE, false);

        assertThat(decision.isDisabled()).isTrue();
        assertThat(decision.getReason()).hasValue("rs274: program rs274 not found");
    }

    @Test
    void checker_absentAndRequired_testFails() {
        assertThatThrownBy(() -> CheckerCondition.decide(Checker.RS274, GONE, true))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("rs274: program rs274 not found");
    }

    @Test
    void absentCheckers_some_areListedOnOneLine() {
        assertThat(AbsentCheckers.line(Set.of(Checker.QPDF)))
                .startsWith("Tests skipped for want of outside checkers: qpdf (")
                .containsOnlyOnce("\n")
                .endsWith("\n");
        assertThat(AbsentCheckers.line(Set.of())).isEmpty();
    }
}
