package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.machining.CutMeans;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class PlateReaderTest {
    private static final String LEAST =
            "\n[plates]\nbore = \"20 mm\"\npin = \"6 mm\"\nmaterial = \"wood\"\nsheet-length = \"600 mm\"\n";

    private static JobReading read(String plates) throws IOException {
        String job = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"));
        return JobReader.read("job.toml", job + plates, Jobs.PROFILES);
    }

    private static PlateSettings plates(String text) throws IOException {
        JobReading reading = read(text);
        return reading.job()
                .orElseThrow(() -> new AssertionError(reading.findings()))
                .sheet()
                .plates()
                .orElseThrow();
    }

    @Test
    void read_leastTable_hasTheUsualValues() throws IOException {
        PlateSettings plates = plates(LEAST + "sheet-width = \"400 mm\"\n");

        assertThat(plates.process()).isEqualTo(CutMeans.ROUTER);
        assertThat(plates.kerf()).isEqualTo(new PlateSettings.Kerf(0, 0, 0));
        assertThat(plates.counts()).isEqualTo(new PlateSettings.Counts(1, 0));
        assertThat(plates.sizes().diameter()).isEmpty();
        assertThat(plates.sheet()).isEqualTo(new SheetPacker.Stock(600, 400, 5, 10, true));
    }

    @Test
    void read_everyKey_isTaken() throws IOException {
        Job job = DomeJobs.read(DomeJobs.named("laser", "hen-house"));
        PlateSettings plates = job.sheet().plates().orElseThrow();

        assertThat(plates.process()).isEqualTo(CutMeans.LASER);
        assertThat(plates.kerf()).isEqualTo(new PlateSettings.Kerf(0.15, 0.2, 4));
        assertThat(plates.counts()).isEqualTo(new PlateSettings.Counts(2, 2));
        assertThat(plates.sizes().diameter()).hasValue(190.0);
        assertThat(plates.sheet()).isEqualTo(new SheetPacker.Stock(800, 600, 5, 10, false));
        assertThat(job.shop().strip().orElseThrow().nest()).hasValue(new SheetPacker.Stock(1250, 600, 5, 10, true));
        assertThat(job.sheet().layers().orElseThrow().name()).isEqualTo("numbered");
        assertThat(job.sheet().insideTemplates()).isTrue();
    }

    @Test
    void read_margins_areAtLeastFiveAndFitTheSheet() throws IOException {
        JobReading narrow = read(LEAST + "sheet-width = \"18 mm\"\n");
        JobReading thin = read(LEAST + "sheet-width = \"400 mm\"\nmargin = \"4 mm\"\nsaddles = 21\n");

        assertThat(narrow.findings().stream().filter(f -> f.code() == Code.JOB_CONFLICT))
                .singleElement()
                .satisfies(f -> assertThat(f.expected()).contains("wider than its two margins, 20 mm"));
        assertThat(thin.findings()).extracting(Finding::code).contains(Code.JOB_OUT_OF_RANGE);
        assertThat(thin.findings().stream().filter(f -> f.code() == Code.JOB_OUT_OF_RANGE))
                .extracting(Finding::expected)
                .anyMatch(e -> e.contains("plates.margin: at least 5 mm"))
                .anyMatch(e -> e.contains("plates.saddles: a whole number from 0 to 20"));
    }

    /** What is not asked for changes no revision; what is asked for does. */
    @Test
    void revision_followsLayersAndPlates() throws IOException {
        String without = read("").job().orElseThrow().revision();
        String layers =
                read("\n[sheet]\nlayers = \"cut-only\"\n").job().orElseThrow().revision();
        String not = read("\n[sheet]\ninside-templates = false\n")
                .job()
                .orElseThrow()
                .revision();
        String one =
                read(LEAST + "sheet-width = \"400 mm\"\n").job().orElseThrow().revision();
        String two = read(LEAST + "sheet-width = \"400 mm\"\nsaddles = 1\n")
                .job()
                .orElseThrow()
                .revision();

        assertThat(not).isEqualTo(without);
        assertThat(layers).isNotEqualTo(without);
        assertThat(one).isNotEqualTo(without).isNotEqualTo(two);
    }
}
