package collarwright.pack;

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
import collarwright.plan.Production;
import collarwright.plan.RolledHole;
import collarwright.testing.Checker;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
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
import org.junit.jupiter.api.io.TempDir;

/** A pack whose collars are cut from flat strip. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StripPackTest {

    private static final String JOB = """
            title = "Bean tunnel, rolled hubs"
            [order]
            domes = 2
            [dome]
            frequency = 2
            keep = "1/6"
            radius = "1.6 m"
            [strut]
            od = "20 mm"
            wall = "2 mm"
            material = "aluminium"
            lengths = ["3 m"]
            tie-hole = { diameter = "4 mm", from-end = "9 mm" }
            [hub]
            collar = { od = "110 mm", wall = "3 mm", material = "MATERIAL", lengths = ["3 m"] }
            width = "50 mm"
            ring = { od = "40 mm", wall = "3 mm", material = "aluminium" }
            ring-width = "30 mm"
            [drilling]
            rack = ["metric-twist"]
            [strip]
            joint = "lap"
            joint-length = "12 mm"
            cut = "CUT"
            kerf = "0.2 mm"
            lead-in = "3 mm"
            machine = "flat-plain"
            [shop]
            machine = "press"
            """;

    private Map<String, byte[]> pack = Map.of();
    private List<RolledHole> holes = List.of();

    @TempDir
    private Path folder = Path.of("");

    static JobReading read(String material, String cut) {
        String text = JOB.replace("MATERIAL", material).replace("CUT", cut);
        return JobReader.read("job.toml", text, Profiles.load(List.of(new BundledProfiles())));
    }

    static Job job() {
        JobReading reading = read("aluminium", "laser");
        return reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    @BeforeAll
    void make() {
        Production production = Production.of(job(), List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        holes = production.strips().holes();
        pack = PackContents.of(production);
    }

    private String text(String path) {
        byte[] bytes = pack.get(path);
        assertThat(bytes).as(path + " of " + pack.keySet()).isNotNull();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    // What is written in a hole falls out with its slug.
    @Test
    void cutFile_marksOnlyWhatStays() {
        String svg = text("strips/strips.svg");
        List<double[]> circles = Pattern.compile(" cx=\"([\\d.]+)\" cy=\"([\\d.]+)\" r=\"([\\d.]+)\"")
                .matcher(svg)
                .results()
                .map(c -> new double[] {
                    Double.parseDouble(c.group(1)), Double.parseDouble(c.group(2)), Double.parseDouble(c.group(3))
                })
                .toList();
        assertThat(circles).hasSizeGreaterThan(5);
        int from = svg.indexOf("<g id=\"MARK\"");
        String marks = svg.substring(from, svg.indexOf("</g>", from));
        List<double[]> ends = Pattern.compile("([\\d.]+) ([\\d.]+)(?=[MLAZ]|\")")
                .matcher(marks)
                .results()
                .map(e -> new double[] {Double.parseDouble(e.group(1)), Double.parseDouble(e.group(2))})
                .toList();
        assertThat(ends).hasSizeGreaterThan(100);
        assertThat(ends)
                .allSatisfy(e -> assertThat(circles)
                        .allSatisfy(c -> assertThat(StrictMath.hypot(e[0] - c[0], e[1] - c[1]))
                                .isGreaterThan(c[2])));
    }

    @Test
    void cutFile_hasEveryStripAndHole_withKerfAndLeadIns() {
        String svg = text("strips/strips.svg");
        int patterns = (int) pack.keySet().stream()
                .filter(f -> f.matches("strips/C.-flat-1-mark\\.nc"))
                .count();
        assertThat(patterns).isPositive();
        assertThat(count(svg, "id=\"CUT-OUTSIDE-\\d+\"")).isEqualTo(patterns);
        assertThat(count(svg, "id=\"CUT-INSIDE-\\d+\"")).isEqualTo(holes.size());
        assertThat(count(svg, "id=\"LEAD-IN-\\d+\"")).isEqualTo(patterns + holes.size());
        // The first hole is cut narrower than it is to be by the kerf.
        Matcher radius = Pattern.compile("<circle id=\"CUT-INSIDE-1\" [^>]* r=\"(\\S+)\"")
                .matcher(svg);
        assertThat(radius.find()).isTrue();
        List<Double> planned =
                holes.stream().map(h -> h.hole().diameter() / 2 - 0.1).toList();
        assertThat(planned)
                .anySatisfy(r -> assertThat(Double.parseDouble(radius.group(1))).isCloseTo(r, within(1e-4)));
    }

    private static long count(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().count();
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void cutFiles_passTheStrictReader() throws IOException {
        for (String name : List.of("strips-r2000.dxf", "strips-r12.dxf")) {
            Path file = Files.write(folder.resolve(name), pack.get("strips/" + name));
            EzdxfStrict.Reading reading = EzdxfStrict.read(file).orFail();
            assertThat(reading.entities("CIRCLE")).as(name).hasSize(holes.size());
            assertThat(text("strips/" + name)).contains("LEAD-IN");
        }
    }

    @Test
    void sheetWithoutLeadIns_hasNoLayerForThem() {
        assertThat(text("templates/CA-r2000.dxf")).doesNotContain("LEAD-IN");
        assertThat(text("templates/CA.svg")).doesNotContain("LEAD-IN");
    }

    /** At the top and the bottom of a hole rolling changes nothing; a strut that leans upright binds there. */
    @Test
    void rolledHoles_leanAsFarAsDrilledOnes() {
        assertThat(holes).isNotEmpty().allSatisfy(h -> {
            assertThat(h.limit()).isCloseTo(h.hole().tiltLimit(), within(1e-4));
            assertThat(h.slack()).isPositive();
            assertThat(h.enough()).isEmpty();
        });
        String table = text("strips/strips.csv");
        assertThat(table.lines()).hasSize(1 + holes.size());
        assertThat(table).contains("348.150", "lap,12.000");
    }

    /** Rolling a thick wall closes small holes: what does not let its strut in stops, what is tight is on the page of risks. */
    @Test
    void thickWall_isAtRiskAndStops() throws IOException {
        Path job = ProjectFolder.top().resolve("src/test/resources/bad/153-flat-strip-bored/job.toml");
        JobReading reading =
                JobReader.read("job.toml", Files.readString(job), Profiles.load(List.of(new BundledProfiles())));
        Production thick = Production.of(reading.job().orElseThrow(), List.of());

        List<RolledHole> closed =
                thick.strips().holes().stream().filter(h -> h.limit() == 0).toList();
        assertThat(closed).isNotEmpty();
        assertThat(thick.findings().stream()
                        .filter(f -> f.level() == Level.STOP && f.code() == Code.HOLE_SHORT_OF_REACH))
                .hasSameSizeAs(closed);
        assertThat(thick.strips().risk())
                .hasValueSatisfying(words -> assertThat(words)
                        .startsWith("At risk after rolling: ")
                        .contains(" of " + thick.strips().holes().size() + " holes")
                        .contains(", " + closed.size() + " of them do not let a nominal strut in"));
    }

    @Test
    void traveller_tellsSizesAndPrograms() throws IOException {
        try (PDDocument document = Loader.loadPDF(pack.get("traveller.pdf"))) {
            String all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(all)
                    .contains("Flat strips: cut, drill, roll", "348.15 mm", "13.707 in", "lap 12 mm")
                    .containsPattern("twist drill, stick-out \\d+\\.\\d mm or more")
                    .contains("allow for a kerf of 0.2 mm", "CA-flat-1-mark.nc", "The least slack then is");
        }
    }

    @Test
    void plastic_isNeverBurnt_butMayBeRouted() {
        for (String torch : List.of("laser", "plasma")) {
            JobReading refused = read("pvc", torch);
            assertThat(refused.job()).isEmpty();
            assertThat(refused.findings()).extracting(Finding::code).contains(Code.LASER_PVC);
        }
        assertThat(read("pvc", "router").job()).isPresent();
    }

    /** No pipe is pulled for collars that are rolled: the store is asked for strip, one width and thickness. */
    @Test
    void stockToPull_isStripAndNoPipeOfTheCollar() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
        assertThat(plan.get("stock").findValuesAsText("role")).containsExactly("strut", "ring");
        long strips = 0;
        for (JsonNode strip : plan.get("strips")) {
            strips += strip.get("pieces").asLong();
        }
        JsonNode sheet = plan.get("stripStock");
        assertThat(sheet).hasSize(1);
        assertThat(sheet.at("/0/pieces").asLong()).isEqualTo(strips);
        // By hand: the middle of a wall of 3 mm in a pipe of 110 mm, and the lap: pi * 107 + 12 mm.
        assertThat(sheet.at("/0/lengthMm").asDouble()).isCloseTo(strips * 348.1504, within(0.01 * strips));
        assertThat(sheet.at("/0/widthMm").asDouble()).isEqualTo(50);
        assertThat(sheet.at("/0/thicknessMm").asDouble()).isEqualTo(3);
        try (PDDocument document = Loader.loadPDF(pack.get("traveller.pdf"))) {
            String all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(all).contains("collars, rolled", "Strip or sheet").doesNotContain("made of strip");
        }
    }

    @Test
    void timesAndList_areThoseOfTheProgramsTimesTheStrips() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
        double seconds = 0;
        long runs = 0;
        for (JsonNode program : plan.get("programs")) {
            boolean air = program.get("file").asText().contains("-air");
            long times = program.get("runs").asLong();
            seconds += air ? 0 : times * program.get("seconds").asDouble();
            runs += air ? 0 : times;
            assertThat(air).isEqualTo(times == 1);
        }
        long strips = 0;
        for (JsonNode strip : plan.get("strips")) {
            strips += strip.get("pieces").asLong();
        }
        assertThat(strips).isEqualTo(plan.at("/order/collars").asLong());
        Map<String, JsonNode> rows = new HashMap<>();
        plan.at("/times/work").forEach(row -> rows.put(row.get("work").asText(), row));
        assertThat(rows.keySet())
                .contains("lay-strips", "drill-strips", "cut-strips", "roll-strips")
                .doesNotContain("clamp-collars", "drill-holes", "cut-collars");
        assertThat(rows.get("drill-strips").get("count").asLong()).isEqualTo(runs);
        assertThat(rows.get("drill-strips").get("seconds").asDouble()).isCloseTo(seconds, within(0.01));
        assertThat(rows.get("cut-strips").get("count").asLong()).isEqualTo(strips);
        // Two minutes a strip: common practice, no source.
        assertThat(rows.get("roll-strips").get("seconds").asDouble()).isEqualTo(120.0 * strips);
        assertThat(text("index.html")).contains("flat strips").doesNotContain("from the press");
    }
}
