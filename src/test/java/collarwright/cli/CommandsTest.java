package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each command as a person types it. */
class CommandsTest {

    @TempDir
    private Path folder = Path.of("unset");

    @Test
    void nothing_showsTheCommands() {
        CommandRun run = CommandRun.of();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("make", "check", "compare", "tilt", "trial", "new", "profiles", "explain");
    }

    @ParameterizedTest
    @ValueSource(strings = {"make", "check", "compare", "tilt", "trial", "new", "profiles", "explain"})
    void help_ofEveryCommand_isThere(String command) {
        CommandRun run = CommandRun.of(command, "--help");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("Usage: collarwright " + command);
    }

    @Test
    void help_goesToStandardOutput() {
        CommandRun run = CommandRun.of("make", "--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("--replace", "--profiles", "--out");
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"mkae job.toml", "make", "check a.toml b.toml", "make job.toml --replcae", "tilt"})
    void wrongCommandLine_isRefused(String line) {
        CommandRun run = CommandRun.of(line.split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("COMMAND_LINE", "--help");
    }

    /** A name that no file can have stands in for one with accents under a terminal that knows none. */
    @Test
    void nameThatNoFileCanHave_isToldWithoutWordsOfTheProgram() {
        CommandRun run = CommandRun.of("check", "a\0b.toml");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("COMMAND_LINE", "to the name of a file", "LC_ALL=C.UTF-8");
        assertThat(run.err()).doesNotContain("java.nio", "Exception");
    }

    @Test
    void starter_isMadeAsItIs() throws IOException {
        Path job = folder.resolve("Größe é").resolve("my job.toml");
        Files.createDirectory(job.getParent());
        assertThat(CommandRun.of("new", job.toString()).code()).isZero();

        CommandRun check = CommandRun.of("check", job.toString());
        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out()).contains("web between holes").doesNotContain("smallest collars");
        CommandRun collars = CommandRun.of("check", job.toString(), "--collars");
        assertThat(collars.code()).as(collars.err()).isZero();
        assertThat(collars.out().lines())
                .anyMatch(l -> l.startsWith("the smallest collars without a warning"))
                .anyMatch(l -> l.startsWith("pvc-") && l.contains(" mm ") && l.contains("°"));

        CommandRun make = CommandRun.of("make", job.toString());
        assertThat(make.code()).as(make.err()).isZero();
        assertThat(make.out()).contains("my job-pack");
        assertThat(folder.resolve("Größe é/my job-pack/index.html")).exists();
    }

    @Test
    void starter_namesEveryShippedMachine() {
        for (var machine : Profiles.load(List.of(new BundledProfiles())).all(Profiles.Kind.MACHINE)) {
            assertThat(NewCommand.starter()).containsPattern("[\" ]" + machine.name() + "[\",: \n]");
        }
    }

    @Test
    void starter_isNotWrittenOverAFile() throws IOException {
        Path job = Files.writeString(folder.resolve("job.toml"), "mine");
        CommandRun run = CommandRun.of("new", job.toString());
        assertThat(run.code()).isEqualTo(5);
        assertThat(job).hasContent("mine");
    }

    @Test
    void checkJson_ofASoundJob_holdsChecksWithLimits() throws IOException {
        Path job = folder.resolve("job.toml");
        CommandRun.of("new", job.toString());
        CommandRun run = CommandRun.of("check", job.toString(), "--json");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        JsonNode checks = new ObjectMapper().readTree(run.out()).path("checks");
        assertThat(checks.size()).isGreaterThan(5);
        assertThat(checks.get(0).path("margin").isNumber()).isTrue();
    }

