package collarwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CodeTest {
    // The exit codes that the commands promise: 2 command line, 3 job, 4 plan, 5 not written, 1 a fault of ours.
    @ParameterizedTest
    @CsvSource({
        "COMMAND_LINE, 2",
        "JOB_SYNTAX, 3",
        "PROFILE_UNKNOWN, 3",
        "DOME_PORTION, 3",
        "JOB_NOT_IN_THIS_VERSION, 3",
        "HOLE_NO_CUTTER, 4",
        "WEB_BETWEEN_HOLES, 4",
        "SPINDLE_RANGE, 4",
        "PACK_EDITED, 5",
        "PACK_NOT_WRITTEN, 5",
        "REHEARSAL_FAILED, 1",
        "PROGRAM_FAULT, 1"
    })
    void code_stop_hasItsExitCode(Code code, int exitCode) {
        assertThat(code.outcome().exitCode()).isEqualTo(exitCode);
    }

    @ParameterizedTest
    @EnumSource
    void code_name_isWords(Code code) {
        assertThat(code.name()).matches("[A-Z]+(_[A-Z]+)*");
    }

    @Test
    void outcome_exitCodes_areDistinct() {
        assertThat(Outcome.values()).extracting(Outcome::exitCode).containsExactlyInAnyOrder(1, 2, 3, 4, 5);
    }
}
