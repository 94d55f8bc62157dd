package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.BundledProfiles;
import collarwright.job.FrameFiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.BillOfMaterials.Kind;
import collarwright.plan.BillOfMaterials.Row;
import collarwright.plan.Production;
import collarwright.plan.Variant;
import collarwright.testing.DomeJobs;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Strip and sheets that a job buys. */
class BuySheetsTest {
    private static final String NEST = "[strip.nest]\nsheet-length = \"1.25 m\"\nsheet-width = \"600 mm\"\n";

    private static Production planned(boolean nested, String prices) throws IOException {
        String text = Files.readString(DomeJobs.named("laser", "hen-house"));
        assertThat(text).contains(NEST);
        text = (nested ? text : text.replace(NEST, ""))
                .replace("machine = \"press\"", "machine = \"press\"\nprices = \"p.csv\"");
        byte[] file = ("name,unit,price\n" + prices).getBytes(StandardCharsets.UTF_8);
        FrameFiles files = name -> new FrameFiles.Opened(Optional.of(file), List.of());
        JobReading reading = JobReader.read(
                "job.toml",
                text.getBytes(StandardCharsets.UTF_8),
                Profiles.load(List.of(new BundledProfiles())),
                files);
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        return Production.of(job, List.of());
    }

    private static List<Row> rows(BillOfMaterials bill, Kind kind) {
        return bill.rows().stream().filter(r -> r.kind() == kind).toList();
    }

    private static BillOfMaterials bill(Production production) {
        return Variant.of(production, production.findings()).bill();
    }

    @Test
    void sheets_areThoseThatPartsAreNestedOn() throws IOException {
        Production production = planned(true, "strip-sheet,pack of 3,60.25\nplate-sheet,piece,11.5\n");
        Map<String, byte[]> pack = PackContents.of(production);
        JsonNode plan = new ObjectMapper().readTree(pack.get("plan.json"));
        List<Row> sheets = rows(bill(production), Kind.SHEET);

        assertThat(plan.at("/nests/0/of").asText()).isEqualTo("plates");
        assertThat(sheets).extracting(Row::name).containsExactly("strip-sheet", "plate-sheet");
        assertThat(sheets)
                .extracting(Row::count)
                .containsExactly(
                        plan.at("/nests/1/sheets").asInt(),
                        plan.at("/nests/0/sheets").asInt());
        // Density of aluminium 2700 kg/m³: from memory.
        double kg = sheets.get(0).count() * 1.25 * 0.6 * 0.00302 * 2700;
        assertThat(sheets.get(0).kg().orElseThrow()).isCloseTo(kg, within(1e-9));
        assertThat(sheets.get(1).kg()).isEmpty();
        double packs = Math.ceil(sheets.get(0).count() / 3.0);
        assertThat(sheets.get(0).cost().orElseThrow()).isCloseTo(packs * 60.25, within(1e-9));
        assertThat(sheets.get(1).cost().orElseThrow()).isCloseTo(sheets.get(1).count() * 11.5, within(1e-9));
        assertThat(bill(production).boughtKg()).isGreaterThan(bill(production).madeKg());
        assertThat(new String(pack.get("buy.csv"), StandardCharsets.UTF_8)).contains("sheet,yes,strip-sheet,");
    }

    @Test
    void sheets_byTheKilogram_areWeighed() throws IOException {
        Row sheet = rows(bill(planned(true, "strip-sheet,kg,10\n")), Kind.SHEET).get(0);

        assertThat(sheet.unit()).isEqualTo("kg");
        assertThat(sheet.cost().orElseThrow()).isCloseTo(10 * sheet.kg().orElseThrow(), within(0.005));
    }

    @Test
    void strip_notNested_isBoughtByItsLength() throws IOException {
        Production production = planned(false, "strip,m,3\n");
        Row strip = rows(bill(production), Kind.STRIP).get(0);
        int pieces =
                production.strips().strips().stream().mapToInt(s -> s.made()).sum();
        // The middle of the wall keeps its length: π (160.2 − 3.02), and 12 mm of lap.
        double length = pieces * (Math.PI * (160.2 - 3.02) + 12);

        assertThat(strip.size()).isCloseTo(length, within(1e-6));
        assertThat(strip.kg().orElseThrow()).isCloseTo(length * 50 * 3.02 * 2700e-9, within(1e-9));
        assertThat(strip.cost().orElseThrow()).isCloseTo(length * 3 / 1000, within(0.005));
        assertThat(rows(bill(planned(false, "tie,piece,1\n")), Kind.STRIP)
                        .get(0)
                        .cost())
                .isEmpty();
    }
}
