package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.ProjectFolder;
import collarwright.testing.TableReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Packs of the samples and of the jobs in {@code src/test/resources/cut-jobs}, made once for all tests into
 * {@code target/cut-packs}.
 */
final class CutPacks {

    private static final Map<String, Path> MADE = make();

    private CutPacks() {}

    /** Their names, in order. */
    static List<String> jobs() {
        return List.copyOf(MADE.keySet());
    }

    /** The folder of a pack. */
    static Path folder(String job) {
        return Objects.requireNonNull(MADE.get(job), job);
    }

    /** The plan of a pack. */
    static JsonNode plan(String job) throws IOException {
        return new ObjectMapper().readTree(folder(job).resolve("plan.json").toFile());
    }

    /** The rows of a table, as a reader from outside has them: cells by their heads. */
    static List<Map<String, String>> table(String job, String file) {
        List<List<String>> rows = TableReader.separated(folder(job).resolve(file), ',');
        List<Map<String, String>> named = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            Map<String, String> one = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                one.put(rows.get(0).get(i), row.get(i));
            }
            named.add(one);
        }
        return named;
    }

    private static Map<String, Path> make() {
        Map<String, Path> made = new TreeMap<>();
        for (String group : List.of("output-samples", "src/test/resources/cut-jobs")) {
            for (Path job : jobs(ProjectFolder.top().resolve(group))) {
                String name = String.valueOf(job.getParent().getFileName());
                Path pack = ProjectFolder.target().resolve("cut-packs").resolve(name);
                CommandRun run = CommandRun.of("make", job.toString(), "--out", pack.toString(), "--replace");
                assertThat(run.code()).as(run.err()).isZero();
                made.put(name, pack);
            }
        }
        return made;
    }

    private static List<Path> jobs(Path group) {
        try (Stream<Path> folders = Files.list(group)) {
            return folders.map(f -> f.resolve("job.toml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
