package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.ProjectFolder;
import org.junit.jupiter.api.Test;

/** What {@code check} tells a shop that works in inches, and one that works in millimetres. */
class CheckTableTest {

    private static CommandRun check(String sample) {
        return CommandRun.of(
                "check",
                ProjectFolder.top()
                        .resolve("output-samples/" + sample + "/job.toml")
                        .toString());
    }

    // By hand: half the collar's 2.375 in less half of the 1-3/32 in hole is 0.640625 in, 16.27 mm.
    @Test
    void inchJob_tellsInchesFirst() {
        CommandRun run = check("seedling-house");
        assertThat(run.out())
                .containsPattern("web to edge +0\\.641 in \\(16\\.27 mm\\) ")
                .containsPattern("radius \\d+\\.\\d+ in \\(\\d+\\.\\d mm\\)");
        assertThat(run.err()).containsPattern("it can move \\d\\.\\d{3} in \\(\\d+\\.\\d mm\\) outward");
    }

    @Test
    void metricJob_hasNoInches() {
        assertThat(check("cloche").out()).contains(" mm ").doesNotContain(" in (");
    }

    @Test
    void namesOfChecks_doNotSoundLikeFaults() {
        assertThat(check("seedling-house").out())
                .contains("least slack, nominal", "strut length")
                .doesNotContain("hole short of reach", "too short", "crowding");
    }
}
