package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Jobs that must be refused: each folder holds {@code job.toml} and {@code expected.txt}, whose first line is the exit
 * code and the rest the exact standard error of {@code make}. {@code mvn -q -Pquick test -Dtest=BadJobsTest
 * -Drewrite=true} writes what comes out now; read every difference before you keep it.
 */
class BadJobsTest {

    private static final Path FOLDER = Path.of("src/test/resources/bad");

    static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(FOLDER)) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void make_badJob_isRefusedWithItsMessage(Path folder) throws IOException {
        Path out = Path.of("target/bad-jobs").resolve(folder.getFileName());
        Path expected = folder.resolve("expected.txt");
        String job = folder.resolve("job.toml").toString().replace('\\', '/');

        String actual = refusal("make", job, "--out", out.toString());

        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(expected, actual);
        }
        assertThat(actual).isEqualTo(Files.readString(expected));
        assertThat(actual).doesNotStartWith("0\n").doesNotStartWith("1\n");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void check_badJob_saysTheSame(Path folder) throws IOException {
        String job = folder.resolve("job.toml").toString().replace('\\', '/');

        assertThat(refusal("check", job)).isEqualTo(Files.readString(folder.resolve("expected.txt")));
    }

    @Test
    void cases_areNumberedWithoutDoubles() throws IOException {
        List<String> numbers = cases().stream()
                .map(p -> p.getFileName().toString().split("-", 2)[0])
                .toList();

        assertThat(numbers).hasSizeGreaterThan(40).doesNotHaveDuplicates();
    }

    private static String refusal(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CommandLines.run(
                new Terminal(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false),
                args);
        return code + "\n" + err.toString(StandardCharsets.UTF_8);
    }
}
