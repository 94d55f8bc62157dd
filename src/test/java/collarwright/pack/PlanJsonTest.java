package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.dome.DomeSettings;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.strut.SizeRule;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

class PlanJsonTest {

    private static JsonNode read(Job job) throws IOException {
        return new ObjectMapper().readTree(PlanJson.write(PackJobs.plan(job), List.of()));
    }

    private static Map<String, JsonNode> byId(JsonNode list) {
        Map<String, JsonNode> found = new HashMap<>();
        list.forEach(one -> found.put(one.get("id").asText(), one));
        assertThat(found).hasSize(list.size());
        return found;
    }

    // Counts and chord factors of the 3-frequency dome cut at 5/9: H. Kenner, Geodesic Math and How to Use It,
    // University
    // of California Press, 1976, tables of chord factors (figures from memory).
    @Test
    void write_threeFrequencyFiveNinths_hasThePublishedPartsAndChords() throws IOException {
        JsonNode plan = read(PackJobs.metric());

        assertThat(plan.at("/counts/hubs").asInt()).isEqualTo(61);
        assertThat(plan.at("/counts/struts").asInt()).isEqualTo(165);
        assertThat(plan.get("strutTypes").findValuesAsText("count")).containsExactly("30", "55", "80");
        double radius = plan.at("/dome/radiusMm").asDouble();
        List<Double> factors = List.of(0.34862, 0.40355, 0.41241);
        for (int i = 0; i < 3; i++) {
            assertThat(plan.get("strutTypes").get(i).get("chordMm").asDouble() / radius)
                    .isCloseTo(factors.get(i), within(0.5e-5));
        }
    }

    // Spares by hand: two domes, 3 %, rounded up for every type: collars 12+1, 60+2, 20+1, 20+1, 5 ... by pattern.
    @Test
    void write_order_addsSparesForEveryType() throws IOException {
        JsonNode plan = read(PackJobs.metric());

        List<Integer> made = List.of(60 + 2, 110 + 4, 160 + 5);
        for (int i = 0; i < 3; i++) {
            assertThat(plan.get("strutTypes").get(i).get("made").asInt()).isEqualTo(made.get(i));
        }
        assertThat(plan.at("/order/struts").asInt()).isEqualTo(62 + 114 + 165);
        assertThat(plan.at("/order/rings").asInt()).isEqualTo(122 + 4);
        assertThat(plan.at("/order/ties").asInt()).isEqualTo(660 + 20);
        int collars = 0;
        for (JsonNode pattern : plan.get("patterns")) {
            int need = 2 * pattern.get("count").asInt();
            assertThat(pattern.get("made").asInt()).isEqualTo(need + (need * 3 + 99) / 100);
            collars += pattern.get("made").asInt();
        }
        assertThat(plan.at("/order/collars").asInt()).isEqualTo(collars);
    }

    @Test
    void write_members_takeEveryHoleOnce() throws IOException {
        JsonNode plan = read(PackJobs.inch());
        Map<String, JsonNode> nodes = byId(plan.get("nodes"));
        Map<String, JsonNode> hubTypes = byId(plan.get("hubTypes"));
        Set<String> holes = new HashSet<>();
        for (JsonNode member : plan.get("members")) {
            for (String end : List.of("a", "b")) {
                String node = member.get(end).get("node").asText();
                int hole = member.get(end).get("hole").asInt();
                assertThat(holes.add(node + "/" + hole)).isTrue();
                JsonNode struts =
                        hubTypes.get(nodes.get(node).get("hubType").asText()).get("struts");
                assertThat(struts.get(hole - 1).get("strutType")).isEqualTo(member.get("strutType"));
            }
        }
        assertThat(holes).hasSize(plan.at("/counts/strutEnds").asInt());
    }

