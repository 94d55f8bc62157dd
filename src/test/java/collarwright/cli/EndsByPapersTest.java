package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Flattened ends, plugs and caps, as papers of packs tell them. */
@NeedsChecker({Checker.POPPLER, Checker.OPENPYXL})
class EndsByPapersTest {

    private static void same(String printed, JsonNode number) {
        assertThat(Double.parseDouble(printed)).isCloseTo(number.asDouble(), within(0.000501));
    }

    @Test
    void flattenedEnds_holeToHole_isCutLessBothEnds_onAllPapers() throws IOException {
        JsonNode plan = CutPacks.plan("flat-conduit");
        StrutSheets sheets = StrutSheets.read(CutPacks.folder("flat-conduit").resolve("traveller.pdf"));
        assertThat(sheets.cuts()).isNotEmpty();
        for (StrutSheets.Cut cut : sheets.cuts()) {
            BigDecimal holes = cut.holeToHole().orElseThrow();
            // 3/8 in at each end; both are printed to a hundredth, the cut rounded up to a thousandth before.
            assertThat(cut.mm().subtract(holes).doubleValue()).isCloseTo(2 * 9.525, within(0.0111));
        }
        Map<String, JsonNode> types = new TreeMap<>();
        plan.get("strutTypes").forEach(t -> types.put(t.get("id").asText(), t));
        for (Map<String, String> row : CutPacks.table("flat-conduit", "struts/cut-list.csv")) {
            JsonNode type = Objects.requireNonNull(types.get(row.get("strut type")));
            same(row.get("hole to hole (mm)"), type.get("holeToHoleMm"));
            assertThat(type.get("holeToHoleMm").asDouble())
                    .isCloseTo(type.get("cutMm").asDouble() - 2 * 9.525, within(1e-9));
        }
        assertThat(Poppler.text(CutPacks.folder("flat-conduit").resolve("struts/saw.pdf")))
                .doesNotContain("not square");
    }

    // By hand: 3/4 in EMT is 0.922 in outside with a wall of 0.049 in (a flat of π(0.922 − 0.098)/2 + 0.098 = 1.392
    // in),
    // and its holes are from 27.0 mm = 1.063 in.
    @Test
    void flatsWiderThanTheirHoles_areTheSameSequenceOnAllPapers() throws IOException {
        String traveller = read("flat-conduit", "traveller.pdf");
        String site = read("flat-conduit", "site/site.pdf");

        for (String paper : List.of(traveller, site)) {
            assertThat(paper)
                    .contains("does not go through its hole")
                    .contains("hub by hub: flatten each end inside the collar")
                    .contains("0.375 in (9.525 mm) from the cut end, marked with a stop block or a template")
                    .containsIgnoringCase("eye protection")
                    .containsIgnoringCase("trial piece")
                    .doesNotContain("stop 1", "in one plane", "First flatten");
        }
        assertThat(traveller).contains("Cut only: do not flatten or drill", "Bolt holes, drilled inside the collars");
        assertThat(site).contains("Flatten, drill every end").contains("does not come out of its hole again");
        assertThat(CutPacks.folder("flat-conduit").resolve("struts/stops.csv").toFile())
                .doesNotExist();
    }

    @Test
    void longestPart_isTheFirstCut_onEveryPaper() throws IOException {
        StrutSheets sheets = StrutSheets.read(CutPacks.folder("flat-conduit").resolve("traveller.pdf"));
        String longest = sheets.cuts().get(0).in().toPlainString();

        assertThat(read("flat-conduit", "struts/saw.pdf")).contains("longest piece here, " + longest + " in");
        assertThat(read("flat-conduit", "traveller.pdf")).contains("Longest part of a kit: " + longest + " in");
        assertThat(read("flat-conduit", "struts/saw.pdf"))
                .contains("Inches are rounded from millimetres, which add up exactly")
                .containsPattern("rest \\d+\\.\\d{3} in")
                .doesNotContain(" 1 end to end");
    }

    private static String read(String job, String file) {
        return Poppler.text(CutPacks.folder(job).resolve(file)).replaceAll("\\s+", " ");
    }

    @Test
    void capsAndPlugs_onSite_areThoseBought() throws IOException {
        int all = 2 * CutPacks.plan("plugged-dowel").at("/order/struts").asInt();
        int bundled = CutPacks.table("plugged-dowel", "site/bundles.csv").stream()
                .filter(row -> row.get("what").startsWith("caps"))
                .mapToInt(row -> Integer.parseInt(row.get("times")) * Integer.parseInt(row.get("pieces in one")))
                .sum();

        assertThat(bundled).isEqualTo(all);
        assertThat(read("plugged-dowel", "site/site.pdf"))
                .containsPattern("end caps \\d+ \\d+ " + all + "\\b")
                .containsPattern("plugs, in the ends of the struts \\d+ \\d+ " + all + "\\b")
                .contains("Struts are weighed without the plugs");
        assertThat(read("plugged-dowel", "traveller.pdf"))
                .containsPattern("end cap, two for each strut that is made \\d+ " + all + "\\b")
                .containsPattern("long, two for each strut that is made \\d+ " + all + "\\b");
    }

    @Test
    void plugsAndCaps_areTwoForEveryStrutMade_andPriced() throws IOException {
        int struts = CutPacks.plan("plugged-dowel").at("/order/struts").asInt();
        int listed = 0;
        for (Map<String, String> row : CutPacks.table("plugged-dowel", "struts/cut-list.csv")) {
            assertThat(row.get("plugs")).isEqualTo(row.get("caps"));
            listed += Integer.parseInt(row.get("plugs"));
        }
        Map<String, Map<String, String>> bought = new TreeMap<>();
        CutPacks.table("plugged-dowel", "buy.csv").forEach(r -> bought.put(r.get("kind"), r));
        Map<String, String> plugs = Objects.requireNonNull(bought.get("plug"));
        Map<String, String> caps = Objects.requireNonNull(bought.get("cap"));

        assertThat(listed).isEqualTo(2 * struts);
        assertThat(plugs.get("how many")).isEqualTo(Integer.toString(2 * struts));
        assertThat(caps.get("how many")).isEqualTo(Integer.toString(2 * struts));
        // 0.80 for a metre of rod, 6.50 for a pack of 50.
        assertThat(Double.parseDouble(plugs.get("cost of all"))).isCloseTo(2 * struts * 0.040 * 0.80, within(0.00501));
        assertThat(Double.parseDouble(caps.get("cost of all")))
                .isCloseTo(StrictMath.ceil(struts / 25.0) * 6.50, within(0.00501));
        assertThat(Poppler.text(CutPacks.folder("plugged-dowel").resolve("traveller.pdf"))
                        .replaceAll("\\s+", " "))
                .contains("one in each end, flush: " + 2 * struts + " in all", "Caps: one on each end, " + 2 * struts);
    }
}
