package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.testing.DomeJobs;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlateWorkTest {
    private static Production planned(String... changes) throws IOException {
        String text = Files.readString(DomeJobs.named("laser", "hen-house"));
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        return Production.of(job, List.of());
    }

    private static List<String> stops(Production production, Code code) {
        return production.findings().stream()
                .filter(f -> f.code() == code && f.level() == Level.STOP)
                .map(Finding::expected)
                .toList();
    }

    @Test
    void of_job_hasAPlateForEachPatternAndASaddleForEachDrill() throws IOException {
        Production production = planned();
        PlateWork work = PlateWork.of(production.plan());

        assertThat(work.findings()).isEmpty();
        assertThat(work.plates())
                .extracting(IndexPlate::pattern)
                .isEqualTo(production.plan().book().patterns().stream()
                        .map(p -> p.id())
                        .toList());
        assertThat(work.plates()).allSatisfy(p -> assertThat(p.sizes()).isEqualTo(new IndexPlate.Sizes(190, 20, 6)));
        List<String> used = production.plan().book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .map(h -> h.cutter().id())
                .distinct()
                .toList();
        assertThat(work.saddles()).extracting(s -> s.cutter().id()).containsExactlyInAnyOrderElementsOf(used);
    }

    @Test
    void saddle_sizes_areThoseOfAnArcOnThePipe() throws IOException {
        for (GuideSaddle saddle : PlateWork.of(planned().plan()).saddles()) {
            assertThat(saddle.radius()).isCloseTo(80.1, within(1e-9));
            assertThat(saddle.width()).isEqualTo(60);
            // Sagitta by chord c and radius r: r − √(r² − c²/4); a right triangle, no source needed.
            assertThat(saddle.sagitta()).isCloseTo(80.1 - Math.sqrt(80.1 * 80.1 - 900), within(1e-9));
            assertThat(saddle.height()).isCloseTo(saddle.sagitta() + 40, within(1e-9));
        }
    }

    @Test
    void of_noSaddles_hasNone() throws IOException {
        assertThat(PlateWork.of(planned("saddles = 2", "saddles = 0").plan()).saddles())
                .isEmpty();
    }

    @Test
    void of_plateWithoutDiameter_isSixPinsLargerThanTheCollar() throws IOException {
        PlateWork work = PlateWork.of(planned("diameter = \"190 mm\"\n", "").plan());

        assertThat(work.plates().get(0).sizes().diameter()).isCloseTo(160.2 + 36, within(1e-9));
    }

    @Test
    void of_whatFitsNoSheet_isTold() throws IOException {
        Production plates = planned(
                "sheet-length = \"800 mm\"\nsheet-width = \"600 mm\"",
                "sheet-length = \"65 mm\"\nsheet-width = \"70 mm\"");
        Production strips = planned(
                "sheet-length = \"1.25 m\"\nsheet-width = \"600 mm\"",
                "sheet-length = \"500 mm\"\nsheet-width = \"400 mm\"");

        assertThat(stops(plates, Code.SHEET_TOO_SMALL)).hasSize(3);
        assertThat(stops(strips, Code.SHEET_TOO_SMALL))
                .containsExactly("a sheet that holds 529.00 mm x 70.20 mm: strip, lead-in, two margins");
        assertThat(plates.makeable()).isFalse();
        assertThat(strips.makeable()).isFalse();
    }

    @Test
    void insideTemplates_narrowBore_isAStop() throws IOException {
        assertThat(stops(planned("measured-wall = \"3.02 mm\"", "measured-wall = \"5.2 mm\""), Code.INSIDE_TEMPLATE))
                .hasSize(1);
        assertThat(stops(planned(), Code.INSIDE_TEMPLATE)).isEmpty();
    }

    @Test
    void insideTemplates_ofRolledStrip_areWarnedOf() throws IOException {
        assertThat(planned().findings())
                .filteredOn(f -> f.code() == Code.INSIDE_TEMPLATE)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.level()).isEqualTo(Level.WARN);
                    assertThat(f.found()).startsWith("collars rolled from strip");
                });
        assertThat(planned("inside-templates = true", "").findings()).noneMatch(f -> f.code() == Code.INSIDE_TEMPLATE);
    }
}
