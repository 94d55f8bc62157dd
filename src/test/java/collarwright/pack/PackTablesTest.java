package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.CsvForm;
import collarwright.job.Job;
import collarwright.plan.Plan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PackTablesTest {

    private static String text(Table table) {
        return new String(table.csv(CsvForm.USUAL), StandardCharsets.UTF_8);
    }

    private static List<Map<String, String>> rows(Table table) {
        return CsvRecords.rows(text(table));
    }

    private static double number(Map<String, String> row, String head) {
        assertThat(row.get(head)).matches("-?\\d+(\\.\\d+)?").doesNotMatch("-0(\\.0+)?");
        return Double.parseDouble(row.get(head));
    }

    private static JsonNode json(Plan plan) throws IOException {
        return new ObjectMapper().readTree(PlanJson.write(plan, List.of()));
    }

    @Test
    void cutList_everyType_saysWhatThePlanSays() throws IOException {
        for (Job job : List.of(PackJobs.metric(), PackJobs.inch())) {
            Plan plan = PackJobs.plan(job);
            JsonNode types = json(plan).get("strutTypes");
            List<Map<String, String>> rows = rows(PackTables.cutList(plan));
            assertThat(rows).hasSize(types.size());
            for (int i = 0; i < rows.size(); i++) {
                Map<String, String> row = rows.get(i);
                JsonNode type = types.get(i);
                // As it is sawn: the next thousandth of a millimetre that is not shorter.
                double cut = StrictMath.ceil(type.get("cutMm").asDouble() * 1000 - 1e-6) / 1000;
                assertThat(row).containsEntry("strut type", type.get("id").asText());
                assertThat(number(row, "per dome")).isEqualTo(type.get("count").asInt());
                assertThat(number(row, "to make")).isEqualTo(type.get("made").asInt());
                assertThat(number(row, "cut length (mm)")).isCloseTo(cut, within(0.5e-3 + 1e-9));
                assertThat(number(row, "cut length (in)") * 25.4).isCloseTo(cut, within(25.4 * 0.5e-4 + 1e-9));
                double shown = inches(row.get("cut length (to 1/32 in)"));
                double error = number(row, "error of the 1/32 (mm)");
                assertThat(shown - cut).isCloseTo(error, within(0.5e-3 + 1e-9));
                // Half of 1/32 in.
                assertThat(StrictMath.abs(error)).isLessThanOrEqualTo(25.4 / 64 + 1e-3);
                assertThat(number(row, "twist of the tie holes from a to b (deg)"))
                        .isZero();
            }
        }
    }

    @Test
    void cutList_tieHoles_areGivenFromBothEndsOrLeftOut() {
        assertThat(rows(PackTables.cutList(PackJobs.plan(PackJobs.metric()))))
                .allSatisfy(row -> assertThat(row)
                        .containsEntry("tie hole from end a (mm)", "18.000")
                        .containsEntry("tie hole from end b (mm)", "18.000")
                        // 18 / 25.4 = 0.70866…
                        .containsEntry("tie hole from end b (in)", "0.7087"));
        assertThat(rows(PackTables.cutList(PackJobs.plan(PackJobs.inch()))))
                .allSatisfy(row -> assertThat(row)
                        .containsEntry("tie hole from end a (mm)", "")
                        .containsEntry("tie hole from end b (in)", ""));
    }

    private static double inches(String text) {
        assertThat(text).matches("(\\d+-)?\\d+/(2|4|8|16|32) in|\\d+ in");
        double total = 0;
        for (String part : text.replace(" in", "").split("-")) {
            String[] ratio = part.split("/");
            total += Double.parseDouble(ratio[0]) / (ratio.length == 1 ? 1 : Double.parseDouble(ratio[1]));
        }
        return total * 25.4;
    }

    @Test
    void members_everyStrut_standsTwiceAndFillsEveryHole() throws IOException {
        Plan plan = PackJobs.plan(PackJobs.metric());
        JsonNode counts = json(plan).get("counts");
        List<Map<String, String>> rows = rows(PackTables.members(plan));
        assertThat(rows).hasSize(counts.get("strutEnds").asInt());

        Map<String, String> partner = new HashMap<>();
        Map<String, Integer> times = new HashMap<>();
        Set<String> nodes = new HashSet<>();
        for (Map<String, String> row : rows) {
            String from = row.get("from node") + "/" + row.get("from hole");
            assertThat(partner.put(from, row.get("to node") + "/" + row.get("to hole") + " " + row.get("member")))
                    .isNull();
            times.merge(row.get("member"), 1, Integer::sum);
            nodes.add(row.get("from node"));
        }
        for (Map<String, String> row : rows) {
            assertThat(partner)
                    .containsEntry(
                            row.get("to node") + "/" + row.get("to hole"),
                            row.get("from node") + "/" + row.get("from hole") + " " + row.get("member"));
        }
        assertThat(times)
                .hasSize(counts.get("struts").asInt())
                .allSatisfy((m, n) -> assertThat(n).isEqualTo(2));
        assertThat(nodes).hasSize(counts.get("hubs").asInt());
    }

    @Test
    void members_everyRow_namesThePartsOfThePlan() throws IOException {
        Plan plan = PackJobs.plan(PackJobs.inch());
        JsonNode json = json(plan);
        Map<String, JsonNode> members = new HashMap<>();
        json.get("members").forEach(m -> members.put(m.get("id").asText(), m));
        Map<String, String> hubTypes = new HashMap<>();
        json.get("nodes")
                .forEach(
                        n -> hubTypes.put(n.get("id").asText(), n.get("hubType").asText()));
        Map<String, String> patterns = new HashMap<>();
        json.get("hubTypes")
                .forEach(
                        h -> patterns.put(h.get("id").asText(), h.get("pattern").asText()));
        for (Map<String, String> row : rows(PackTables.members(plan))) {
            JsonNode member = members.get(row.get("member"));
            assertThat(row).containsEntry("strut type", member.get("strutType").asText());
            assertThat(List.of(row.get("from node") + row.get("from hole"), row.get("to node") + row.get("to hole")))
                    .containsExactlyInAnyOrder(end(member, "a"), end(member, "b"));
            for (String side : List.of("from", "to")) {
                String hubType = hubTypes.get(row.get(side + " node"));
                assertThat(row)
                        .containsEntry(side + " hub type", hubType)
                        .containsEntry(side + " pattern", patterns.get(hubType));
            }
        }
    }

    private static String end(JsonNode member, String end) {
        return member.get(end).get("node").asText()
                + member.get(end).get("hole").asText();
    }

    @Test
    void holes_everyHole_saysWhatThePlanSays() throws IOException {
        Plan plan = PackJobs.plan(PackJobs.metric());
        List<Map<String, String>> rows = rows(PackTables.holes(plan));
        int at = 0;
        for (JsonNode pattern : json(plan).get("patterns")) {
            for (JsonNode hole : pattern.get("holes")) {
                Map<String, String> row = rows.get(at++);
                assertThat(row)
                        .containsEntry("pattern", pattern.get("id").asText())
                        .containsEntry("hole", hole.get("n").asText())
                        .containsEntry("cutter", hole.get("cutter").asText())
                        .containsEntry("pilot", "the saw's own pilot drill")
                        .containsEntry("fingerprint", pattern.get("fingerprint").asText());
                assertThat(number(row, "azimuth from the 0 line (deg)"))
                        .isCloseTo(hole.get("azimuthDeg").asDouble(), within(0.5e-4 + 1e-9));
                assertThat(number(row, "slack (deg)"))
                        .isCloseTo(hole.get("slackDeg").asDouble(), within(0.5e-4 + 1e-9));
                // Half a minute is 1/120 of a degree.
                assertThat(degrees(row.get("azimuth (deg and min)")))
                        .isCloseTo(hole.get("azimuthDeg").asDouble(), within(1 / 120.0 + 1e-9));
                // The arc of a full turn is π times the measured outside diameter.
                double arc = hole.get("azimuthDeg").asDouble() / 360 * StrictMath.PI * 160.1;
                assertThat(number(row, "arc on the outside (mm)")).isCloseTo(arc, within(0.5e-3 + 1e-9));
                assertThat(inches(row.get("arc on the outside (to 1/32 in)")) - arc)
                        .isCloseTo(number(row, "error of the 1/32 (mm)"), within(0.5e-3 + 1e-9));
            }
        }
        assertThat(rows).hasSize(at);
    }

    @Test
    void hubs_everyHub_standsOnceWithItsPlaceAndWayUp() throws IOException {
        Plan plan = PackJobs.plan(PackJobs.metric());
        List<Map<String, String>> rows = rows(HubTable.print(plan));
        JsonNode nodes = json(plan).get("nodes");
        assertThat(rows).hasSize(nodes.size());
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> row = rows.get(i);
            JsonNode node = nodes.get(i);
            assertThat(row)
                    .containsEntry("hub", node.get("id").asText())
                    .containsEntry("hub type", node.get("hubType").asText())
                    .containsEntry("pattern", node.get("hubType").asText().replace('H', 'C'));
            assertThat(node.get("id").asText()).matches("T" + row.get("tier") + "-0*" + row.get("place"));
            assertThat(number(row, "UP clockwise from the 0 line (deg)"))
                    .isCloseTo(node.get("turnDeg").asDouble(), within(0.5e-4 + 1e-9));
            assertThat(number(row, "z (mm)")).isCloseTo(node.at("/xyzMm/2").asDouble(), within(0.5e-3 + 1e-9));
            assertThat(row.get("UP: straight up as seen from outside; at the apex the +x meridian"))
                    .matches("UP (at hole \\d|between hole \\d and \\d)");
        }
    }

    private static double degrees(String text) {
        assertThat(text).matches("\\d+ deg [0-5]\\d min");
        String[] words = text.split(" ");
        return Double.parseDouble(words[0]) + Double.parseDouble(words[2]) / 60;
    }

    // What spreadsheets take for a formula: OWASP, "CSV Injection" (cells that begin with = + - @, tab or carriage
    // return).
    @Test
    void tables_titleLikeAFormula_startsNoCellWithIt() {
        for (String title : List.of("=1+1", "+1", "-1", "@SUM(A1)", "  =1+1", "\t=1", "\r=1", "＝1+1")) {
            Plan plan = PackJobs.plan(PackJobs.titled(PackJobs.inch(), title));
            for (Table table : List.of(
                    PackTables.cutList(plan), PackTables.members(plan), PackTables.holes(plan), HubTable.print(plan))) {
                assertThat(rows(table)).allSatisfy(row -> assertThat(row).containsEntry("job", "'" + title));
            }
        }
        Plan plain = PackJobs.plan(PackJobs.titled(PackJobs.inch(), "Shed, \"north\"\nwall"));
        assertThat(rows(PackTables.cutList(plain)))
                .allSatisfy(row -> assertThat(row).containsEntry("job", "Shed, \"north\"\nwall"));
    }

    @Test
    void tables_cells_areNeitherFormulasNorDates() {
        Plan plan = PackJobs.plan(PackJobs.metric());
        for (Table table : List.of(
                PackTables.cutList(plan), PackTables.members(plan), PackTables.holes(plan), HubTable.print(plan))) {
            List<List<String>> records = CsvRecords.read(text(table));
            assertThat(records).allSatisfy(record -> assertThat(record).hasSameSizeAs(records.get(0)));
            for (List<String> record : records) {
                assertThat(record)
                        .noneMatch(cell -> cell.matches("[=+@].*"))
                        .noneMatch(cell -> cell.startsWith("-") && !cell.matches("-\\d+\\.\\d+"))
                        .noneMatch(cell -> cell.matches("\\d+[-/]\\d+([-/]\\d+)?"));
            }
        }
    }

    @Test
    void tables_figures_arePlainAscii() {
        Plan plan = PackJobs.plan(PackJobs.metric());
        for (Table table : List.of(
                PackTables.cutList(plan), PackTables.members(plan), PackTables.holes(plan), HubTable.print(plan))) {
            assertThat(text(table).chars()).allMatch(c -> c < 127);
        }
    }
}
