package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotarySettings;
import collarwright.plan.Production;
import collarwright.rehearsal.Rehearsal;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import collarwright.tooling.Boring;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** End mills, their cutting data and a machine that bores, as the bundled profiles have them. */
class BoringProfilesTest {

    @Test
    void bundled_endMills_areRead() {
        List<Cutter> mills = Jobs.PROFILES.rack("end-mills").orElseThrow().cutters();

        assertThat(mills).extracting(Cutter::id).containsExactly("EM-6", "EM-8", "EM-10", "EM-12", "EM-16", "EM-20");
        assertThat(mills).allSatisfy(c -> {
            assertThat(c.kind()).isEqualTo(CutterKind.END_MILL);
            assertThat(c.teeth()).isEqualTo(2);
            assertThat(c.lead()).isZero();
            assertThat(c.bores()).isFalse();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"pvc", "steel", "stainless", "aluminium", "wood"})
    void bundled_cuttingData_haveEndMills(String material) {
        CuttingData data = Jobs.PROFILES.cutting(material).orElseThrow();

        for (double size : new double[] {6, 8, 12, 20}) {
            assertThat(data.rows())
                    .filteredOn(r -> r.kind() == CutterKind.END_MILL && r.fromSize() <= size && size <= r.toSize())
                    .isNotEmpty()
                    .allSatisfy(r -> assertThat(r.source()).isEqualTo("our choice, no source"));
        }
    }

    @Test
    void bundled_machine_hasArcsWhereItHasALinearY() {
        Machine bores = Jobs.PROFILES.machine("rotary-bore").orElseThrow();
        Machine still = Jobs.PROFILES.machine("rotary-cycles").orElseThrow();

        assertThat(bores.post().words()).containsAll(ProgramWords.ARCS);
        assertThat(bores.travel().across()).contains(new Machine.Reach(-75, 75));
        assertThat(still.post().words()).doesNotContainAnyElementsOf(ProgramWords.ARCS);
    }

    @ParameterizedTest
    @CsvSource({"arcs = false, false", "arcs = true, true"})
    void machine_arcs_areTaken(String line, boolean arcs) throws IOException {
        Machine machine = changed("length-decimals", line + "\nlength-decimals")
                .machine("rotary-bore")
                .orElseThrow();

        assertThat(machine.post().words().contains("G3")).isEqualTo(arcs);
    }

    @Test
    void machine_arcsThatItsWordsLack_areFound() throws IOException {
        String words =
                "words = [\"G0\", \"G1\", \"G4\", \"G17\", \"G20\", \"G21\", \"G90\", \"G94\", \"M0\", \"M3\", \"M5\","
                        + " \"M30\", \"X\", \"Y\", \"Z\", \"A\", \"F\", \"S\", \"P\", \"G80\", \"G81\", \"G83\", \"G98\", \"R\", \"Q\"]\n";
        Profiles profiles = changed("length-decimals", "arcs = true\n" + words + "length-decimals");

        assertThat(profiles.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo(Code.JOB_CONFLICT);
            assertThat(f.found()).isEqualTo("no G2, no G3, no I, no J");
        });
    }

    /** The bundled machines with one text of the machine that bores changed. */
    private static Profiles changed(String old, String other) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("profiles/machines.toml"));
        int at = text.indexOf(old, text.indexOf("name = \"rotary-bore\""));
        String changed = text.substring(0, at) + other + text.substring(at + old.length());
        return Profiles.load(List.of(OwnProfiles.of("machines.toml", changed)));
    }

    @Test
    void boredJob_isBoredAndPassesItsReplay() throws IOException {
        Job job = DomeJobs.read(DomeJobs.named("bored", "hutch"));
        RotarySettings settings = Production.settings(job);
        Production made = Production.of(job, List.of());

        assertThat(job.drilling().boring().rule()).isEqualTo(Boring.Rule.NO_FIT);
        assertThat(made.rotary().findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(made.rotary().programs())
                .hasSizeGreaterThan(4)
                .allSatisfy(p -> assertThat(Rehearsal.rehearse(p, settings)).isEmpty());
        assertThat(made.rotary().programs())
                .anySatisfy(p -> assertThat(p.text()).contains("\nG3 X"));
    }
}
