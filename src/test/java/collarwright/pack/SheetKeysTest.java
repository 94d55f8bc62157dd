package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.BundledProfiles;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.Production;
import collarwright.testing.Checker;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a job says about printing reaches the files. */
class SheetKeysTest {

    private static Map<String, byte[]> pack(String sheet) throws IOException {
        String job = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"));
        JobReading reading =
                JobReader.read("job.toml", job + "\n" + sheet, Profiles.load(List.of(new BundledProfiles())));
        return PackContents.of(
                Production.of(reading.job().orElseThrow(() -> new AssertionError(reading.findings())), List.of()));
    }

    private static String text(Map<String, byte[]> pack, String path) {
        return new String(pack.getOrDefault(path, new byte[0]), StandardCharsets.UTF_8);
    }

    @Test
    void make_thickPaperAndWideLines_areInTheSvg() throws IOException {
        String svg = text(pack("[sheet]\npaper-thickness = 0.5\nhairline = 0.2\n"), "templates/CA.svg");
        assertThat(svg).contains("stroke-width=\"0.2\"").doesNotContain("stroke-width=\"0.1\"");
        Matcher edge = Pattern.compile("id=\"CUT-OUTSIDE-1\" d=\"M([0-9.]+) [0-9.]+L([0-9.]+) ")
                .matcher(svg);
        assertThat(edge.find()).isTrue();
        // The collar of the sample measures 90.1 mm: the girth of the paper's middle is π (OD + paper).
        assertThat(Double.parseDouble(edge.group(2)) - Double.parseDouble(edge.group(1)))
                .isCloseTo(StrictMath.PI * (90.1 + 0.5), within(2e-4));
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void make_measuredBars_stretchThePrint(@TempDir Path folder) throws IOException {
        Map<String, byte[]> pack = pack("[sheet]\nprint-correction = { bar-x = 99, bar-y = 102 }\n");
        for (String paper : List.of("a4", "letter")) {
            Path pdf = folder.resolve(paper + ".pdf");
            Files.write(pdf, pack.getOrDefault("templates/CA-" + paper + ".pdf", new byte[0]));
            List<Double> lengths =
                    Mutool.strokes(pdf, 1).stream().map(s -> s.length()).toList();
            assertThat(lengths)
                    .anySatisfy(l -> assertThat(l).isCloseTo(100 * 100 / 99.0, within(0.005)))
                    .anySatisfy(l -> assertThat(l).isCloseTo(100 * 100 / 102.0, within(0.005)));
        }
    }
}
