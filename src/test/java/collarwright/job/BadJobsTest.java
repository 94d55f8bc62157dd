package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cli.FindingPrinter;
import collarwright.finding.Level;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every job in {@code src/test/resources/bad} gives its findings, word for word: {@code expected.txt} holds the exit code
 * and what a person reads. {@code -Dbad=write} writes them anew, to be read before they are kept.
 */
class BadJobsTest {

    static List<Path> cases() throws IOException {
        Path folder = ProjectFolder.top().resolve("src/test/resources/bad");
        try (Stream<Path> cases = Files.list(folder)) {
            return cases.filter(c -> Files.exists(c.resolve("job.toml")))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void badJob_givesItsFindings(Path folder) throws IOException {
        JobReading reading = JobReader.read("job.toml", Files.readAllBytes(folder.resolve("job.toml")), Jobs.PROFILES);
        assertThat(reading.job()).isEmpty();
        assertThat(reading.findings()).anyMatch(f -> f.level() == Level.STOP);
        int exitCode = reading.findings().stream()
                .filter(f -> f.level() == Level.STOP)
                .mapToInt(f -> f.code().outcome().exitCode())
                .max()
                .orElse(0);
        String actual = exitCode + "\n" + FindingPrinter.print(reading.findings());
        Path expected = folder.resolve("expected.txt");
        if ("write".equals(System.getProperty("bad"))) {
            Files.writeString(expected, actual);
        }
        assertThat(actual).isEqualTo(Files.readString(expected));
    }
}
