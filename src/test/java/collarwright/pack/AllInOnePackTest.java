package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.plan.WorkTime;
import collarwright.testing.ProjectFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Papers, lists and times of machines that have all cutters of a stick in one file, beside one with a file for each. */
class AllInOnePackTest {

    private static Production on(String machine) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"))
                .replace("machine = \"rotary-plain\"", "machine = \"" + machine + "\"");
        JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        Production production = Production.of(job, List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        return production;
    }

    private static long changes(Production production) {
        return WorkTime.of(production.plan(), production.machines()).rows().stream()
                .filter(r -> r.work() == WorkTime.Work.CHANGE_CUTTERS)
                .mapToLong(WorkTime.Row::count)
                .sum();
    }

    /** Sticks times cutters of each, counted from the set-up sheets. */
    private static long cutterRuns(Production production) {
        return production.rotary().setups().stream()
                .mapToLong(s -> (long) s.load().runs() * s.steps().size())
                .sum();
    }

    @Test
    void changesOfCutters_areCountedForEveryStick_andOnceWhereLengthsStandInATable() throws IOException {
        Production files = on("rotary-plain");
        Production pauses = on("rotary-no-spindle");
        Production table = on("rotary-industrial");
        assertThat(changes(files)).isEqualTo(cutterRuns(files));
        assertThat(changes(pauses)).isEqualTo(cutterRuns(pauses));
        assertThat(pauses.rotary().summary().programRuns()).isLessThan((int) changes(pauses));
        assertThat(changes(table))
                .isEqualTo(table.rotary().programs().stream()
                        .flatMap(p -> p.byTask().stream())
                        .flatMap(p -> p.task().stream())
                        .map(t -> t.cutter().id())
                        .distinct()
                        .count());
    }

    @Test
    void listsAndPapers_nameEveryCutterAndTheAirCut() throws IOException {
        Production production = on("rotary-industrial");
        Map<String, byte[]> pack = PackContents.of(production);
        JsonNode plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
        JsonNode first = plan.at("/programs/0");
        var setup = production.rotary().setups().get(0);
        assertThat(first.get("file").asText()).isEqualTo("machine/LA0001C.NC");
        List<String> tools = new ArrayList<>();
        first.get("tools").forEach(t -> tools.add(t.asText()));
        assertThat(tools)
                .containsExactlyElementsOf(
                        setup.steps().stream().map(s -> s.cutter().id()).toList())
                .hasSizeGreaterThan(1);
        assertThat(new String(pack.get("index.html"), StandardCharsets.UTF_8))
                .contains("stick LA, the two dimples, then twist drill ");
        String sheet = text(pack.get("traveller.pdf"), "Programs, in this order");
        assertThat(sheet)
                .contains("LA0001C.NC", "air cut", "LA0002A.NC", setup.steps().size() + " cutters, in this")
                .contains("in the air first: the file named as air cut");
        setup.steps()
                .forEach(s -> assertThat(sheet)
                        .contains("T" + s.tool() + ", H" + s.tool() + " "
                                + s.cutter().marked()));
        String batch = text(pack.get("traveller.pdf"), "Batch: ");
        assertThat(batch)
                .containsPattern(
                        "LA .* " + setup.load().collars() + " " + setup.load().runs() + " 1 ");
    }

    /** The page that begins with a title. */
    private static String text(byte[] pdf, String title) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document).replaceAll("\\s+", " ");
                if (text.contains(title)) {
                    return text;
                }
            }
            throw new AssertionError("no page " + title);
        }
    }
}