    // Seen as a photographer does: forward is into the hub, up is up the dome, right is forward × up. A mirrored
    // azimuth or
    // turn fails here.
    @Test
    void write_holes_pointAtTheNodesTheirStrutsGoTo() throws IOException {
        for (Job job : List.of(PackJobs.metric(), PackJobs.inch())) {
            JsonNode plan = read(job);
            Map<String, JsonNode> nodes = byId(plan.get("nodes"));
            Map<String, JsonNode> patterns = byId(plan.get("patterns"));
            Map<String, JsonNode> hubTypes = byId(plan.get("hubTypes"));
            for (JsonNode member : plan.get("members")) {
                JsonNode a = nodes.get(member.at("/a/node").asText());
                JsonNode b = nodes.get(member.at("/b/node").asText());
                for (boolean first : List.of(true, false)) {
                    JsonNode from = first ? a : b;
                    JsonNode hubType = hubTypes.get(from.get("hubType").asText());
                    int hole = member.at(first ? "/a/hole" : "/b/hole").asInt();
                    double azimuth = patterns.get(hubType.get("pattern").asText())
                            .at("/holes/" + (hole - 1) + "/azimuthDeg")
                            .asDouble();
                    double seen =
                            bearing(from, first ? b : a) + from.get("turnDeg").asDouble();
                    double miss = (seen - azimuth) % 360;
                    assertThat(StrictMath.min(StrictMath.abs(miss), 360 - StrictMath.abs(miss)))
                            .isLessThan(1e-9);
                }
            }
        }
    }

    private static double bearing(JsonNode from, JsonNode to) {
        double[] p = xyz(from);
        double[] q = xyz(to);
        double r = StrictMath.sqrt(dot(p, p));
        double[] forward = {-p[0] / r, -p[1] / r, -p[2] / r};
        boolean apex = StrictMath.hypot(p[0], p[1]) < 1e-6;
        double[] world = apex ? new double[] {1, 0, 0} : new double[] {0, 0, 1};
        double[] right = cross(forward, world);
        double[] up = cross(right, forward);
        double[] along = {q[0] - p[0], q[1] - p[1], q[2] - p[2]};
        return StrictMath.toDegrees(StrictMath.atan2(dot(along, right), dot(along, up)));
    }

