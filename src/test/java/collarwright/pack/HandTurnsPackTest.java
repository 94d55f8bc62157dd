package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.testing.ProjectFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A hand that turns the pipe takes its time: every stop that says "turn to" is counted, in papers, times and costs. */
class HandTurnsPackTest {

    private static Map<String, byte[]> pack(String times) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"))
                        .replace("machine = \"rotary-plain\"", "machine = \"index-by-hand\"")
                + "\n[shop.times]\nshop-hour = 60\n" + times;
        JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        Production production = Production.of(job, List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        return PackContents.of(production);
    }

    private static JsonNode row(JsonNode plan, String work) {
        for (JsonNode row : plan.at("/times/work")) {
            if (row.get("work").asText().equals(work)) {
                return row;
            }
        }
        throw new AssertionError("no row of " + work);
    }

    @Test
    void everyStopThatSaysTurnTo_isCounted_inTimesAndCost() throws IOException {
        Map<String, byte[]> pack = pack("hand-turn-seconds = 30\n");
        JsonNode plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
        long stops = 0;
        for (JsonNode program : plan.get("programs")) {
            String file = program.get("file").asText();
            if (!file.contains("-air") && program.has("stick")) {
                String text = new String(pack.get(file), StandardCharsets.UTF_8);
                stops += program.get("runs").asLong()
                        * Pattern.compile("TURN TO ").matcher(text).results().count();
            }
        }
        assertThat(stops).isPositive();
        assertThat(plan.at("/batch/handTurns").asLong()).isEqualTo(stops);
        assertThat(row(plan, "turn-by-hand").get("count").asLong()).isEqualTo(stops);
        assertThat(row(plan, "turn-by-hand").get("seconds").asDouble()).isCloseTo(30.0 * stops, within(1e-6));
        JsonNode none =
                new ObjectMapper().readTree(pack("hand-turn-seconds = 0\n").get(PlanJson.FILE));
        long minutes = row(plan, "turn-by-hand").get("minutes").asLong();
        // A minute costs 1: what the hand takes is all that differs.
        assertThat(plan.at("/times/shopCost").asDouble()
                        - none.at("/times/shopCost").asDouble())
                .isCloseTo((double) minutes, within(1e-6));
        assertThat(row(none, "run-programs").get("seconds"))
                .isEqualTo(row(plan, "run-programs").get("seconds"));
    }

    @Test
    void setupSheet_countsTheHandIn() throws IOException {
        try (PDDocument document = Loader.loadPDF(pack("").get("traveller.pdf"))) {
            String all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            // 20 s for a turn: common practice, no source.
            assertThat(all).containsPattern("\\d+ turns by hand counted at 20 s");
        }
    }
}
