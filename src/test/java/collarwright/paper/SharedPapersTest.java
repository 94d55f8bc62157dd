package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.TrialPlans;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.RaisingLine;
import collarwright.testing.DomeJobs;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Ids;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What a shop asks of the papers of shared patterns with holes off the middle line, read back from the file. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SharedPapersTest {

    private final Plan plan = Planner.plan(DomeJobs.read(DomeJobs.named("shared-jobs", "meeting-shared")), List.of());
    private List<String> pages = List.of();
    private String html = "";

    SharedPapersTest() throws IOException {}

    @BeforeAll
    void print() {
        pages = PdfText.pages(Traveller.print(TrialPapers.of(plan)));
        html = new String(FrontPage.print(TrialPapers.of(plan)), StandardCharsets.UTF_8);
    }

    private String section(String about) {
        return pages.stream()
                .filter(p -> p.startsWith(about))
                .reduce("", String::concat)
                .replaceAll("\\s+", " ");
    }

    private static String rounded(double value) {
        return new BigDecimal(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    @Test
    void heights_standInPressTableAndOnTheFrontPage_withAWarning() {
        int off = 0;
        for (Pattern pattern : plan.book().patterns()) {
            boolean flat = pattern.holes().stream().allMatch(h -> Math.abs(h.height()) < 1e-9);
            String press = section("Pattern " + pattern.id() + " Revision");
            assertThat(press.contains("not on the middle line")).isEqualTo(!flat);
            if (flat) {
                continue;
            }
            off++;
            for (Hole hole : pattern.holes()) {
                // The collars are 70 mm wide.
                String middle = (hole.height() > 0 ? "+" : "") + rounded(hole.height());
                assertThat(press).contains(" " + middle + " " + rounded(35 - hole.height()) + " ");
                assertThat(html).contains(">" + middle + "<").contains(">" + rounded(35 - hole.height()) + "<");
            }
        }
        assertThat(off).isPositive();
        assertThat(html).contains("not on the middle line");
    }

    @Test
    void holesOnTheMiddle_getNoHeights() {
        List<String> plain = PdfText.pages(Traveller.print(TrialPapers.windbreak()));
        assertThat(String.join(" ", plain)).doesNotContain("middle line:").doesNotContain("from TOP");
    }

    @Test
    void hubTable_saysWhichHubIsWhichType() {
        String hubs = section("Hubs ");
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            int type = plan.hubs().typeOf(node);
            String row = Ids.letters('H', type) + " "
                    + Ids.letters('C', plan.placement(type).pattern()) + " UP [^H]*\\b"
                    + plan.hubs().dome().nodeId(node) + "\\b";
            assertThat(hubs).containsPattern(row);
        }
    }

    @Test
    void raisingTable_hasEveryStrutOfTheOrder_atItsHub() {
        String text = section("Putting it together");
        for (RaisingLine line : RaisingLine.all(plan, plan.assembly().orElseThrow())) {
            String at = plan.hubs().dome().nodeId(line.at().node());
            String other = plan.hubs().dome().nodeId(line.other().node());
            String comes = "hole " + line.at().hole() + ": S[A-Z][ab]? from " + other + " hole "
                    + line.other().hole() + ", " + (line.joins() ? "comes with it" : "push into " + at);
            String pushed = "hole " + line.other().hole() + ": S[A-Z][ab]? from " + at + " hole "
                    + line.at().hole() + ", push into " + at;
            assertThat(text).containsPattern(line.joins() ? comes : "(?:" + comes + "|" + pushed + ")");
        }
        assertThat(text).contains("struts/raising.csv").contains("still empty");
    }

    @Test
    void verdict_saysWhetherAnyHoleIsAtRisk() {
        double least = plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .mapToDouble(h -> h.tiltMin() - h.neededLean())
                .min()
                .orElseThrow();
        String words = least < 0 ? "At risk in the tightest case" : "No hole is at risk: even in its tightest case";
        String degrees = String.format(Locale.ROOT, "%.2f°", Math.toDegrees(least));
        assertThat(section("Holes at risk")).contains(words).contains(degrees).contains("at least 9 of 10");
        assertThat(html).contains(words);
        assertThat(section("Holes at risk")).doesNotContain("room");
    }

    @Test
    void section_saysWhichHoleItShows() {
        for (Pattern pattern : plan.book().patterns()) {
            assertThat(section("Pattern " + pattern.id() + " Revision")).containsPattern("cut through hole [1-6]");
        }
    }

    @Test
    void setupSheets_giveHeights() {
        List<String> sheets = PdfText.pages(Traveller.print(TrialPapers.withSetups(plan)));
        String setup = sheets.stream()
                .filter(p -> p.startsWith("Setup "))
                .reduce("", String::concat)
                .replaceAll("\\s+", " ");
        Hole hole = plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .filter(h -> h.height() < -0.1)
                .findFirst()
                .orElseThrow();
        assertThat(setup)
                .contains("not on the middle line")
                .contains(" " + rounded(hole.height()) + " " + rounded(35 - hole.height()));
    }

    @Test
    void tooManyHubs_areLeftToTheTable() {
        Plan large = TrialPlans.dome(5, 8);
        RaisingTable table = new RaisingTable(large, large.assembly().orElseThrow());
        assertThat(table.printed()).isFalse();
        assertThat(table.tooMany())
                .startsWith(large.hubs().dome().nodeCount() + " hubs are too many")
                .contains("struts/raising.csv");
    }

    @Test
    void inchJobs_haveDecimalInchesAndThousandths() {
        Plan inch = TrialPlans.greenhouse();
        List<String> sheets = PdfText.pages(Traveller.print(TrialPapers.of(inch)));
        String all = String.join(" ", sheets).replaceAll("\\s+", " ");
        for (Pattern pattern : inch.book().patterns()) {
            for (Hole hole : pattern.holes()) {
                // The collars are 4.5 in wide across.
                String arc = new BigDecimal(hole.azimuth() * 2.25)
                        .setScale(3, RoundingMode.HALF_UP)
                        .toPlainString();
                assertThat(all).contains(" " + arc + " ");
            }
        }
        assertThat(all)
                .contains("arc, in")
                .contains("Gauge pins in steps of 0.001 in")
                .contains("0.004 in (0.1 mm)")
                .contains("4.500 in (114.3 mm)");
    }
}
