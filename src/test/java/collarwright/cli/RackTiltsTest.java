package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RackTiltsTest {

    private static JsonNode json(String options) throws IOException {
        CommandRun run = CommandRun.of(("tilt --strut 40.2 --collar-od 160 --wall 6 --json " + options).split(" "));
        assertThat(run.err()).isEmpty();
        return new ObjectMapper().readTree(run.out());
    }

    // The published rod through a board, D = d/cos θ + t·tan θ (Mathematics Central, University of Regina, question
    // QQ.09.18): at each row's tilt limit the strut asks for the row's own hole while the contact is on the mid-plane,
    // and
    // for a little less where the rim touches beside it.
    @Test
    void rows_tiltLimit_asksForTheirOwnHole() throws IOException {
        JsonNode rows = json("--rack metric-hole-saws").path("rack");
        assertThat(rows.size()).isGreaterThan(20);
        for (JsonNode row : rows) {
            double limit = StrictMath.toRadians(row.path("tiltLimitDeg").asDouble());
            double board = 40.2 / StrictMath.cos(limit) + 6 * StrictMath.tan(limit);
            double hole = row.path("asDrilledMm").asDouble();
            assertThat(board).as(row.toString()).isLessThanOrEqualTo(hole + 1e-9);
            assertThat(hole).isBetween(40.2, 148.0);
            assertThat(row.has("slackDeg")).isFalse();
            assertThat(row.path("reach").asBoolean()).isFalse();
        }
    }

    // By hand: 40.2/cos 11.64° + 6·tan 11.64° = 42.28 mm; the saws of the rack are 42 and 43 mm, so reach is 43.
    @Test
    void lean_marksTheChoices() throws IOException {
        JsonNode node = json("--lean 11.64 --rack metric-hole-saws");
        assertThat(node.path("holeMm").asDouble()).isCloseTo(42.28, within(0.005));
        assertThat(marked(node, "reach")).containsExactly("43 mm");
        JsonNode row42 = row(node, "42 mm");
        JsonNode row43 = row(node, "43 mm");
        double band = -row42.path("slackDeg").asDouble();
        assertThat(band).isBetween(0.5, 2.0);
        assertThat(marked(node, "nearest"))
                .as("42 mm is short by more than 0.5°")
                .containsExactly("43 mm");
        assertThat(row43.path("slackDeg").asDouble())
                .isCloseTo(row43.path("tiltLimitDeg").asDouble() - 11.64, within(1e-9));
        // A tenth more, by the difference of the two rows; a tenth counts most where the hole is tight.
        double step = (row43.path("tiltLimitDeg").asDouble()
                        - row42.path("tiltLimitDeg").asDouble())
                / 10;
        assertThat(row42.path("degPerTenthMmHole").asDouble()).isCloseTo(step, within(0.15 * step));
    }

    private static JsonNode row(JsonNode node, String marked) {
        for (JsonNode row : node.path("rack")) {
            if (row.path("marked").asText().equals(marked)) {
                return row;
            }
        }
        throw new AssertionError("no " + marked);
    }

    private static List<String> marked(JsonNode node, String key) {
        List<String> names = new ArrayList<>();
        for (JsonNode row : node.path("rack")) {
            if (row.path(key).asBoolean()) {
                names.add(row.path("marked").asText());
            }
        }
        return names;
    }

    @Test
    void text_severalRacks_standInOneTable() {
        CommandRun run = CommandRun.of(("tilt --strut 9.8 --collar-od 60 --wall 4 --lean 12"
                        + " --rack number-letter-twist --rack metric-twist")
                .split(" "));
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("as drilled, mm      in  tilt limit       slack  per 0.1 mm  cutter\n")
                .contains("twist drill X\n")
                .contains("twist drill 10 mm\n")
                .contains("  <- reach")
                .contains("  <- nearest");
        assertThat(run.out().indexOf("twist drill 10 mm"))
                .as("10 mm stands before X, 0.397 in or 10.084 mm")
                .isLessThan(run.out().indexOf("twist drill X\n"));
    }

    // By hand, a flat board: 40.2/cos 11.64° + 6·tan 11.64° = 42.28 mm, so the saw of 43 mm does; three more are shown.
    @Test
    void text_endsPastTheNeed_unlessAllIsAsked() {
        String asked = "tilt --strut 40.2 --collar-od 160 --wall 6 --lean 11.64 --rack metric-hole-saws";
        String few = CommandRun.of(asked.split(" ")).out();
        String all = CommandRun.of((asked + " --all").split(" ")).out();
        List<String> shown = saws(few);
        List<String> listed = saws(all);
        assertThat(shown).isEqualTo(listed.subList(0, shown.size()));
        assertThat(shown.get(shown.size() - 4)).contains("43 mm", "<- reach");
        assertThat(few).contains((listed.size() - shown.size()) + " larger cutters are left out");
        assertThat(listed).hasSizeGreaterThan(20);
        assertThat(all).doesNotContain("left out");
        // 43 mm / 25.4 = 1.6929 in.
        assertThat(shown.get(shown.size() - 4)).contains(" 43.000   1.693 ");
    }

    private static List<String> saws(String text) {
        return text.lines().filter(l -> l.contains("  hole saw ")).toList();
    }

    @Test
    void all_withoutARack_isRefused() {
        CommandRun run = CommandRun.of("tilt --strut 9.8 --collar-od 60 --wall 4 --lean 12 --all".split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--all  COMMAND_LINE").contains("--rack NAME");
    }

    @Test
    void text_nothingPasses_saysSo() {
        CommandRun run = CommandRun.of("tilt --strut 30 --collar-od 60 --wall 4 --rack metric-twist".split(" "));
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("No cutter of the racks lets the strut in")
                .doesNotContain("tilt limit");
    }

    @Test
    void rack_unknown_isRefused() {
        CommandRun run = CommandRun.of("tilt --strut 9.8 --collar-od 60 --wall 4 --rack metric-twits".split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--rack  COMMAND_LINE").contains("did you mean metric-twist");
    }

    @Test
    void nothingAsked_isRefused() {
        CommandRun run = CommandRun.of("tilt --strut 9.8 --collar-od 60 --wall 4".split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--hole, --lean or --rack");
    }
}
