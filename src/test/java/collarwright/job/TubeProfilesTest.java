package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.CutMeans;
import collarwright.machining.Machine;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.TubeCutter;
import collarwright.plan.Production;
import collarwright.rehearsal.Rehearsal;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The keys of a tube cutter, and what of them does not go together. */
class TubeProfilesTest {

    private static Profiles changed(String old, String other) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("profiles/machines.toml"));
        int at = text.indexOf(old, text.indexOf("name = \"tube-plain\""));
        assertThat(at).as(old).isPositive();
        String changed = text.substring(0, at) + other + text.substring(at + old.length());
        return Profiles.load(List.of(OwnProfiles.of("machines.toml", changed)));
    }

    @Test
    void plain_isRead() {
        Machine machine = Jobs.PROFILES.machine("tube-plain").orElseThrow();
        TubeCutter tube = machine.tube().orElseThrow();
        assertThat(machine.kind()).isEqualTo(Machine.Kind.TUBE);
        assertThat(tube.process()).isEqualTo(CutMeans.PLASMA);
        assertThat(tube.speed().of("aluminium")).isEqualTo(2500);
        assertThat(tube.speed().of("steel")).isEqualTo(2000);
        assertThat(tube.limits()).isEqualTo(new TubeCutter.Limits(220, true, 100_000));
        assertThat(machine.post().words()).contains("G93", "M3", "M5", "A").doesNotContain("S", "Y", "G2");
        assertThat(machine.source()).contains("our choice, no source");
    }

    @Test
    void knife_aboveThePipe_isFound() throws IOException {
        String knife = "process = \"knife\"\n";
        Profiles profiles = changed("process = \"plasma\"\n", knife);
        assertThat(profiles.machine("tube-plain")).isEmpty();
        assertThat(profiles.findings()).extracting(Finding::expected).anyMatch(e -> e.contains("below 0 for a blade"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "cut-height = \"1.5 mm\"|cut-height = \"-6 mm\"|above 0 for a jet",
                "pierce-height = \"4 mm\"|pierce-height = \"1 mm\"|as high as cut-height",
                "take-up-deg = 0|take-up-deg = 2|turns both ways",
                "parting-kerf = \"1.5 mm\"|parting-kerf = \"3 mm\"|as wide as tube.kerf",
                "end-trim = \"10 mm\"|end-trim = \"1 mm\"|as much as tube.kerf",
                "cycles = false|cycles = true|drills nothing",
                "extension = \"nc\"|extension = \"nc\"~tool-change = \"pause\"|has one cutter",
                "extension = \"nc\"|extension = \"nc\"~words = [\"G0\", \"G1\", \"X\"]|for kind = tube",
                "speed-mm-per-min = 2000|speed-mm-per-min = 9000|at most travel.max-feed",
                "speed-mm-per-min = 2500|speed-mm-per-min = 9000|at most travel.max-feed",
                "z = [\"0 mm\"|y = [\"-5 mm\", \"5 mm\"]~z = [\"0 mm\"|stays over the axis",
                "sign = \"rs274\"|sign = \"rs274\"~form = \"by-hand\"|a word that turns the pipe",
                "kerf = \"1.5 mm\"~pierce|kerf = \"0 mm\"~pierce|above 0",
                "most-lines = 100000|most-lines = 3|100",
                "speeds = [ {|speeds = [ { material = \"aluminium\", speed-mm-per-min = 900 }, {|once",
                "process = \"plasma\"|process = \"water\"|plasma",
            })
    void keys_againstOneAnother_areFound(String old, String other, String expected) throws IOException {
        Profiles profiles = changed(old.replace("~", "\n"), other.replace("~", "\n"));
        assertThat(profiles.machine("tube-plain")).isEmpty();
        assertThat(profiles.findings()).extracting(Finding::expected).anyMatch(e -> e.contains(expected));
    }

    @Test
    void markSeconds_areRead() throws IOException {
        Profiles profiles = changed("cut-height = \"1.5 mm\"\n", "cut-height = \"1.5 mm\"\nmark-seconds = 0.1\n");
        assertThat(profiles.machine("tube-plain")
                        .orElseThrow()
                        .tube()
                        .orElseThrow()
                        .start()
                        .markSeconds())
                .isEqualTo(0.1);
    }

    @Test
    void shelter_isCutAndPassesItsReplay() throws IOException {
        Job job = DomeJobs.read(DomeJobs.named("tubes", "shelter"));
        RotarySettings settings = Production.settings(job);
        Production made = Production.of(job, List.of());
        RotaryPlan plan = made.rotary();
        assertThat(made.makeable()).isTrue();
        assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(plan.programs())
                .hasSizeGreaterThan(2)
                .allSatisfy(p -> assertThat(Rehearsal.rehearse(p, settings)).isEmpty());
        // The lean is that of a drilled hole: nothing to tell.
        assertThat(made.findings()).extracting(Finding::expected).noneMatch(e -> e.contains("cut toward the axis"));
    }
}
