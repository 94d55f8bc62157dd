package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.ProjectFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The packs in {@code output-samples} are what their jobs make, byte for byte. {@code mvn -q -Psamples package} rewrites
 * them; look at what changed and say so in the change log.
 */
class SamplesTest {

    private static final Path SAMPLES = ProjectFolder.top().resolve("output-samples");

    @TempDir
    private Path temporary;

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(before);
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> folders = Files.list(SAMPLES)) {
            return folders.filter(f -> Files.exists(f.resolve("job.toml")))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void make_sample_givesTheCommittedPack(Path sample) throws IOException {
        Path pack = temporary.resolve("pack");

        make(sample.resolve("job.toml"), pack);

        assertThat(changed(read(sample.resolve("pack")), read(pack)))
                .as("files that changed; rewrite the samples with: mvn -q -Psamples package")
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("places")
    void make_otherLocaleAndPath_givesTheSameBytes(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Path folder = Files.createDirectories(temporary.resolve("Größe é " + locale));
        Path sample = samples().get(0);
        Files.copy(sample.resolve("job.toml"), folder.resolve("job.toml"));

        make(folder.resolve("job.toml"), folder.resolve("pack out"));

        assertThat(changed(read(sample.resolve("pack")), read(folder.resolve("pack out"))))
                .isEmpty();
    }

    // Each file that is missing, new or other, and where a changed one first differs.
    private static List<String> changed(SortedMap<String, byte[]> expected, SortedMap<String, byte[]> actual) {
        SortedSet<String> names = new TreeSet<>(expected.keySet());
        names.addAll(actual.keySet());
        return names.stream()
                .filter(name -> !Arrays.equals(expected.get(name), actual.get(name)))
                .map(name -> expected.containsKey(name) && actual.containsKey(name)
                        ? name + " from byte " + Arrays.mismatch(expected.get(name), actual.get(name))
                        : name + (actual.containsKey(name) ? " is new" : " is missing"))
                .toList();
    }

    static List<String> places() {
        return List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva");
    }

    private static void make(Path job, Path pack) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CommandLines.run(
                new Terminal(
                        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false),
                "make",
                job.toString(),
                "--out",
                pack.toString());
        assertThat(code).as(err.toString(StandardCharsets.UTF_8)).isZero();
    }

    private static SortedMap<String, byte[]> read(Path folder) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }
}