    private static double[] xyz(JsonNode node) {
        JsonNode xyz = node.get("xyzMm");
        return new double[] {
            xyz.get(0).asDouble(), xyz.get(1).asDouble(), xyz.get(2).asDouble()
        };
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    // By walking round both rims of every collar in steps of 0.1°: at most Ro·(1 − cos 0.05°) too high.
    @Test
    void write_lowestCollarPoint_isTheLowestOfAllRims() throws IOException {
        for (Job job : List.of(
                PackJobs.metric(),
                PackJobs.with(PackJobs.metric(), new DomeSettings(4, 7), new SizeRule.Height(900)),
                PackJobs.with(PackJobs.metric(), new DomeSettings(2, 6), new SizeRule.Radius(1500)))) {
            JsonNode plan = read(job);
            Map<String, JsonNode> hubTypes = byId(plan.get("hubTypes"));
            double lowest = Double.POSITIVE_INFINITY;
            for (JsonNode node : plan.get("nodes")) {
                double below = hubTypes.get(node.get("hubType").asText())
                        .get("collarBelowNodeMm")
                        .asDouble();
                lowest = StrictMath.min(lowest, lowestOfRims(xyz(node), below, plan.at("/inputs/collar")));
            }
            assertThat(plan.at("/dome/lowestCollarPointZMm").asDouble()).isCloseTo(lowest, within(4e-5));
        }
    }

    private static double lowestOfRims(double[] p, double below, JsonNode collar) {
        double r = StrictMath.sqrt(dot(p, p));
        double[] n = {p[0] / r, p[1] / r, p[2] / r};
        double[] side = cross(n, StrictMath.abs(n[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 1, 0});
        double length = StrictMath.sqrt(dot(side, side));
        double[] u = {side[0] / length, side[1] / length, side[2] / length};
        double[] v = cross(n, u);
        double outer = collar.get("outerRadiusMm").asDouble();
        double lowest = Double.POSITIVE_INFINITY;
        for (int step = 0; step < 3600; step++) {
            double angle = StrictMath.toRadians(step / 10.0);
            double rim = outer * (StrictMath.cos(angle) * u[2] + StrictMath.sin(angle) * v[2]);
            for (int half : new int[] {-1, 1}) {
                double along = r - below + half * collar.get("widthMm").asDouble() / 2;
                lowest = StrictMath.min(lowest, along * n[2] + rim);
            }
        }
        return lowest;
    }

    @Test
    void write_checks_standWorstFirst() throws IOException {
        JsonNode checks = read(PackJobs.inch()).get("checks");
        List<String> order = List.of("stop", "warn", "pass");
        for (int i = 1; i < checks.size(); i++) {
            int before = order.indexOf(checks.get(i - 1).get("verdict").asText());
            int rank = order.indexOf(checks.get(i).get("verdict").asText());
            assertThat(rank).isGreaterThanOrEqualTo(before);
            if (rank == before) {
                assertThat(checks.get(i).get("margin").asDouble())
                        .isGreaterThanOrEqualTo(checks.get(i - 1).get("margin").asDouble());
            }
        }
        assertThat(checks.size()).isGreaterThan(10);
    }

    @Test
    void write_anyLanguageAndTimeZone_givesTheSameBytes() {
        Plan plan = PackJobs.plan(PackJobs.inch());
        byte[] expected = PlanJson.write(plan, List.of());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG", "hi-IN")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(PlanJson.write(PackJobs.plan(PackJobs.inch()), List.of()))
                        .isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void write_text_isLinesOfUtf8() throws IOException {
        String text = new String(PlanJson.write(PackJobs.plan(PackJobs.inch()), List.of()), StandardCharsets.UTF_8);
        assertThat(text)
                .startsWith("{\n  \"format\": 2,\n  \"job\": {\n    \"title\": ")
                .endsWith("\n}\n")
                .contains("Größe", "Δ")
                .doesNotContain("\r", "\t", "-0.0,", "NaN", "Infinity");
        assertThat(read(PackJobs.inch()).at("/job/title").asText())
                .isEqualTo(PackJobs.inch().title());
        assertThat(text.lines().filter(line -> line.startsWith("    {\"id\": \"T")))
                .hasSize(read(PackJobs.inch()).get("nodes").size());
    }

    @Test
    void write_programs_areListedAsGiven() throws IOException {
        ProgramEntry entry = new ProgramEntry("machine/CA-TW-1in.ngc", "rotary-plain", 73.25, List.of("TW-1in"));
        JsonNode plan = new ObjectMapper().readTree(PlanJson.write(PackJobs.plan(PackJobs.inch()), List.of(entry)));
        assertThat(plan.at("/programs/0/file").asText()).isEqualTo(entry.file());
        assertThat(plan.at("/programs/0/seconds").asDouble()).isEqualTo(73.25);
        assertThat(plan.at("/programs/0/tools/0").asText()).isEqualTo("TW-1in");
    }

    @Test
    void write_stock_isWhatThePartsAddUpTo() throws IOException {
        JsonNode plan = read(PackJobs.inch());
        double struts = 0;
        for (JsonNode type : plan.get("strutTypes")) {
            struts += type.get("made").asInt() * type.get("cutMm").asDouble();
        }
        assertThat(plan.at("/stock/0/netLengthMm").asDouble()).isCloseTo(struts, within(1e-6));
        // The usual saw; where the job names none.
        assertThat(plan.at("/stock/0/kerfMm").asDouble()).isEqualTo(3);
        double sawn = 0;
        for (JsonNode layout : plan.at("/stock/0/cutting/layouts")) {
            sawn += layout.get("runs").asInt() * layout.get("piecesMm").asDouble();
        }
        assertThat(sawn).isBetween(struts - 1e-6, struts + 1);
        int collars = plan.at("/order/collars").asInt();
        // The width of a collar and one parting cut of 3.2 mm each.
        assertThat(plan.at("/stock/1/lengthMm").asDouble()).isCloseTo(collars * (63.5 + 3.2), within(1e-6));
        assertThat(plan.at("/stock/2/pieces").asInt())
                .isEqualTo(plan.at("/order/rings").asInt());
    }
}
