package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Vec3;
import collarwright.picture.TrialPlans;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.plan.Uphill;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.Qpdf;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What the traveller says is what was planned, on every page and for every reader. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TravellerTest {

    private final Plan plan = TrialPlans.windbreak();
    private byte[] file = {};
    private List<String> pages = List.of();

    @BeforeAll
    void print() {
        file = Traveller.print(TrialPapers.withSetups(plan));
        pages = PdfText.pages(file);
    }

    private String page(String about) {
        return pages.stream().filter(p -> p.startsWith(about)).findFirst().orElseThrow(() -> new AssertionError(about));
    }

    private static String rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    @Test
    void everyPage_saysWhichOfHowManyOfWhichJob() {
        assertThat(pages).hasSizeGreaterThan(10);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .contains("page " + (i + 1) + " of " + pages.size())
                    .contains(plan.job().title())
                    .contains("Revision " + plan.job().revision());
        }
    }

    @Test
    void cover_countsTheOrder() {
        // 61 hubs and 165 struts of a 3v 5/9 dome: V and E of the T-number tables less the cut-off rows; here the other
        // way round, from the plan's own members.
        int ends = 2 * plan.hubs().dome().memberCount();
        String cover = pages.get(0);
        assertThat(cover).contains("61 hubs, 165 struts");
        assertThat(cover.lines().map(String::strip))
                .contains("collar CA, 5 holes 6 7", "tie, one for each strut end " + ends + " 340");
    }

    @Test
    void cover_carriesEveryCaution() {
        String all = String.join(" ", pages).replaceAll("\\s+", " ");
        assertThat(all)
                .contains("no load rating")
                .contains("licensed engineer")
                .contains("in the air first, single step, hand on stop")
                .contains("eye protection")
                .contains("Never laser-cut PVC")
                .contains("patents");
    }

    @Test
    void pressTable_hasEveryHoleWhereThePlanHasIt() {
        for (Pattern pattern : plan.book().patterns()) {
            List<String> lines = page("Pattern " + pattern.id() + " ").lines().toList();
            for (Hole hole : pattern.holes()) {
                double degrees = hole.azimuth() / Math.PI * 180;
                double arc = Math.PI * 160.1 * degrees / 360;
                String start = hole.number() + " " + rounded(degrees, 2) + "° ";
                assertThat(lines)
                        .anySatisfy(line -> assertThat(line)
                                .startsWith(start)
                                .contains(" " + rounded(arc, 2) + " ")
                                .contains("in saw " + hole.cutter().marked() + " saw"));
            }
        }
    }

    @Test
    void pressTable_goesAsDeepAsTheCurvedWallAsks() {
        // From the crown to where the bore is crossed at the hole's side, on a circle through the wall's inside; +
        // pilot 8
        // and overtravel 1. Thickest wall 6.6.
        double inner = 80.05 - 6.6;
        double through = 80.05 - Math.sqrt(inner * inner - 21.5 * 21.5);
        String page = page("Pattern CA ");
        assertThat(page)
                .contains(rounded(through, 1) + " mm below the crown")
                .contains(rounded(through + 9, 1) + " mm");
    }

    @Test
    void checks_sayHowTheHubSits_asPointsInSpaceSay() {
        double foot = Double.POSITIVE_INFINITY;
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            foot = Math.min(foot, 2600 * plan.hubs().dome().z(node));
        }
        for (int i = 0; i < plan.book().patterns().size(); i++) {
            HubSeat seat = HubSeat.of(plan, i);
            double above = lowestRimPoint(i) - foot;
            assertThat(page("Pattern " + plan.book().patterns().get(i).id() + ", checks"))
                    .contains("mid-plane " + rounded(meanDrop(i), 1) + " mm below the node (spread "
                            + rounded(seat.collar().spread(), 1) + " mm)")
                    .contains("lowest point " + rounded(Math.abs(above), 1) + " mm " + (above < 0 ? "below" : "above")
                            + " the foot")
                    .contains("middle of the centre ring "
                            + rounded(Math.abs(seat.ring().middle()), 1) + " mm above the mid-plane, at least "
                            + rounded(seat.ring().width(), 1) + " mm wide");
        }
    }

    // A strut leaves its node and has fallen by so much where it passes the middle of the wall (80.05 less half of
    // 6.4).
    private double meanDrop(int type) {
        var struts = plan.hubs().types().get(type).struts();
        double sum = 0;
        for (var strut : struts) {
            Vec3 along = new Vec3(Math.cos(strut.axialAngle()), 0, -Math.sin(strut.axialAngle()));
            sum -= along.times(76.85 / along.x()).z();
        }
        return sum / struts.size();
    }

    // The edges of the collars, 80 mm wide, walked round in steps: the walk misses the lowest point by less than
    // 80·(1 − cos 0.05°), a ten-thousandth of a millimetre.
    private double lowestRimPoint(int type) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            if (plan.hubs().typeOf(node) != type) {
                continue;
            }
            Vec3 axis = new Vec3(
                    plan.hubs().dome().x(node),
                    plan.hubs().dome().y(node),
                    plan.hubs().dome().z(node));
            Vec3 side = Math.abs(axis.z()) > 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1);
            Vec3 u = axis.cross(side).times(1 / axis.cross(side).norm());
            Vec3 v = axis.cross(u);
            for (double turn = 0; turn < 360; turn += 0.1) {
                double a = Math.toRadians(turn);
                Vec3 round = u.times(Math.cos(a)).plus(v.times(Math.sin(a))).times(80.05);
                for (int end : new int[] {-40, 40}) {
                    Vec3 point = axis.times(2600 - meanDrop(type) + end).plus(round);
                    lowest = Math.min(lowest, point.z());
                }
            }
        }
        return lowest;
    }

    @Test
    void easedRims_areAskedForOnEveryPatternPage_andSharpOnesAreNot() {
        assertThat(String.join(" ", pages)).doesNotContain("ease both rims");
        Plan eased = TrialPlans.eased(0.5);
        List<String> sheets = PdfText.pages(Traveller.print(TrialPapers.of(eased)));
        for (Pattern pattern : eased.book().patterns()) {
            assertThat(sheets)
                    .anySatisfy(s -> assertThat(s)
                            .startsWith("Pattern " + pattern.id() + " ")
                            .contains("ease both rims of each hole 0.5 mm × 45°"));
        }
    }

    @Test
    void hubs_allStandWithTheirWayUp() {
        String text = pages.stream()
                .filter(p -> p.startsWith("Hubs "))
                .reduce("", String::concat)
                .replaceAll("\\s+", " ");
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            assertThat(text)
                    .containsPattern("\\b" + plan.hubs().dome().nodeId(node) + "\\b")
                    .contains(Uphill.of(plan.hubs(), node).words());
        }
    }

    @Test
    void caliperTable_givesTheChordBetweenHoleEdges() {
        // Another way than the table: the edges as points in the plane, and their distance.
        for (Pattern pattern : plan.book().patterns()) {
            String text = page("Pattern " + pattern.id() + ", checks");
            for (int i = 0; i < pattern.holes().size(); i++) {
                Hole first = pattern.holes().get(i);
                Hole second = pattern.holes().get((i + 1) % pattern.holes().size());
                double web = edge(first, 1).minus(edge(second, -1)).norm();
                assertThat(text)
                        .contains(first.number() + " to " + second.number())
                        .contains(" " + rounded(web, 2) + " ");
            }
        }
    }

    private static Vec3 edge(Hole hole, int side) {
        double outer = 80.05;
        double p = hole.cutter().asDrilled().nominal() / 2;
        double along = Math.sqrt(outer * outer - p * p);
        double c = Math.cos(hole.azimuth());
        double s = Math.sin(hole.azimuth());
        return new Vec3(along * c - side * p * s, along * s + side * p * c, 0);
    }

    @Test
    void struts_areCutToTheLengthsOfThePlan_longestFirst() {
        String text = page("Struts");
        int last = -1;
        for (String line : List.of("1 SC 967.73 38.100 38-3/32 in (-0.15 mm) 80 83", "2 SB", "3 SA")) {
            assertThat(text.indexOf(line)).as(line).isGreaterThan(last);
            last = text.indexOf(line);
        }
        plan.struts()
                .types()
                .forEach(type ->
                        assertThat(text).contains(rounded(type.cut(), 2)).contains(rounded(type.cut() - 18, 2)));
    }

    @Test
    void unmeasuredSizes_saySoOnEveryPatternPage() {
        Plan greenhouse = TrialPlans.greenhouse();
        List<String> sheets = PdfText.pages(Traveller.print(TrialPapers.of(greenhouse)));
        greenhouse
                .book()
                .patterns()
                .forEach(p -> assertThat(sheets.stream().filter(s -> s.startsWith("Pattern " + p.id() + " ")))
                        .allSatisfy(s -> assertThat(s).contains("nominal, not measured"))
                        .isNotEmpty());
        assertThat(page("Pattern CA ")).contains("measured").doesNotContain("not measured");
    }

    @Test
    void setupSheets_tellFilesInOrder() {
        var setup = TrialPapers.withSetups(plan).setups().get(0);
        String text = page("Setup " + setup.load().id());
        int last = 0;
        for (var step : setup.steps()) {
            int at = text.indexOf(step.order() + " " + step.file());
            assertThat(at).as(step.file()).isGreaterThan(last);
            last = at;
        }
        assertThat(text).contains(setup.zero().x()).contains("rotary-direction-test.nc");
    }

    @Test
    void sameWork_givesTheSameBytes_inEveryLanguageAndTimeZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
                assertThat(Traveller.print(TrialPapers.withSetups(TrialPlans.windbreak())))
                        .as(tag)
                        .isEqualTo(file);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void file_holdsNoDateAndNothingPacked() throws IOException {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        assertThat(text)
                .doesNotContain("CreationDate")
                .doesNotContain("ModDate")
                .doesNotContain("FlateDecode");
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(document.getDocumentInformation().getTitle())
                    .contains(plan.job().title());
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void title_inAnyScript_isOnTheCover_asFarAsTheTypefaceGoes() {
        String cover = PdfText.pages(
                        Traveller.print(TrialPapers.of(TrialPlans.windbreak("Ветрозащита, Ανεμοφράκτης, 風"))))
                .get(0);
        assertThat(cover).contains("Ветрозащита, Ανεμοφράκτης, □").contains("index.html shows the whole title");
    }

    @Test
    void planThatCannotBeMade_isPrintedWithItsFindings() {
        Plan crowded = TrialPlans.withoutCutters();
        assertThat(crowded.book().patterns()).isEmpty();
        List<String> sheets = PdfText.pages(Traveller.print(TrialPapers.of(crowded)));
        assertThat(String.join("\n", sheets)).contains("STOP").contains("NO_").doesNotContain("Pattern CA");
    }

    @Test
    @NeedsChecker({Checker.POPPLER, Checker.QPDF})
    void otherReaders_findTheSameTextAndASoundFile(@TempDir Path folder) throws IOException {
        Path pdf = folder.resolve("traveller.pdf");
        Files.write(pdf, file);
        assertThat(Qpdf.faults(pdf)).isEmpty();
        assertThat(Poppler.pages(pdf)).hasSize(pages.size()).allSatisfy(size -> {
            assertThat(size.width()).isBetween(209.9, 210.1);
            assertThat(size.height()).isBetween(296.9, 297.1);
        });
        assertThat(Poppler.fonts(pdf))
                .isNotEmpty()
                .allSatisfy(font -> assertThat(font.embedded()).isTrue());
        String text = Poppler.text(pdf);
        assertThat(text).contains("Pattern CB: make 31").contains("page 1 of " + pages.size());
    }
}
