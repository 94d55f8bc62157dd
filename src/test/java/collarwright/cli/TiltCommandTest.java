package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TiltCommandTest {

    private static final String SIZES = "--strut 40.2 --collar-od 160 --wall 5.1 ";

    @TempDir
    private Path folder = Path.of("");

    private static CommandRun run(String options, String... more) {
        List<String> args = new ArrayList<>(List.of(("tilt " + SIZES + options).split(" ")));
        args.addAll(List.of(more));
        return CommandRun.of(args.toArray(String[]::new));
    }

    private static JsonNode json(String options) throws IOException {
        CommandRun run = run(options + " --json");
        assertThat(run.code()).as(run.err()).isZero();
        return new ObjectMapper().readTree(run.out());
    }

    // The hole that a direction needs lets the strut lean that far and no further, whichever way it is asked.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "--bearing 40",
                "--bearing -90",
                "--swing 4.3",
                "--drill-tilt 3",
                "--drill-tilt -2 --drill-swing 1",
                "--slot-length 46 --bearing 80",
                "--slot-length 46 --slot-around",
                "--flat-cut",
                "--countersink 44",
                "--countersink 43 --countersink-inside 43",
                "--strut-oval 39.8 --bearing 20",
                "--rims 0.5 --bearing 10"
            })
    void leanAndHole_anyKind_areInverse(String options) throws IOException {
        JsonNode need = json("--lean 9 " + options);
        JsonNode back = json(options + " --lean 9 --hole " + need.path("holeMm").asText());
        assertThat(need.path("tiltLimitDeg").asDouble()).isCloseTo(9, within(1e-3));
        assertThat(back.path("tiltLimitDeg").asDouble()).isCloseTo(9, within(1e-3));
        assertThat(back.path("slackDeg").asDouble()).isCloseTo(0, within(1e-3));
        assertThat(back.path("shape").asText()).isNotEmpty();
        assertThat(back.path("degPerTenthMmHole").asDouble()).isPositive();
        assertThat(back.path("degPerTenthMmStrut").asDouble()).isNegative();
    }

    @Test
    void words_tellTheKindOfHoleAndTheSlack() {
        assertThat(run("--hole 42 --lean 8 --swing 4.3").out())
                .contains("swung to the side by 4.300°", "slack  ", "lean in all", "friction  ");
        assertThat(run("--hole 41 --slot-length 46 --slot-around").out())
                .contains("a slot 46 mm long round the collar");
        assertThat(run("--hole 40.3 --drill-tilt 11.64").out())
                .contains("drilled off-radial, tilt 11.640°", "passes from");
        assertThat(run("--hole 43 --flat-cut").out()).contains("cut flat, then rolled");
        assertThat(run("--hole 42 --countersink 43").out())
                .contains("countersunk to 43 mm outside, 42 mm inside")
                .doesNotContain("Sharp rims");
        assertThat(run("--hole 42 --strut-oval 39.4").out()).contains("oval, smallest 39.400 mm", "at its best");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--hole 42 --bearing 10 --swing 4",
                "--hole 42 --bearing 400",
                "--hole 42 --swing 76",
                "--hole 42 --swing 30",
                "--hole 42 --slot-around",
                "--hole 42 --slot-length 40",
                "--hole 42 --slot-length 160 --slot-around",
                "--hole 42 --flat-cut --drill-tilt 3",
                "--hole 42 --drill-tilt 46",
                "--hole 40.3 --drill-tilt 11.64 --bearing 180",
                "--hole 42 --drill-tilt x",
                "--hole 42 --countersink 42",
                "--hole 42 --countersink 60",
                "--hole 42 --countersink 44 --rims 0.5",
                "--hole 42 --strut-oval 41",
                "--hole 39 --strut-oval 39.5",
                "--hole 40.3 --flat-cut",
                "--lean 60 --countersink 41",
                "--hole 42 --envelope hole.png"
            })
    void impossible_isRefusedWithPlaceAndHint(String options) {
        CommandRun run = run(options);
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("COMMAND_LINE", "expected", "found", "do  ");
    }

    @Test
    void severalFaults_areAllTold() {
        assertThat(run("--slot-around --rims 2 --countersink 50 --bearing 4 --swing 80 --strut-oval 50")
                        .err())
                .contains("--strut-oval", "--slot-around", "--swing", "--rims", "--hole, --lean");
    }

    @Test
    void envelope_isDrawn_andNeverOverAFile() throws IOException {
        Path file = folder.resolve("Größe é.svg");
        String[] asked = {"--envelope", file.toString(), "--json"};
        CommandRun run = run("--hole 42 --lean 8 --swing 4.3", asked);
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode points = new ObjectMapper().readTree(run.out()).path("envelope");
        assertThat(points.size()).isEqualTo(72);
        assertThat(points.get(0).path("leanDeg").asDouble()).isBetween(11.0, 12.0);
        String svg = Files.readString(file);
        assertThat(svg).startsWith("<?xml").contains("It needs 9.08°", "<defs>").endsWith("</svg>\n");
        CommandRun again = run("--hole 42", asked);
        assertThat(again.code()).isEqualTo(5);
        assertThat(Files.readString(file)).isEqualTo(svg);
        CommandRun nowhere =
                run("--hole 42", "--envelope", folder.resolve("no/such.svg").toString());
        assertThat(nowhere.code()).isEqualTo(5);
    }

    @Test
    void envelope_ofATiltedDrilling_isSeenFromTheRadialLine() throws IOException {
        Path file = folder.resolve("tilted.svg");
        CommandRun run = run("--hole 41 --drill-tilt 8", "--envelope", file.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(file)).contains("drilled off-radial");
    }
}
