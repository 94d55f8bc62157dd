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
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of a pack as openpyxl reads it, against the pack's plan.json: the same rows, in any order. */
@NeedsChecker(Checker.OPENPYXL)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PackBookTest {

    private TableReader.Book book;
    private JsonNode plan;

    @BeforeAll
    void make(@TempDir Path folder) throws IOException {
        Map<String, byte[]> pack = pack("seedling-house");
        Path file = folder.resolve("plan.xlsx");
        Files.write(file, pack.getOrDefault(PackBook.FILE, new byte[0]));
        book = TableReader.workbook(file);
        plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
    }

    static Map<String, byte[]> pack(String sample) throws IOException {
        String job = Files.readString(ProjectFolder.top().resolve("output-samples/" + sample + "/job.toml"));
        JobReading reading = JobReader.read("job.toml", job, Profiles.load(List.of(new BundledProfiles())));
        return PackContents.of(
                Production.of(reading.job().orElseThrow(() -> new AssertionError(reading.findings())), List.of()));
    }

    // A row of the plan as texts; a number by its value to 12 digits, so that the two ways to print one are one.
    private static List<String> row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            if (cell instanceof JsonNode node && node.isNumber()) {
                row.add(digits(node.asDouble()));
            } else if (cell instanceof JsonNode node) {
                row.add(node.isMissingNode() ? "" : node.asText());
            } else {
                row.add(cell.toString());
            }
        }
        return row;
    }

    private static String digits(double value) {
        return String.format(java.util.Locale.ROOT, "%.9f", value).replaceAll("^-(0\\.0*)$", "$1");
    }

    private List<List<String>> rows(String sheet, String... heads) {
        TableReader.Sheet read = book.sheet(sheet);
        assertThat(read.heads()).contains(heads);
        List<List<String>> rows = new ArrayList<>();
        for (Map<String, TableReader.Cell> cells : read.rows()) {
            List<String> row = new ArrayList<>();
            for (String head : heads) {
                TableReader.Cell cell = cells.get(head);
                row.add(cell == null ? "" : cell.number() ? digits(Double.parseDouble(cell.text())) : cell.text());
            }
            rows.add(row);
        }
        return rows;
    }

    @Test
    void holes_areThoseOfThePlan() {
        List<List<String>> expected = new ArrayList<>();
        for (JsonNode pattern : plan.get("patterns")) {
            for (JsonNode hole : pattern.get("holes")) {
                expected.add(row(
                        pattern.get("id"),
                        hole.get("n"),
                        hole.get("azimuthDeg"),
                        hole.get("arcMm"),
                        hole.get("heightMm"),
                        hole.get("cutter"),
                        hole.get("asDrilledMm"),
                        hole.path("requiredMm"),
                        hole.get("neededLeanDeg"),
                        hole.get("tiltLimitDeg"),
                        hole.get("tiltMinDeg"),
                        hole.get("tiltMaxDeg"),
                        hole.get("slackDeg"),
                        pattern.get("fingerprint")));
            }
        }
        assertThat(expected).hasSizeGreaterThan(10);
        assertThat(rows(
                        "holes",
                        "pattern",
                        "hole",
                        "azimuth from the 0 line (°)",
                        "arc on the outside (mm)",
                        "height above the mid-plane (mm)",
                        "cutter",
                        "as drilled (mm)",
                        "least that would do (mm)",
                        "needed lean (°)",
                        "tilt limit (°)",
                        "least tilt limit (°)",
                        "largest tilt limit (°)",
                        "slack (°)",
                        "fingerprint"))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void strutTypes_areThoseOfThePlan() {
        List<List<String>> expected = new ArrayList<>();
        for (JsonNode type : plan.get("strutTypes")) {
            JsonNode a = type.get("ends").get(0);
            JsonNode b = type.get("ends").get(1);
            expected.add(row(
                    type.get("id"),
                    type.get("count"),
                    type.get("made"),
                    // As it is sawn: the next thousandth of a millimetre that is not shorter.
                    digits(Math.ceil(type.get("cutMm").asDouble() * 1000 - 1e-6) / 1000),
                    type.get("chordMm"),
                    a.path("drillMm"),
                    b.path("drillMm"),
                    type.get("twistDeg"),
                    a.get("setbackMm"),
                    b.get("setbackMm"),
                    a.get("axialDeg"),
                    b.get("axialDeg")));
        }
        assertThat(rows(
                        "strut types",
                        "strut type",
                        "per dome",
                        "to make",
                        "cut length (mm)",
                        "node to node (mm)",
                        "tie hole from end a (mm)",
                        "tie hole from end b (mm)",
                        "twist of the tie holes from a to b (°)",
                        "setback at end a (mm)",
                        "setback at end b (mm)",
                        "axial angle at end a (°)",
                        "axial angle at end b (°)"))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void hubsAndMembers_areThoseOfThePlan() {
        List<List<String>> nodes = new ArrayList<>();
        for (JsonNode node : plan.get("nodes")) {
            JsonNode xyz = node.get("xyzMm");
            nodes.add(
                    row(node.get("id"), node.get("hubType"), xyz.get(0), xyz.get(1), xyz.get(2), node.get("turnDeg")));
        }
        assertThat(rows(
                        "hubs",
                        "hub",
                        "hub type",
                        "x from the centre (mm)",
                        "y (mm)",
                        "z (mm)",
                        "UP clockwise from the 0 line (°)"))
                .containsExactlyInAnyOrderElementsOf(nodes);
        List<List<String>> ends = new ArrayList<>();
        for (JsonNode member : plan.get("members")) {
            JsonNode a = member.get("a");
            JsonNode b = member.get("b");
            JsonNode id = member.get("id");
            JsonNode type = member.get("strutType");
            ends.add(row(id, type, a.get("node"), a.get("hole"), b.get("node"), b.get("hole")));
            ends.add(row(id, type, b.get("node"), b.get("hole"), a.get("node"), a.get("hole")));
        }
        assertThat(rows("members", "member", "strut type", "from node", "from hole", "to node", "to hole"))
                .containsExactlyInAnyOrderElementsOf(ends);
    }

    @Test
    void hubTypesAndPatterns_areThoseOfThePlan() {
        List<List<String>> struts = new ArrayList<>();
        for (JsonNode type : plan.get("hubTypes")) {
            for (JsonNode strut : type.get("struts")) {
                struts.add(row(
                        type.get("id"),
                        type.get("count"),
                        type.get("pattern"),
                        strut.get("strutType"),
                        strut.get("end"),
                        strut.get("hole"),
                        strut.get("azimuthDeg"),
                        strut.get("axialDeg")));
            }
        }
        assertThat(rows(
                        "hub types",
                        "hub type",
                        "per dome",
                        "pattern",
                        "strut type",
                        "strut end",
                        "hole",
                        "azimuth of the strut (°)",
                        "axial angle (°)"))
                .containsExactlyInAnyOrderElementsOf(struts);
        List<List<String>> patterns = new ArrayList<>();
        for (JsonNode pattern : plan.get("patterns")) {
            patterns.add(row(
                    pattern.get("id"),
                    pattern.get("count"),
                    digits(pattern.get("holes").size()),
                    pattern.get("fingerprint")));
        }
        assertThat(rows("patterns", "pattern", "collars per dome", "holes", "fingerprint"))
                .containsExactlyInAnyOrderElementsOf(patterns);
    }

    @Test
    void stockAndSticks_areThoseOfThePlan() {
        List<List<String>> stock = new ArrayList<>();
        List<List<String>> pieces = new ArrayList<>();
        for (JsonNode need : plan.get("stock")) {
            stock.add(row(need.get("role"), need.get("stock"), need.get("pieces"), need.get("netLengthMm")));
            for (JsonNode layout : need.path("cutting").path("layouts")) {
                for (JsonNode piece : layout.get("pieces")) {
                    pieces.add(row(layout.get("id"), layout.get("runs"), piece.get("piece"), piece.get("count")));
                }
            }
        }
        assertThat(rows("stock", "for", "stock", "pieces", "net length (mm)"))
                .containsExactlyInAnyOrderElementsOf(stock);
        List<List<String>> cut = rows("sticks to cut", "layout", "sticks cut like this", "what", "how many").stream()
                .filter(r ->
                        !List.of("trim of the first end", "saw cuts", "rest").contains(r.get(2)))
                .toList();
        assertThat(pieces).isNotEmpty();
        assertThat(cut).containsExactlyInAnyOrderElementsOf(pieces);
        List<List<String>> offcuts = new ArrayList<>();
        plan.get("offcuts").forEach(o -> offcuts.add(row(o.get("id"), o.get("stock"))));
        assertThat(rows("offcuts", "offcut", "stock")).containsExactlyInAnyOrderElementsOf(offcuts);
    }

    @Test
    void bundlesProgramsFindingsChecks_areThoseOfThePlan() {
        List<List<String>> bundles = new ArrayList<>();
        for (String kind : List.of("bundles", "spares")) {
            plan.get("site")
                    .get(kind)
                    .forEach(b -> bundles.add(row(b.get("id"), b.get("part"), b.get("pieces"), b.path("weightKg"))));
        }
        assertThat(rows("bundles", "bundle", "part", "pieces in one", "bundle (kg)"))
                .containsExactlyInAnyOrderElementsOf(bundles);
        List<List<String>> programs = new ArrayList<>();
        plan.get("programs").forEach(p -> programs.add(row(p.get("file"), p.get("machine"), p.get("seconds"))));
        assertThat(programs).isNotEmpty();
        assertThat(rows("programs", "file", "machine", "time of one run (s)"))
                .containsExactlyInAnyOrderElementsOf(programs);
        List<List<String>> findings = new ArrayList<>();
        plan.get("findings")
                .forEach(f -> findings.add(
                        row(f.get("level"), f.get("code"), f.get("where"), f.get("expected"), f.get("found"))));
        assertThat(findings).isNotEmpty();
        assertThat(rows("findings", "level", "code", "where", "expected", "found"))
                .containsExactlyInAnyOrderElementsOf(findings);
        List<List<String>> checks = new ArrayList<>();
        plan.get("checks")
                .forEach(c -> checks.add(row(
                        c.get("verdict"),
                        c.get("code"),
                        c.get("where"),
                        c.path("value"),
                        c.get("warn"),
                        c.path("stop"))));
        assertThat(rows("checks", "verdict", "code", "where", "value", "warns from", "stops from"))
                .containsExactlyInAnyOrderElementsOf(checks);
    }

    @Test
    void sheets_headsStay_idsAreText_unitsStandInHeads() {
        assertThat(book.title()).isEqualTo(plan.get("job").get("title").asText());
        assertThat(book.sheets().get(0).rows().get(1).get("value").text())
                .isEqualTo(plan.get("job").get("revision").asText());
        for (TableReader.Sheet sheet : book.sheets()) {
            assertThat(sheet.frozen()).isEqualTo("B2");
            assertThat(sheet.heads()).noneMatch(h -> h.contains("(deg)")).doesNotContain("revision");
            for (Map<String, TableReader.Cell> row : sheet.rows()) {
                row.forEach((head, cell) -> {
                    boolean measure = head.endsWith("(mm)") || head.endsWith("(°)") || head.endsWith("(kg)");
                    if (measure && !head.equals("sold in (mm)")) {
                        assertThat(cell.number()).as(head).isTrue();
                    }
                    assertThat(cell.format()).as(head).matches(cell.number() ? "0(\\.0+)?" : "@");
                });
            }
        }
    }
}
