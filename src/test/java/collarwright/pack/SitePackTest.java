package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Production;
import collarwright.testing.Checker;
import collarwright.testing.DomeJobs;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Run;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads connections, bundles and labels back from the files that people get, and holds them against plan.json. */
class SitePackTest {

    private static final String NODE = "([TF]\\d+-\\d+)";
    private static final Pattern BY_STRUT =
            Pattern.compile("(M\\d+)\\s+S[A-Y]+\\s+(\\d+)\\s+" + NODE + "\\s+(\\d+)\\s+" + NODE + "\\s+(\\d+)");

    @TempDir
    private Path folder;

    private static Map<String, byte[]> pack(String sample) throws IOException {
        Path job = ProjectFolder.top().resolve("output-samples").resolve(sample).resolve("job.toml");
        return PackContents.of(Production.of(DomeJobs.read(job), List.of()));
    }

    private static byte[] file(Map<String, byte[]> pack, String path) {
        return java.util.Objects.requireNonNull(pack.get(path));
    }

    private Path saved(Map<String, byte[]> pack, String path) throws IOException {
        return Files.write(folder.resolve(path.replace('/', '-')), file(pack, path));
    }

    /** Such as {@code M001-a T0-01 1}. */
    private static List<String> planned(JsonNode plan) {
        List<String> ends = new ArrayList<>();
        for (JsonNode member : plan.at("/members")) {
            for (String tip : List.of("a", "b")) {
                JsonNode end = member.at("/" + tip);
                ends.add(member.at("/id").asText() + "-" + tip + " "
                        + end.at("/node").asText() + " " + end.at("/hole").asInt());
            }
        }
        return ends;
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-net", "seedling-house", "cloche"})
    @NeedsChecker(Checker.POPPLER)
    void connections_readFromTableBookAndLabels_areThePlanned(String sample) throws IOException {
        Map<String, byte[]> pack = pack(sample);
        JsonNode plan = new ObjectMapper().readTree(file(pack, PlanJson.FILE));
        List<String> planned = planned(plan);

        List<Map<String, String>> rows =
                CsvRecords.rows(new String(file(pack, SiteFiles.CONNECTIONS), StandardCharsets.UTF_8));
        for (String by : List.of("strut", "hub")) {
            assertThat(rows.stream()
                            .filter(row -> by.equals(row.get("listed by")))
                            .map(row -> row.get("strut end") + " " + row.get("hub") + " " + row.get("hole")))
                    .containsExactlyInAnyOrderElementsOf(planned);
        }
        String book = Poppler.text(saved(pack, SiteFiles.BOOK));
        assertThat(byStrut(book)).containsExactlyInAnyOrderElementsOf(planned);
        assertThat(byHub(book)).containsExactlyInAnyOrderElementsOf(planned);
        assertThat(orders(book))
                .containsExactlyInAnyOrderElementsOf(
                        CsvRecords.rows(new String(file(pack, PackTables.MEMBERS), StandardCharsets.UTF_8)).stream()
                                .map(row -> row.get("member") + " " + row.get("order in raising"))
                                .distinct()
                                .toList());
        assertThat(book).contains(planned.size() + " strut ends, " + planned.size() + " holes with a strut");
        assertThat(labelled(saved(pack, SiteFiles.LABELS))).containsExactlyInAnyOrderElementsOf(planned);
    }

    private static List<String> byStrut(String book) {
        List<String> ends = new ArrayList<>();
        Matcher row = BY_STRUT.matcher(book);
        while (row.find()) {
            ends.add(row.group(1) + "-a " + row.group(3) + " " + row.group(4));
            ends.add(row.group(1) + "-b " + row.group(5) + " " + row.group(6));
        }
        return ends;
    }

    /** Such as {@code M001 17}, the member and its order number. */
    private static List<String> orders(String book) {
        return BY_STRUT.matcher(book)
                .results()
                .map(row -> row.group(1) + " " + row.group(2))
                .toList();
    }

    private static List<String> byHub(String book) {
        List<String> ends = new ArrayList<>();
        Matcher row = Pattern.compile("(?m)^\\s*" + NODE + "\\s+(?:at \\d+|\\d+–\\d+)\\s+((?:(?:M\\d+-[ab]|–)\\s*)+)$")
                .matcher(book);
        while (row.find()) {
            String[] holes = row.group(2).strip().split("\\s+");
            for (int i = 0; i < holes.length; i++) {
                if (!holes[i].equals("–")) {
                    ends.add(holes[i] + " " + row.group(1) + " " + (i + 1));
                }
            }
        }
        return ends;
    }

    private static List<String> labelled(Path labels) {
        String text = Run.of(List.of("pdftotext", "-raw", "-enc", "UTF-8", labels.toString(), "-"))
                .orFail()
                .out();
        List<String> ends = new ArrayList<>();
        Matcher label = Pattern.compile(NODE + " hole (\\d+)\\s+strut S[A-Y]+, [a-z ]+\\s+[A-Y]{8} (M\\d+-[ab])")
                .matcher(text);
        while (label.find()) {
            ends.add(label.group(3) + " " + label.group(1) + " " + label.group(2));
        }
        return ends;
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-net", "seedling-house"})
    void bundles_readFromTheTable_sumUpToTheOrder(String sample) throws IOException {
        Map<String, byte[]> pack = pack(sample);
        JsonNode plan = new ObjectMapper().readTree(file(pack, PlanJson.FILE));
        List<Map<String, String>> rows =
                CsvRecords.rows(new String(file(pack, SiteFiles.BUNDLES), StandardCharsets.UTF_8));
        for (String what : List.of("struts", "collars", "rings", "ties")) {
            int sum = rows.stream()
                    .filter(row -> row.get("what").startsWith(what))
                    .mapToInt(row -> Integer.parseInt(row.get("times")) * Integer.parseInt(row.get("pieces in one")))
                    .sum();
            assertThat(sum).as(what).isEqualTo(plan.at("/order/" + what).asInt());
        }
        assertThat(pack(sample)).allSatisfy((path, bytes) -> {
            if (path.startsWith("site/")) {
                assertThat(bytes).as(path).isEqualTo(file(pack, path));
            }
        });
    }
}
