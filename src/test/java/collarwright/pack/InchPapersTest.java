package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Where programs are in inches, papers and lists of the shop tell inches first. */
class InchPapersTest {

    private static Map<String, byte[]> pack(String machine) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"))
                .replace("program-units = \"mm\"\n", "")
                .replace("machine = \"rotary-plain\"", machine);
        JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        Production production = Production.of(job, List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        return PackContents.of(production);
    }

    private static String traveller(Map<String, byte[]> pack) throws IOException {
        try (PDDocument document = Loader.loadPDF(pack.get("traveller.pdf"))) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void inchJob_tolerancesStockAndSticks_inchesFirst() throws IOException {
        Map<String, byte[]> pack = pack("machine = \"rotary-plain\"\nprogram-units = \"in\"");
        String all = traveller(pack);
        assertThat(all)
                .contains("Y0 over the rotary axis, within 0.004 in (0.1 mm)")
                .contains("0.010 in (0.25 mm) is about a degree")
                .doesNotContain("quarter of a millimetre", "within 0.1 mm")
                .containsPattern("\\d+\\.\\d ft \\(\\d+\\.\\d\\d m\\)")
                .doesNotContainPattern("\\d m \\(\\d+\\.\\d ft\\)");
        assertThat(new String(pack.get("machine/sticks.csv"), StandardCharsets.UTF_8))
                .contains("edge at X (in),mid-plane at X (in),edge at X (mm),mid-plane at X (mm)");
    }

    @Test
    void inchJob_stripsAndBed_inchesFirst() throws IOException {
        String flat =
                "machine = \"press\"\nstrut-machine = \"bed-plain\"\nprogram-units = \"in\"\n\n[strip]\njoint = \"butt\"\n"
                        + "machine = \"flat-plain\"";
        String all = traveller(pack(flat));
        assertThat(all)
                .containsPattern("\\d+\\.\\d\\d\\d in \\d+\\.\\d\\d mm")
                .contains("Y0 over the strut's axis, within 0.004 in (0.1 mm)")
                .containsPattern("twist drill, stick-out \\d+\\.\\d\\d\\d in or more")
                .containsPattern("wide \\d+\\.\\d+ in \\(\\d+\\.?\\d* mm\\) thick, nominal, not measured");
    }
}
