package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
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
        Map<String, BigDecimal> apart = new TreeMap<>();
        sheets.stops().forEach(h -> apart.put(h.type(), h.second().subtract(h.first())));

        for (StrutSheets.Cut cut : sheets.cuts()) {
            BigDecimal holes = cut.holeToHole().orElseThrow();
            // 3/8 in at each end; both are printed to a hundredth.
            assertThat(cut.mm().subtract(holes).doubleValue()).isCloseTo(2 * 9.525, within(0.0101));
            assertThat(holes.doubleValue())
                    .isCloseTo(Objects.requireNonNull(apart.get(cut.type())).doubleValue(), within(0.0101));
        }
        Map<String, JsonNode> types = new TreeMap<>();
        plan.get("strutTypes").forEach(t -> types.put(t.get("id").asText(), t));
        for (Map<String, String> row : CutPacks.table("flat-conduit", "struts/cut-list.csv")) {
            JsonNode type = Objects.requireNonNull(types.get(row.get("strut type")));
            same(row.get("hole to hole (mm)"), type.get("holeToHoleMm"));
            assertThat(type.get("holeToHoleMm").asDouble())
                    .isCloseTo(type.get("cutMm").asDouble() - 2 * 9.525, within(1e-9));
        }
        assertThat(Poppler.text(CutPacks.folder("flat-conduit").resolve("traveller.pdf"))
                        .replaceAll("\\s+", " "))
                .contains("First flatten, drill");
        assertThat(Poppler.text(CutPacks.folder("flat-conduit").resolve("struts/saw.pdf")))
                .doesNotContain("not square");
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
