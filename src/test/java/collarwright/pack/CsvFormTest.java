package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.BundledProfiles;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.TableReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables with another separator and decimal sign, read by Python's csv module. */
@NeedsChecker(Checker.OPENPYXL)
class CsvFormTest {

    private static final String FORM = "csv = { separator = \";\", decimal = \",\" }";

    private static Map<String, byte[]> pack(String sheet) throws IOException {
        String job = Files.readString(ProjectFolder.top().resolve("output-samples/seedling-house/job.toml"));
        assertThat(job).doesNotContain("[sheet]");
        JobReading reading = JobReader.read(
                "job.toml", job + "\n[sheet]\n" + sheet + "\n", Profiles.load(List.of(new BundledProfiles())));
        return PackContents.of(
                Production.of(reading.job().orElseThrow(() -> new AssertionError(reading.findings())), List.of()));
    }

    private static List<List<String>> read(Path folder, byte[] file, char separator) throws IOException {
        Path path = folder.resolve("table.csv");
        Files.write(path, file);
        return TableReader.separated(path, separator);
    }

    @Test
    void tables_withSemicolonAndComma_holdWhatTheyHeldBefore(@TempDir Path folder) throws IOException {
        Map<String, byte[]> usual = pack("");
        Map<String, byte[]> other = pack(FORM);
        List<String> tables = usual.keySet().stream()
                .filter(p -> p.endsWith(".csv") && !p.startsWith("model/"))
                .toList();
        assertThat(tables).hasSizeGreaterThan(7).contains("struts/offcuts.csv", "site/bundles.csv");
        String before = revision(usual);
        String after = revision(other);
        int commas = 0;
        for (String table : tables) {
            List<List<String>> points = read(folder, usual.get(table), ',');
            List<List<String>> found = read(folder, other.get(table), ';');
            assertThat(found).as(table).hasSameSizeAs(points);
            for (int i = 0; i < points.size(); i++) {
                assertThat(found.get(i)).as(table).hasSameSizeAs(points.get(i));
                for (int k = 0; k < points.get(i).size(); k++) {
                    String cell = points.get(i).get(k);
                    boolean measure = cell.matches("-?\\d+\\.\\d+");
                    commas += measure ? 1 : 0;
                    boolean named = table.equals("struts/offcuts.csv") && (k == 0 || k == 3) && i > 0;
                    if (!named) {
                        assertThat(found.get(i).get(k).replace(after, before))
                                .as(table)
                                .isEqualTo(measure ? cell.replace('.', ',') : cell);
                    }
                }
            }
        }
        assertThat(commas).isGreaterThan(500);
        // For other programs: it stays as it is.
        assertThat(other.get("model/frame.csv")).isEqualTo(usual.get("model/frame.csv"));
    }

    private static String revision(Map<String, byte[]> pack) throws IOException {
        return new ObjectMapper()
                .readTree(pack.get(PlanJson.FILE))
                .get("job")
                .get("revision")
                .asText();
    }

    @Test
    void holes_withSemicolonAndComma_areThoseOfThePlan(@TempDir Path folder) throws IOException {
        Map<String, byte[]> pack = pack(FORM);
        List<List<String>> expected = new ArrayList<>();
        for (JsonNode pattern :
                new ObjectMapper().readTree(pack.get(PlanJson.FILE)).get("patterns")) {
            for (JsonNode hole : pattern.get("holes")) {
                expected.add(List.of(
                        pattern.get("id").asText(),
                        hole.get("n").asText(),
                        comma(hole.get("azimuthDeg"), 4),
                        comma(hole.get("arcMm"), 3),
                        comma(hole.get("asDrilledMm"), 3),
                        comma(hole.get("slackDeg"), 4)));
            }
        }
        List<List<String>> read = read(folder, pack.get(PackTables.HOLES), ';');
        List<String> heads = read.get(0);
        List<Integer> columns = Arrays.asList(
                        "pattern",
                        "hole",
                        "azimuth from the 0 line (deg)",
                        "arc on the outside (mm)",
                        "as drilled (mm)",
                        "slack (deg)")
                .stream()
                .map(heads::indexOf)
                .toList();
        assertThat(read.subList(1, read.size()).stream()
                        .map(row -> columns.stream().map(row::get).toList()))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    private static String comma(JsonNode value, int decimals) {
        return String.format(Locale.GERMANY, "%." + decimals + "f", value.asDouble());
    }
}
