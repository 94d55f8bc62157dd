package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.testing.TableReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What stands on the papers and in the tables of the samples' packs, as programs from outside read the files (poppler the
 * pages, Python's csv the tables), against {@code plan.json} of the same pack: the same rows, each once, to the last digit
 * that is printed.
 */
@NeedsChecker({Checker.POPPLER, Checker.OPENPYXL})
class PapersReadBackTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern MADE = Pattern.compile("^Pattern (\\w+): make (\\d+) \\((\\d+) in one dome\\)");
    private static final Pattern PRESS = Pattern.compile("^ +(\\d+) +([\\d.]+)° +(\\d+)° (\\d\\d)' +([\\d.]+) .* (\\S+)"
            + " +twist +([\\d.]+) (mm|in) +[\\d.]+ (?:mm|in)");
    private static final Pattern CUT =
            Pattern.compile("^ +\\d+ (S\\w+) +([\\d.]+) +([\\d.]+) .*\\) +(\\d+) +(\\d+)\\s*$");
    private static final Pattern PART =
            Pattern.compile("^(collar|strut|centre ring|tie)\\b(.*?) {2,}(\\d+) {2,}(\\d+)\\s*$");
    private static final String SAMPLES_CLOCHE = "cloche";
    private static final String SAMPLES_NET = "orchard-net";
    private static final String SAMPLES_HOUSE = "seedling-house";
    private static final double MM_PER_INCH = 25.4;

    private static Path pack(String sample) {
        return ProjectFolder.top().resolve("output-samples").resolve(sample).resolve("pack");
    }

    private static JsonNode plan(String sample) {
        try {
            return new ObjectMapper().readTree(pack(sample).resolve("plan.json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    // A printed number says no more than its digits: half of the last place either way, and what halves may be rounded
    // by.
    private static void equal(String printed, double expected, String what) {
        assertThat(NUMBER.matcher(printed).matches())
                .as(what + " is a number: " + printed)
                .isTrue();
        BigDecimal number = new BigDecimal(printed);
        double half = Math.pow(10, -number.scale()) / 2;
        assertThat(Math.abs(number.doubleValue() - expected))
                .as("%s: printed %s, planned %s", what, printed, expected)
                .isLessThanOrEqualTo(half + 1e-9 * Math.max(1, Math.abs(expected)));
    }

    // Papers give a piece as it is sawn: the next thousandth of a millimetre that is not shorter.
    private static double sawn(JsonNode type) {
        return Math.ceil(type.get("cutMm").asDouble() * 1000 - 1e-6) / 1000;
    }

    private static Map<String, Map<String, String>> rows(String sample, String file, String... keys) {
        List<List<String>> records = TableReader.separated(pack(sample).resolve(file), ',');
        Map<String, Map<String, String>> rows = new TreeMap<>();
        for (List<String> record : records.subList(1, records.size())) {
            Map<String, String> row = new TreeMap<>();
            for (int i = 0; i < record.size(); i++) {
                row.put(records.get(0).get(i), record.get(i));
            }
            List<String> key = new ArrayList<>();
            for (String each : keys) {
                key.add(row.getOrDefault(each, "no column " + each));
            }
            assertThat(rows.put(String.join(" ", key), row)).as("%s twice", key).isNull();
        }
        return rows;
    }

    private static void equal(Map<String, String> row, String head, JsonNode expected) {
        if (expected.isMissingNode()) {
            assertThat(row.get(head)).as(head).isEmpty();
        } else if (expected.isNumber()) {
            equal(row.getOrDefault(head, ""), expected.asDouble(), head);
        } else {
            assertThat(row.get(head)).as(head).isEqualTo(expected.asText());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {SAMPLES_CLOCHE, SAMPLES_NET, SAMPLES_HOUSE})
    void holeTable_isThePlan(String sample) {
        Map<String, Map<String, String>> rows = rows(sample, "templates/holes.csv", "pattern", "hole");
        int holes = 0;
        for (JsonNode pattern : plan(sample).get("patterns")) {
            for (JsonNode hole : pattern.get("holes")) {
                holes++;
                Map<String, String> row = rows.getOrDefault(pattern.get("id").asText() + " " + hole.get("n"), Map.of());
                equal(row, "collars per dome", pattern.get("count"));
                equal(row, "collars to make", pattern.get("made"));
                equal(row, "azimuth from the 0 line (deg)", hole.get("azimuthDeg"));
                equal(row, "arc on the outside (mm)", hole.get("arcMm"));
                equal(row, "height above the mid-plane (mm)", hole.get("heightMm"));
                equal(row, "cutter", hole.get("cutter"));
                equal(row, "as drilled (mm)", hole.get("asDrilledMm"));
                equal(row, "least that would do (mm)", hole.path("requiredMm"));
                equal(row, "needed lean (deg)", hole.get("neededLeanDeg"));
                equal(row, "tilt limit (deg)", hole.get("tiltLimitDeg"));
                equal(row, "least tilt limit (deg)", hole.get("tiltMinDeg"));
                equal(row, "largest tilt limit (deg)", hole.get("tiltMaxDeg"));
                equal(row, "slack (deg)", hole.get("slackDeg"));
            }
        }
        assertThat(rows).hasSize(holes).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {SAMPLES_CLOCHE, SAMPLES_NET, SAMPLES_HOUSE})
    void cutList_isThePlan(String sample) {
        Map<String, Map<String, String>> rows = rows(sample, "struts/cut-list.csv", "strut type");
        JsonNode types = plan(sample).get("strutTypes");
        for (JsonNode type : types) {
            Map<String, String> row = rows.getOrDefault(type.get("id").asText(), Map.of());
            equal(row, "per dome", type.get("count"));
            equal(row, "to make", type.get("made"));
            equal(row.getOrDefault("cut length (mm)", ""), sawn(type), "cut length");
            equal(row, "node to node (mm)", type.get("chordMm"));
            equal(row, "tie hole from end a (mm)", type.get("ends").get(0).path("drillMm"));
            equal(row, "tie hole from end b (mm)", type.get("ends").get(1).path("drillMm"));
            equal(row, "setback at end a (mm)", type.get("ends").get(0).get("setbackMm"));
            equal(row, "axial angle at end b (deg)", type.get("ends").get(1).get("axialDeg"));
            equal(row.getOrDefault("cut length (in)", ""), sawn(type) / MM_PER_INCH, "inches");
        }
        assertThat(rows).hasSize(types.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {SAMPLES_CLOCHE, SAMPLES_NET, SAMPLES_HOUSE})
    void hubsAndMembers_areThePlan(String sample) {
        JsonNode plan = plan(sample);
        Map<String, Map<String, String>> hubs = rows(sample, "struts/hubs.csv", "hub");
        for (JsonNode node : plan.get("nodes")) {
            Map<String, String> row = hubs.getOrDefault(node.get("id").asText(), Map.of());
            equal(row, "hub type", node.get("hubType"));
            equal(row, "x from the centre (mm)", node.get("xyzMm").get(0));
            equal(row, "y (mm)", node.get("xyzMm").get(1));
            equal(row, "z (mm)", node.get("xyzMm").get(2));
            equal(row, "UP clockwise from the 0 line (deg)", node.get("turnDeg"));
        }
        assertThat(hubs).hasSize(plan.get("nodes").size());
        Map<String, Map<String, String>> members = rows(sample, "struts/members.csv", "from node", "from hole");
        for (JsonNode member : plan.get("members")) {
            for (List<String> way : List.of(List.of("a", "b"), List.of("b", "a"))) {
                JsonNode from = member.get(way.get(0));
                JsonNode to = member.get(way.get(1));
                Map<String, String> row =
                        members.getOrDefault(from.get("node").asText() + " " + from.get("hole"), Map.of());
                equal(row, "member", member.get("id"));
                equal(row, "strut type", member.get("strutType"));
                equal(row, "to node", to.get("node"));
                equal(row, "to hole", to.get("hole"));
            }
        }
        assertThat(members).hasSize(2 * plan.get("members").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {SAMPLES_CLOCHE, SAMPLES_NET, SAMPLES_HOUSE})
    void pressTables_ofTheTraveller_areThePlan(String sample) {
        Map<String, MatchResult> printed = new TreeMap<>();
        Map<String, String> made = new TreeMap<>();
        String pattern = "";
        for (String line : Poppler.text(pack(sample).resolve("traveller.pdf")).split("[\n\f]")) {
            var head = MADE.matcher(line);
            if (head.find()) {
                pattern = head.group(1);
                made.put(pattern, head.group(2) + " " + head.group(3));
            }
            var row = PRESS.matcher(line);
            if (row.find()) {
                assertThat(printed.put(pattern + " " + row.group(1), row.toMatchResult()))
                        .as("hole %s of %s twice", row.group(1), pattern)
                        .isNull();
            }
        }
        int holes = 0;
        for (JsonNode each : plan(sample).get("patterns")) {
            String id = each.get("id").asText();
            assertThat(made).containsEntry(id, each.get("made") + " " + each.get("count"));
            for (JsonNode hole : each.get("holes")) {
                holes++;
                assertThat(printed).containsKey(id + " " + hole.get("n"));
                pressRow(printed.get(id + " " + hole.get("n")), hole);
            }
        }
        assertThat(printed).hasSize(holes);
    }

    private static void pressRow(MatchResult row, JsonNode hole) {
        double unit = row.group(8).equals("in") ? MM_PER_INCH : 1;
        double azimuth = hole.get("azimuthDeg").asDouble();
        equal(row.group(2), azimuth, "azimuth");
        double minutes = 60 * Integer.parseInt(row.group(3)) + Integer.parseInt(row.group(4));
        assertThat(Math.abs(minutes - 60 * azimuth)).as("minutes").isLessThanOrEqualTo(0.5 + 1e-9);
        equal(row.group(5), hole.get("arcMm").asDouble() / unit, "arc");
        equal(row.group(7), hole.get("asDrilledMm").asDouble() / unit, "as drilled");
    }

    @ParameterizedTest
    @ValueSource(strings = {SAMPLES_CLOCHE, SAMPLES_NET, SAMPLES_HOUSE})
    void countsAndStruts_ofTheTraveller_areThePlan(String sample) {
        JsonNode plan = plan(sample);
        List<String> parts = new ArrayList<>();
        Map<String, MatchResult> cuts = new TreeMap<>();
        for (String line : Poppler.text(pack(sample).resolve("traveller.pdf")).split("[\n\f]")) {
            var part = PART.matcher(line);
            if (part.find()) {
                String words = part.group(1) + part.group(2);
                parts.add(words.replaceAll("[ ,].*", "")
                        + (words.matches("(collar|strut) .*") ? " " + words.split("[ ,]+")[1] : "")
                        + " " + part.group(3) + " " + part.group(4));
            }
            var cut = CUT.matcher(line);
            if (cut.find()) {
                assertThat(cuts.put(cut.group(1), cut.toMatchResult())).isNull();
            }
        }
        List<String> expected = new ArrayList<>();
        for (JsonNode each : plan.get("patterns")) {
            expected.add("collar " + each.get("id").asText() + " " + each.get("count") + " " + each.get("made"));
        }
        for (JsonNode each : plan.get("strutTypes")) {
            String id = each.get("id").asText();
            expected.add("strut " + id + " " + each.get("count") + " " + each.get("made"));
            assertThat(cuts).containsKey(id);
            MatchResult cut = cuts.get(id);
            boolean inches = sample.equals(SAMPLES_HOUSE);
            equal(cut.group(inches ? 3 : 2), sawn(each), "length of " + id);
            equal(cut.group(inches ? 2 : 3), sawn(each) / MM_PER_INCH, "inches of " + id);
            assertThat(cut.group(4) + " " + cut.group(5)).isEqualTo(each.get("count") + " " + each.get("made"));
        }
        JsonNode counts = plan.get("counts");
        JsonNode order = plan.get("order");
        expected.add("centre " + counts.get("rings") + " " + order.get("rings"));
        expected.add("tie " + counts.get("ties") + " " + order.get("ties"));
        assertThat(parts).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(cuts).hasSize(plan.get("strutTypes").size());
    }
}
