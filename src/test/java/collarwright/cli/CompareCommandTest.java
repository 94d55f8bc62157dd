package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs side by side. */
class CompareCommandTest {

    private static final String CLOCHE = "output-samples/cloche/job.toml";
    private static final String ORCHARD = "output-samples/orchard-net/job.toml";

    @TempDir
    private Path folder = Path.of("unset");

    @Test
    void compare_twoJobs_tellsWhatTheirPacksTell() throws IOException {
        CommandRun run = CommandRun.of("compare", CLOCHE, ORCHARD, "--json");

        assertThat(run.code()).as(run.err()).isZero();
        JsonNode jobs = new ObjectMapper().readTree(run.out()).get("jobs");
        assertThat(jobs).hasSize(2);
        for (int i = 0; i < 2; i++) {
            Path pack = Path.of(i == 0 ? CLOCHE : ORCHARD).resolveSibling("pack/plan.json");
            JsonNode plan = new ObjectMapper().readTree(Files.readString(pack));
            JsonNode job = jobs.get(i);
            assertThat(job.get("patterns").asInt())
                    .isEqualTo(plan.get("patterns").size());
            assertThat(job.get("strutTypes").asInt())
                    .isEqualTo(plan.get("strutTypes").size());
            assertThat(job.get("hubTypes").asInt())
                    .isEqualTo(plan.get("hubTypes").size());
            assertThat(job.get("struts").asInt())
                    .isEqualTo(plan.at("/order/struts").asInt());
            assertThat(job.get("shopMinutes").asInt())
                    .isEqualTo(plan.at("/times/shopMinutes").asInt());
            int sticks = 0;
            for (JsonNode stock : plan.get("stock")) {
                sticks += stock.at("/cutting/proof/sticks").asInt();
            }
            assertThat(job.get("sticks").asInt()).isEqualTo(sticks);
        }
    }

    @Test
    void compare_forAPerson_hasAColumnForEachJob() throws IOException {
        CommandRun run = CommandRun.of("compare", CLOCHE, ORCHARD, CLOCHE);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("frequency", "waste of sticks", "Cloches, nursery bed");
        assertThat(run.out()
                        .lines()
                        .filter(l -> l.startsWith("revision"))
                        .findFirst()
                        .orElseThrow()
                        .split(" +"))
                .hasSize(4);
    }

    @Test
    void compare_oneJobOrAWrongOne_isRefused() throws IOException {
        assertThat(CommandRun.of("compare", CLOCHE).code()).isEqualTo(2);
        Path bad = Files.writeString(folder.resolve("bad.toml"), "title = 3\n");
        CommandRun run = CommandRun.of(
                "compare", bad.toString(), CLOCHE, folder.resolve("none.toml").toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("JOB_WRONG_TYPE", "JOB_FILE_MISSING");
        assertThat(CommandRun.of("compare", bad.toString(), CLOCHE, "--json").out())
                .contains("JOB_WRONG_TYPE");
    }
}
