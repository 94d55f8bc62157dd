package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.PriceList.Measure;
import collarwright.plan.Planner;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price files, what they do to a job, and the tie hole's distance from the end. */
class PricesTest {

    private static final Set<String> KNOWN =
            Set.of("pvc-metric-20x1.5", "tie", "pin", "plug", "cap", "strip", "strip-sheet", "plate-sheet");

    private static PriceRows rows(String text) {
        return PriceRows.read("prices.csv", text.getBytes(StandardCharsets.UTF_8), KNOWN);
    }

    @Test
    void prices_ofEveryUnit_areRead() {
        PriceRows rows = rows("""
                price;name;unit;seen
                12.5;pvc-metric-20x1.5;6 m;x
                2.5;pvc-metric-20x1.5;m;
                3;pvc-metric-20x1.5;kg;
                4.2;tie;pack of 100;
                0.05;pin;piece;
                """);

        assertThat(rows.findings()).isEmpty();
        PriceList list = rows.prices();
        assertThat(list.prices().stream().map(PriceList.Price::measure))
                .containsExactly(Measure.STICK, Measure.LENGTH, Measure.KILOGRAM, Measure.PACK, Measure.PIECE);
        assertThat(list.stick("pvc-metric-20x1.5", 6000, 1)).contains(12.5);
        assertThat(list.stick("pvc-metric-20x1.5", 3000, 1)).contains(7.5);
        assertThat(list.pieces("tie").orElseThrow().size()).isEqualTo(100);
        assertThat(list.stick("steel", 3000, 1)).isEmpty();
    }

    @Test
    void prices_withDecimalCommas_areReadWhereSemicolonsPart() {
        assertThat(rows("name;unit;price\ntie;piece;0,05\n")
                        .prices()
                        .prices()
                        .get(0)
                        .price())
                .isEqualTo(0.05);
        assertThat(rows("name,unit,price\ntie,piece,\"0,05\"\n").findings()).hasSize(1);
    }

    // Products by hand, in decimals. None of the four is what binary arithmetic gives in every order of steps.
    @ParameterizedTest
    @CsvSource({"1.015, 1000, 1.015", "1.15, 1100, 1.265", "0.1, 300.00000000000006, 0.03", "2.675, 1000, 2.675"})
    void prices_byLength_areDecimals(double price, double length, double expected) {
        PriceList list = rows("name,unit,price\nplug,m," + price + "\n").prices();

        assertThat(list.byLength("plug", length)).contains(expected);
    }

    @ParameterizedTest
    @CsvSource({"6 m, 6000.9 mm, false", "6 m, 6001 mm, true", "6.096 m, 20 ft, false", "6 m, 20 ft, true"})
    void prices_ofSticksThatOneLengthCouldMean_areRefused(String one, String other, boolean good) {
        String text = "name,unit,price\npvc-metric-20x1.5," + one + ",1\npvc-metric-20x1.5," + other + ",2\n";

        assertThat(rows(text).findings()).hasSize(good ? 0 : 1);
    }

    @Test
    void prices_metreAndFoot_agreeByTheInternationalFoot() {
        // International yard and pound agreement of 1959: 1 ft = 0.3048 m exactly.
        PriceList foot = rows("name,unit,price\npvc-metric-20x1.5,ft,0.3048\n").prices();

        assertThat(foot.byLength("pvc-metric-20x1.5", 1000, 1).orElseThrow()).isCloseTo(1, Offset.offset(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "'tie,piece,-1', PRICE_FILE",
        "'tie,piece,NaN', PRICE_FILE",
        "'tie,piece,1e3', PRICE_FILE",
        "'tie,piece,100001', PRICE_FILE",
        "'tie,6,1', PRICE_FILE",
        "'tie,0 m,1', PRICE_FILE",
        "'tie,pack of 0,1', PRICE_FILE",
        "',piece,1', PRICE_FILE",
        "'tie,m,1', PRICE_FILE",
        "'pin,kg,1', PRICE_FILE",
        "'cap,m,1', PRICE_FILE",
        "'plug,kg,1', PRICE_FILE",
        "'plug,3 m,1', PRICE_FILE",
        "'strip,3 m,1', PRICE_FILE",
        "'strip-sheet,m,1', PRICE_FILE",
        "'plate-sheet,kg,1', PRICE_FILE",
        "'pvc-metric-20x1.5,piece,1', PRICE_FILE",
        "'tye,piece,1', PRICE_UNKNOWN"
    })
    void prices_badLine_isTold(String line, Code code) {
        List<Finding> findings = rows("name,unit,price\n" + line + "\n").findings();

        assertThat(findings).extracting(Finding::code).containsExactly(code);
        assertThat(findings.get(0).level()).isEqualTo(code == Code.PRICE_FILE ? Level.STOP : Level.WARN);
    }

    @Test
    void job_withPrices_takesThemIn_andAnotherRevision() {
        String text = Jobs.with("machine = \"press\"", "machine = \"press\"\nprices = \"p.csv\"");
        FrameFiles files = name -> new FrameFiles.Opened(
                Optional.of("name,unit,price\ntie,piece,0.05\n".getBytes(StandardCharsets.UTF_8)), List.of());

        Job job = JobReader.read("job.toml", text.getBytes(StandardCharsets.UTF_8), Jobs.PROFILES, files)
                .job()
                .orElseThrow();

        assertThat(job.cutting().prices().prices()).hasSize(1);
        assertThat(job.revision()).isNotEqualTo(Jobs.job().revision());
    }

    // In PVC two diameters: common practice, no source. In steel 1.2: EN 1993-1-8, Table 3.3, from memory.
    @ParameterizedTest
    @CsvSource({"pvc, 8, false", "pvc, 7.9, true", "steel, 4.8, false", "steel, 4.7, true"})
    void tieHole_nearToTheEnd_isWarnedOf(String material, String fromEnd, boolean warned) {
        Job job = Jobs.job(
                "stock = \"pvc-metric-20x1.5\"",
                "od = \"20 mm\"\nwall = \"1.5 mm\"\nmaterial = \"" + material + "\"",
                "measured-od = [\"20.0 mm\", \"20.2 mm\"]\n",
                "",
                "from-end = \"9 mm\"",
                "from-end = \"" + fromEnd + " mm\"");

        List<Finding> findings = Planner.plan(job, List.of()).findings();

        assertThat(findings.stream().anyMatch(f -> f.code() == Code.TIE_HOLE_EDGE && f.level() == Level.WARN))
                .isEqualTo(warned);
    }
}
