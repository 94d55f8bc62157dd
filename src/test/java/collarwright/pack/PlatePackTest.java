package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.plan.Production;
import collarwright.sheet.FileLint;
import collarwright.sheet.LayerMap;
import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.DomeJobs;
import collarwright.testing.DxfJs;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.LibreCad;
import collarwright.testing.NeedsChecker;
import collarwright.testing.SvgElements;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A pack with plates, saddles and strips nested on sheets, its files read by programs from outside. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlatePackTest {
    /** Readers walk arcs in chords: what they measure is off by so much. */
    private static final double CHORDS = 0.02;

    /** The second one takes steps of 5° along an arc of release 12: 98 mm (1 − cos 2.5°). */
    private static final double STEPS = 0.1;

    private Map<String, byte[]> pack = Map.of();

    @TempDir
    private Path folder = Path.of("");

    @BeforeAll
    void make() throws IOException {
        Production production = Production.of(DomeJobs.read(DomeJobs.named("laser", "hen-house")), List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        pack = PackContents.of(production);
    }

    private String text(String path) {
        byte[] bytes = pack.get(path);
        assertThat(bytes).as(path + " of " + pack.keySet()).isNotNull();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** Nested sheets, without ending. */
    private List<String> sheets() {
        return pack.keySet().stream()
                .filter(f -> f.matches("(laser/plates|strips/nest)-.*\\.svg"))
                .map(f -> f.substring(0, f.length() - 4))
                .toList();
    }

    private Path file(String path) throws IOException {
        return Files.write(folder.resolve(path.replace('/', '-')), pack.getOrDefault(path, new byte[0]));
    }

    private static long count(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().count();
    }

    @Test
    @NeedsChecker({Checker.EZDXF, Checker.DXF_JS, Checker.LIBRECAD, Checker.MUTOOL, Checker.SVGELEMENTS})
    void nestedSheets_readByThreePrograms_haveTheSameLinesAndExtents() throws IOException {
        assertThat(sheets()).hasSizeGreaterThan(4);
        for (String sheet : sheets()) {
            SvgElements.Sizes svg = SvgElements.measure(file(sheet + ".svg"));
            double left =
                    svg.boxes().values().stream().mapToDouble(b -> b.x()).min().orElseThrow();
            double right = svg.boxes().values().stream()
                    .mapToDouble(b -> b.x() + b.width())
                    .max()
                    .orElseThrow();
            double top =
                    svg.boxes().values().stream().mapToDouble(b -> b.y()).min().orElseThrow();
            double bottom = svg.boxes().values().stream()
                    .mapToDouble(b -> b.y() + b.height())
                    .max()
                    .orElseThrow();
            long circles = count(text(sheet + ".svg"), "<circle ");
            for (String flavour : List.of("-r12.dxf", "-r2000.dxf")) {
                Path dxf = file(sheet + flavour);
                EzdxfStrict.Reading strict = EzdxfStrict.read(dxf).orFail();
                DxfJs.Reading second = DxfJs.read(dxf);
                LibreCad.Reading third = LibreCad.read(dxf, folder);

                assertThat(strict.insunits()).hasValue(4);
                assertThat(strict.entities("CIRCLE")).hasSize((int) circles);
                assertThat(second.counts()).containsEntry("CIRCLE", (int) circles);
                assertThat(second.counts().values().stream().mapToInt(n -> n).sum())
                        .isEqualTo(strict.entities().size());
                assertThat(third.lines()).isEqualTo(lines(strict));
                assertThat(third.circles()).isEqualTo((int) circles);
                var box = strict.extents().orElseThrow();
                assertThat(box.width()).isCloseTo(right - left, within(CHORDS));
                assertThat(box.height()).isCloseTo(bottom - top, within(CHORDS));
                assertThat(second.box().width()).isCloseTo(right - left, within(STEPS));
                assertThat(second.box().height()).isCloseTo(bottom - top, within(STEPS));
                assertThat(third.width()).isCloseTo(right - left, within(LibreCad.STEP));
                assertThat(third.height()).isCloseTo(bottom - top, within(LibreCad.STEP));
            }
        }
    }

    /** Straight lines, those of polylines too; a closed one has a piece for each corner. */
    private static int lines(EzdxfStrict.Reading reading) {
        int lines = reading.entities("LINE").size();
        for (EzdxfStrict.Entity e : reading.entities("LWPOLYLINE")) {
            int pieces = e.points().size() - (e.closed() ? 0 : 1);
            lines += (int) e.points().stream()
                    .limit(pieces)
                    .filter(p -> p.bulge() == 0)
                    .count();
        }
        return lines;
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void nestedSheets_inTheBrowser_areTrueAndInsideTheMargin() throws IOException {
        for (String sheet : sheets()) {
            Chromium.Drawing drawing = Chromium.measure(file(sheet + ".svg"));
            boolean plates = sheet.startsWith("laser");

            assertThat(drawing.complaints()).isEmpty();
            assertThat(drawing.pageWidth()).isCloseTo(plates ? 800 : 1250, within(0.01));
            assertThat(drawing.pageHeight()).isCloseTo(600, within(0.01));
            Map<String, Box> boxes = new TreeMap<>(drawing.boxes());
            boxes.keySet().removeIf(id -> !id.matches(".*-\\d+"));
            assertThat(boxes).isNotEmpty().allSatisfy((id, box) -> {
                assertThat(box.x()).as(id).isGreaterThan(9.99);
                assertThat(box.x() + box.width()).as(id).isLessThan(drawing.pageWidth() - 9.99);
                assertThat(box.y() + box.height()).as(id).isLessThan(590.01);
            });
            if (!plates) {
                // π (160.2 − 3.02) + 12 of lap, and 0.2 of kerf.
                assertThat(drawing.boxes().get("L4-CUT-OUTSIDE-1").width()).isCloseTo(505.994, within(0.01));
            }
        }
    }

    @Test
    void everyCutFile_readBack_isSoundWithTheJobsLayersOnly() throws IOException {
        LayerMap map = LayerMaps.of(
                DomeJobs.read(DomeJobs.named("laser", "hen-house")).sheet().layers());
        List<String> files = pack.keySet().stream()
                .filter(f -> f.matches("(laser|strips|templates)/.*\\.(dxf|svg)"))
                .toList();
        assertThat(files).hasSizeGreaterThan(40);
        for (String file : files) {
            assertThat(text(file)).contains("L3-CUT-INSIDE").doesNotContain("\nCUT-INSIDE", "\"CUT-INSIDE\"");
            assertThat(FileLint.check(file, text(file), map).findings()).isEmpty();
        }
    }

    /** Every strip of the order lies on just one sheet, and as many sheets are told as layouts times their number. */
    @Test
    void nests_holdTheWholeOrder() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(pack.get(PlanJson.FILE));
        Map<String, Long> made = new HashMap<>();
        plan.get("strips")
                .forEach(s -> made.put(
                        "strip " + s.get("pattern").asText(), s.get("pieces").asLong()));
        plan.get("patterns").forEach(p -> made.put("plate " + p.get("id").asText(), 2L));
        for (JsonNode nest : plan.get("nests")) {
            Map<String, Long> laid = new HashMap<>();
            long sheets = 0;
            for (JsonNode layout : nest.get("layouts")) {
                long times = layout.get("sheets").asLong();
                sheets += times;
                layout.get("parts").forEach(p -> laid.merge(p.get("part").asText(), times, Long::sum));
            }
            laid.forEach((part, pieces) ->
                    assertThat(pieces).as(part).isEqualTo(part.startsWith("saddle") ? 2L : made.get(part)));
            assertThat(sheets).isEqualTo(nest.get("sheets").asLong());
            assertThat(sheets).isGreaterThanOrEqualTo(nest.get("leastSheets").asLong());
        }
        assertThat(plan.get("nests")).hasSize(2);
        assertThat(text("strips/nest.csv").lines()).hasSize(1 + rows(plan, 1));
        assertThat(text("laser/plates.csv").lines()).hasSize(1 + rows(plan, 0));
        assertThat(text("laser/plates.csv")).contains(",saddle TW-22,");
    }

    @Test
    void traveller_tellsWhichPlateGoesWithWhichPattern() throws IOException {
        try (PDDocument document = Loader.loadPDF(pack.get("traveller.pdf"))) {
            String all = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(all)
                    .contains("Index plates: pattern by pattern", "notches for a pin of 6 mm", "CA 2 1: 0.00°")
                    .contains("a kerf of 0.15 mm in holes and 0.2 mm along edges", "Saddles", "80.1 mm");
        }
    }

    private static int rows(JsonNode plan, int nest) {
        int rows = 0;
        for (JsonNode layout : plan.get("nests").get(nest).get("layouts")) {
            rows += layout.get("parts").size();
        }
        return rows;
    }

    /** The cutter's line of a saddle's foot lies half the kerf inside the pipe's outside, round an axis under its mark. */
    @Test
    void saddles_sitOnThePipeWithTheirAxisThroughIts() {
        String svg = sheets().stream()
                .filter(s -> s.startsWith("laser"))
                .map(s -> text(s + ".svg"))
                .findFirst()
                .orElseThrow();
        Pattern outline = Pattern.compile(
                "d=\"M([0-9.]+) ([0-9.]+)A([0-9.]+) [0-9.]+ 0 0 1 ([0-9.]+) ([0-9.]+)L[0-9.]+ ([0-9.]+)L[0-9.]+ [0-9.]+Z\"");
        List<MatchResult> saddles = outline.matcher(svg).results().toList();
        assertThat(saddles).hasSize(4);
        for (MatchResult m : saddles) {
            double x1 = Double.parseDouble(m.group(1));
            double y1 = Double.parseDouble(m.group(2));
            double r = Double.parseDouble(m.group(3));
            double x2 = Double.parseDouble(m.group(4));
            double half = (x2 - x1) / 2;
            assertThat(r).isCloseTo(160.2 / 2 - 0.1, within(1e-4));
            assertThat(Double.parseDouble(m.group(5))).isEqualTo(y1);
            double crown = y1 + StrictMath.sqrt(r * r - half * half) - r;
            // The top is above the crown by 40 and the kerf on both edges, y down.
            assertThat(crown - Double.parseDouble(m.group(6))).isCloseTo(40 + 0.2, within(1e-3));
            String axis = "<line id=\"[^\"]*MARK-[0-9]+\" x1=\"" + number((x1 + x2) / 2) + "\" y1=\"[0-9.]+\" x2=\""
                    + number((x1 + x2) / 2) + "\"";
            assertThat(count(svg, axis)).isGreaterThan(0);
        }
    }

    private static String number(double value) {
        return Pattern.quote(new java.math.BigDecimal(value)
                .setScale(4, java.math.RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString());
    }
}
