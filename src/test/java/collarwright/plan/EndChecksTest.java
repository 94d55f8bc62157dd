package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class EndChecksTest {
    private static final Path LONG_FLATS = Path.of("src/test/resources/bad/221-flat-ends-that-do-not-fit/job.toml");

    private static double side(String wall) throws IOException {
        String text = Files.readString(LONG_FLATS)
                .replace(
                        "stock = \"emt-0.75in\"\nmeasured-od = \"23.4 mm\"",
                        "od = \"23.4 mm\"\nmaterial = \"steel\"\nwall = \"1.3 mm\"\nmeasured-od = [\"23.2 mm\", \"23.6 mm\"]\n"
                                + "measured-wall = " + wall);
        JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        return EndChecks.of(job).stream()
                .filter(c -> c.code() == Code.TIE_HOLE_SIDE)
                .findFirst()
                .orElseThrow()
                .value();
    }

    // Half round the bore and a wall on each side, by hand: π/2 · (23.2 − 2 · 1.5) + 2 · 1.5 = 34.730 mm for the
    // thickest
    // wall, 34.958 mm for the middle one.
    @Test
    void side_ofFlatEnds_isThatOfTheThinnestTubeWithTheThickestWall() throws IOException {
        assertThat(side("[\"1.1 mm\", \"1.5 mm\"]")).isCloseTo(34.730 / 2, within(5e-4));
        assertThat(side("\"1.3 mm\"")).isCloseTo(34.958 / 2, within(5e-4));
    }
}
