package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @Test
    void run_program_keepsBothStreamsAndExitCode() {
        assertThat(Run.of(List.of(JAVA, "--version")).orFail().out()).contains("Runtime");
        Run refused = Run.of(List.of(JAVA, "-no-such-word"));
        assertThat(refused.exit()).isNotZero();
        assertThat(refused.err()).contains("no-such-word");
        assertThatThrownBy(refused::orFail).hasMessageContaining("no-such-word");
    }

    @Test
    void run_programThatDoesNotEnd_isEnded(@TempDir Path folder) throws IOException {
        // A source file given to java is compiled and run.
        Path sleeper = Files.writeString(
                folder.resolve("Sleeper.java"),
                "class Sleeper { public static void main(String[] a) throws Exception { Thread.sleep(60_000); } }");
        assertThatThrownBy(() -> Run.of(List.of(JAVA, sleeper.toString()), Map.of(), Duration.ofMillis(300)))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("still ran");
    }
}
