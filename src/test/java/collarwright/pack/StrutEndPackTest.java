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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A pack whose struts are drilled on a bed: programs, plan and paper say the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StrutEndPackTest {

    private Job job = job("press");
    private Map<String, byte[]> pack = Map.of();
    private JsonNode plan = new ObjectMapper().createObjectNode();

    static Job job(String strutMachine) {
        try {
            String text = Files.readString(ProjectFolder.top().resolve("src/test/resources/domes/silo/job.toml"))
                    .replace(
                            "machine = \"rotary-cycles\"",
                            "machine = \"press\"\nstrut-machine = \"" + strutMachine + "\"");
            JobReading reading = JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
            return reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @BeforeAll
    void make() throws IOException {
        job = job("bed-plain");
        Production production = Production.of(job, List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        pack = PackContents.of(production);
        plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
    }

    private String text(String path) {
        byte[] bytes = pack.get(path);
        assertThat(bytes).as(path).isNotNull();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static double found(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void programs_drillAtThePlansDistances_fromBothEnds() {
        assertThat(plan.at("/inputs/strutMachine").asText()).isEqualTo("bed-plain");
        for (JsonNode type : plan.at("/strutTypes")) {
            String id = type.get("id").asText();
            String file = text("struts/" + id + "-ends.nc");
            double first = found(file, "\\nG0 X(\\S+)\\nS");
            double second = found(file, "\\(hole at E2\\)\\nG0 X(\\S+)\\n");
            assertThat(first).isCloseTo(type.at("/ends/0/drillMm").asDouble(), within(0.0006));
            assertThat(type.get("cutMm").asDouble() - second)
                    .isCloseTo(type.at("/ends/1/drillMm").asDouble(), within(0.0006));
            double twist = type.get("twistDeg").asDouble();
            if (StrictMath.abs(twist) < 0.05) {
                assertThat(file).doesNotContain("M0");
            } else {
                assertThat(found(file, "\\(TURN THE STRUT (\\S+) DEG ANTICLOCKWISE SEEN FROM THE STOP\\)\\nM0"))
                        .isCloseTo(twist, within(0.05));
            }
        }
    }

    @Test
    void plan_listsEveryProgramOfTheBed() {
        List<String> files = plan.at("/programs").findValuesAsText("file");
        assertThat(files).hasSize(2 * plan.at("/strutTypes").size());
        assertThat(pack.keySet()).containsAll(files);
        assertThat(plan.at("/programs").findValuesAsText("machine")).containsOnly("bed-plain");
        assertThat(text("struts/stops.csv").lines())
                .hasSize(1 + plan.at("/strutTypes").size());
    }

    @Test
    void setupSheet_isEnoughToSetTheBedUp() throws IOException {
        String all;
        try (PDDocument document = Loader.loadPDF(pack.get("traveller.pdf"))) {
            all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
        String file = text("struts/SD-ends.nc");
        assertThat(all)
                .contains("Setup: strut ends on the bed", "X0 at the face of the stop", "Y0 over the strut's axis")
                .contains("touch the top of a strut with the drill's point and set Z to 16.0 mm")
                .contains("5 mm twist drill", "through both walls", "23.1° anticlockwise")
                .contains("SD-ends.nc", "E1 against the stop");
        assertThat(found(all, "clear Z (\\S+) mm")).isCloseTo(found(file, "\\nG0 Z(\\S+)\\n"), within(0.051));
        // By hand: the holder stays above clamps of 25 mm and the gap of 5 mm, over the top of a strut at 16 mm or a
        // little more.
        double bottom = found(file, "DEEPEST Z (-\\S+) mm");
        assertThat(found(all, "stick-out from the holder to its point (\\S+) mm"))
                .isBetween(16 + 25 + 5 - bottom - 0.06, 16 + 25 + 5 - bottom + 0.6);
        assertThat(found(all, "speed, feed (\\d+) rpm")).isEqualTo(found(file, "\\nS(\\d+) M3"));
        assertThat(found(all, "point at Z (-\\S+) mm")).isCloseTo(found(file, "DEEPEST Z (-\\S+) mm"), within(0.051));
        assertThat(all)
                .contains("X " + String.format(java.util.Locale.ROOT, "%.2f", found(file, "E2\\)\\nG0 X(\\S+)\\n")));
    }

    @Test
    void press_makesTheStopsOnly_andKeepsTheRevision() {
        Job pressed = job("press");
        Map<String, byte[]> files = PackContents.of(Production.of(pressed, List.of()));
        assertThat(files.keySet()).contains("struts/stops.csv").noneMatch(f -> f.endsWith(".nc"));
        assertThat(pressed.shop().strutBed()).isEmpty();
        assertThat(pressed.revision()).isNotEqualTo(job.revision());
    }

    @Test
    void times_areThoseOfTheProgramsTimesTheStruts() {
        double seconds = 0;
        for (JsonNode program : plan.get("programs")) {
            boolean air = program.get("file").asText().contains("-air");
            seconds += air
                    ? 0
                    : program.get("runs").asLong() * program.get("seconds").asDouble();
        }
        List<String> works = new ArrayList<>();
        for (JsonNode row : plan.at("/times/work")) {
            works.add(row.get("work").asText());
            if (row.get("work").asText().equals("drill-ends")) {
                assertThat(row.get("count").asLong())
                        .isEqualTo(plan.at("/order/struts").asLong());
                assertThat(row.get("seconds").asDouble()).isCloseTo(seconds, within(0.01));
            }
        }
        long turns = 0;
        for (JsonNode program : plan.get("programs")) {
            String file = program.get("file").asText();
            turns += file.contains("-air") || !text(file).contains("(TURN THE STRUT ")
                    ? 0
                    : program.get("runs").asLong();
        }
        assertThat(turns).isPositive();
        for (JsonNode row : plan.at("/times/work")) {
            if (row.get("work").asText().equals("turn-by-hand")) {
                assertThat(row.get("count").asLong()).isEqualTo(turns);
                assertThat(row.get("seconds").asDouble()).isEqualTo(20.0 * turns);
            }
        }
        assertThat(works).contains("turn-by-hand");
        assertThat(works).contains("lay-struts", "drill-ends").doesNotContain("drill-ties");
    }
}