    @Test
    void checkJson_ofAMissingFile_isStillJson() throws IOException {
        CommandRun run = CommandRun.of("check", folder.resolve("none.toml").toString(), "--json");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).isEmpty();
        assertThat(new ObjectMapper()
                        .readTree(run.out())
                        .path("findings")
                        .get(0)
                        .path("code")
                        .asText())
                .isEqualTo("JOB_FILE_MISSING");
    }

    @Test
    void checkJson_ofAWrongJob_isStillJson() throws IOException {
        Path job = Files.writeString(folder.resolve("job.toml"), "titel = \"x\"\n");
        CommandRun run = CommandRun.of("check", job.toString(), "--json");
        assertThat(run.code()).isEqualTo(3);
        assertThat(new ObjectMapper().readTree(run.out()).path("findings").size())
                .isGreaterThan(1);
    }

    // A rod of 60 mm through a thin board: the slit form (cos a = d/D less the thickness's share) for a wide bore.
    @Test
    void tilt_wideCollar_isARodThroughABoard() throws IOException {
        // A board 10 mm thick with a hole of 50 mm and a rod of 30 mm: 50 cos a = 30 + 10 sin a, solved by bisection.
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 100; i++) {
            double a = (low + high) / 2;
            if (50 * Math.cos(a) - 10 * Math.sin(a) > 30) {
                low = a;
            } else {
                high = a;
            }
        }
        CommandRun run = CommandRun.of(
                "tilt", "--strut", "30", "--collar-od", "1000 m", "--wall", "10", "--hole", "50", "--json");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(new ObjectMapper().readTree(run.out()).path("tiltLimitDeg").asDouble())
                .isCloseTo(Math.toDegrees(low), within(0.01));
    }

    @Test
    void tilt_leanAndHole_areInverse() throws IOException {
        String[] sizes = {"tilt", "--strut", "0.922 in", "--collar-od", "4.5in", "--wall", "0.337in"};
        JsonNode need = new ObjectMapper()
                .readTree(
                        CommandRun.of(with(sizes, "--lean", "15.86", "--json")).out());
        String hole = need.path("holeMm").asText() + " mm";
        JsonNode limit = new ObjectMapper()
                .readTree(CommandRun.of(with(sizes, "--hole", hole, "--json")).out());
        assertThat(limit.path("tiltLimitDeg").asDouble()).isCloseTo(15.86, within(1e-9));
    }

    @Test
    void tilt_easedRims_letTheStrutLeanFurther() {
        String[] sizes = {"tilt", "--strut", "40", "--collar-od", "160", "--wall", "8", "--hole", "44"};
        CommandRun sharp = CommandRun.of(sizes);
        CommandRun eased = CommandRun.of(with(sizes, "--rims", "0.5 mm"));
        // A wall of 8 mm eased by 0.5 mm on either side is a wall of 7 mm inside a collar of 159 mm.
        CommandRun thinner =
                CommandRun.of("tilt", "--strut", "40", "--collar-od", "159", "--wall", "7", "--hole", "44");
        assertThat(tiltLimit(eased)).isEqualTo(tiltLimit(thinner)).isNotEqualTo(tiltLimit(sharp));
        assertThat(sharp.out()).contains("Sharp rims are assumed");
        assertThat(eased.out()).contains("eased, 0.500 mm").doesNotContain("Sharp rims");
    }

    private static String tiltLimit(CommandRun run) {
        return run.out()
                .lines()
                .filter(l -> l.startsWith("tilt limit"))
                .findFirst()
                .orElse("none");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--strut 40 --collar-od 160 --wall 8 --hole 44 --units cubits",
                "--strut 40 --collar-od 160 --wall 80 --hole 44",
                "--strut 40 --collar-od 160 --wall 8 --hole 39",
                "--strut 40 --collar-od 160 --wall 8 --hole 144",
                "--strut 150 --collar-od 160 --wall 8 --hole 144",
                "--strut 40 --collar-od 160 --wall 8 --lean 81",
                "--strut 40 --collar-od 160 --wall 8 --lean 11,5",
                "--strut 40 --collar-od 60 --wall 8 --lean 60",
                "--strut 40,2 --collar-od 160 --wall 8 --hole 44",
                "--strut 40 --collar-od 160 --wall 8 --hole 44 --rims 4",
                "--strut -40 --collar-od 160 --wall 8 --hole 44"
            })
    void tilt_impossible_isRefused(String options) {
        CommandRun run = CommandRun.of(("tilt " + options).split(" "));
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("expected", "found");
    }

    @Test
    void tilt_centimetres_areRead() throws IOException {
        CommandRun run =
                CommandRun.of("tilt --strut 4 --collar-od 16 --wall 0.8 --hole 4.4 --units cm --json".split(" "));
        assertThat(new ObjectMapper().readTree(run.out()).path("strutMm").asDouble())
                .isEqualTo(40);
    }

    @Test
    void profiles_listsEveryKindWithTitles() {
        CommandRun run = CommandRun.of("profiles");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("pvc-metric-110x8.2", "materials", "metric-twist", "rotary-plain", "not measured");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pvc-metric-110x8.2", "pvc", "metric-twist", "rotary-cycles", "press", "emt-3in"})
    void profiles_one_hasASourceAndAFile(String name) {
        CommandRun run = CommandRun.of("profiles", name);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).containsPattern("(?m)^  source +\\S").containsPattern("(?m)^  file +\\S");
    }

    @Test
    void profiles_unknown_offersTheNearest() {
        CommandRun run = CommandRun.of("profiles", "pvc-metrik-110x8.2");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("PROFILE_UNKNOWN", "pvc-metric-110x8.2");
    }

    @Test
    void profiles_ownFolder_winsByName() throws IOException {
        Path own = Files.createDirectory(folder.resolve("mine é"));
        Files.writeString(own.resolve("wood.toml"), "[material.pvc]\ntitle = \"our own pvc\"\n");
        CommandRun run = CommandRun.of("profiles", "--profiles", own.toString());
        // Whatever else it lacks is told by its file's name.
        assertThat(run.err() + run.out()).contains("wood.toml");
        assertThat(CommandRun.of(
                                "profiles", "--profiles", folder.resolve("none").toString())
                        .code())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @EnumSource(Code.class)
    void explain_everyCode_hasCauseAndCure(Code code) {
        CommandRun run = CommandRun.of("explain", code.name());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains(code.name()).hasLineCount((int)
                run.out().lines().count());
        assertThat(run.out().length()).isGreaterThan(100);
    }

    @Test
    void explain_unknown_offersTheNearest() {
        CommandRun run = CommandRun.of("explain", "HOLE_SLAK");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("HOLE_SLACK");
    }

    @Test
    void progress_toldOnlyToAPersonWhoWaits() throws InterruptedException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal live = new Terminal(
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                true);
        try (Progress progress = new Progress(live, 1)) {
            progress.step("planning");
            for (int i = 0; i < 500 && err.size() == 0; i++) {
                Thread.sleep(10);
            }
            progress.step("drawing");
        }
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("planning …\ndrawing …\n");
        try (Progress progress = new Progress(live, 600_000)) {
            progress.step("writing");
        }
        assertThat(err.toString(StandardCharsets.UTF_8)).doesNotContain("writing");
    }

    private static String[] with(String[] args, String... more) {
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return all;
    }
}
