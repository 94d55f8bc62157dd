package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.ProfileSource;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.testing.DomeJobs;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A pack whose collars are cut by a tube cutter. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TubePackTest {

    private Map<String, byte[]> pack = Map.of();

    /** The profiles of the program, with a tube cutter that marks collars. */
    private record Marking(BundledProfiles own) implements ProfileSource {
        @Override
        public List<String> names() throws IOException {
            return own.names();
        }

        @Override
        public byte[] read(String name) throws IOException {
            String text = new String(own.read(name), StandardCharsets.UTF_8);
            return text.replace("most-lines = 100000", "most-lines = 100000\nmark-seconds = 0.1")
                    .getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String place(String name) {
            return own.place(name);
        }
    }

    /** A job on the same machine, if it marked collars. */
    static Job marked() throws IOException {
        String text = Files.readString(DomeJobs.named("tubes", "shelter"));
        Profiles profiles = Profiles.load(List.of(new Marking(new BundledProfiles())));
        return JobReader.read("job.toml", text, profiles).job().orElseThrow();
    }

    @BeforeAll
    void make() throws IOException {
        Production production = Production.of(DomeJobs.read(DomeJobs.named("tubes", "shelter")), List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        pack = PackContents.of(production);
    }

    private String text(String path) {
        byte[] bytes = pack.get(path);
        assertThat(bytes).as(path + " of " + pack.keySet()).isNotNull();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Test
    void pack_hasOneProgramAStick_itsAirCut_andItsPicture() {
        assertThat(pack.keySet())
                .contains(
                        "machine/LA-1-TC-PLASMA.nc",
                        "machine/LA-1-TC-PLASMA-air.nc",
                        "machine/LA-1-TC-PLASMA.svg",
                        "machine/rotary-direction-test.nc");
        assertThat(text("machine/LA-1-TC-PLASMA.svg")).contains("places cut in order");
        assertThat(text("index.html")).contains("tube cutter plasma, kerf 1.5 mm");
    }

    @Test
    void planJson_tellsWhatCuts_andHowLong() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(text("plan.json"));
        JsonNode tube = plan.at("/inputs/tubeCutter");
        assertThat(tube.get("process").asText()).isEqualTo("plasma");
        assertThat(tube.get("kerfMm").asDouble()).isEqualTo(1.5);
        JsonNode step = plan.at("/sticks/0/programs/0");
        assertThat(step.has("rpm")).isFalse();
        assertThat(step.get("feedMmPerMin").asDouble()).isCloseTo(2000, within(0.1));
        assertThat(plan.at("/programs/0/tools/0").asText()).isEqualTo("TC-PLASMA");
        assertThat(plan.at("/programs/0/seconds").asDouble()).isPositive();
        assertThat(plan.at("/batch/turnedDeg").asDouble())
                .isGreaterThan(plan.at("/batch/leastTurnedDeg").asDouble());
    }

    @Test
    void setupSheet_saysWhatToWatch() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(pack.get("traveller.pdf"))) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("draw the fumes off")
                    .contains("Local rules and the machine's manual count first")
                    .contains("parted off last, from the free end inward")
                    .contains("This machine marks nothing");
        }
    }

    @Test
    void markedCollars_haveTheirSpots() throws IOException {
        Production production = Production.of(marked(), List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        assertThat(production.rotary().programs().get(0).text()).contains("0 line dimple");
    }
}
