package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.plan.Production;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stick is set up from its sheet alone: what {@code pdftotext} reads there is what {@code plan.json} says. */
@NeedsChecker(Checker.POPPLER)
class SetupSheetTest {

    @TempDir
    private static Path folder;

    private static Map<String, byte[]> pack;
    private static JsonNode plan;
    private static List<String> pages;

    @BeforeAll
    static void make() throws IOException {
        Production production = Production.of(PackJobs.onSticks(), List.of());
        assertThat(production.makeable()).as(production.findings().toString()).isTrue();
        pack = PackContents.of(production);
        plan = new ObjectMapper().readTree(pack.get("plan.json"));
        Path traveller = folder.resolve("traveller.pdf");
        Files.write(traveller, pack.get("traveller.pdf"));
        pages = Arrays.asList(Poppler.text(traveller).split("\\f"));
    }

    /** All pages about one stick, blanks taken together. */
    private static String sheet(String about) {
        String text =
                String.join(" ", pages.stream().filter(p -> p.contains(about)).toList());
        return text.replaceAll("\\s+", " ");
    }

    private static String mm(JsonNode number) {
        return new BigDecimal(number.asDouble())
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }

    @Test
    void sheets_sayWhatThePlanSays() {
        assertThat(plan.get("sticks")).isNotEmpty();
        for (JsonNode stick : plan.get("sticks")) {
            String text = sheet("Setup " + stick.get("id").asText());
            assertThat(text)
                    .contains("run it for " + stick.get("runs").asText() + " stick")
                    .contains("X0 at the chuck's jaw face")
                    .contains("Y0 over the rotary axis")
                    .contains("set Z to " + mm(stick.get("crownZMm")))
                    .contains("A0 anywhere on a new stick, it becomes every collar's 0° line")
                    .contains("until its last program is done")
                    .contains(stick.get("top").asText())
                    .contains(mm(stick.get("chuckLengthMm")) + " behind the jaw face")
                    .contains("stands out " + mm(stick.get("stickOutMm")))
                    .contains(mm(stick.get("stickLengthMm")) + " or longer")
                    .contains("edge at X " + mm(stick.get("firstEdgeMm")))
                    .contains("mid-plane at X " + mm(stick.get("firstMiddleMm")))
                    .contains("then every " + mm(stick.get("pitchMm")))
                    .contains("one collar of each pattern out of every 10")
                    .contains("First article");
            double clear = 0;
            for (JsonNode program : stick.get("programs")) {
                String file = program.get("file").asText().replace("machine/", "");
                assertThat(text)
                        .contains(file)
                        .contains(program.get("rpm").asText() + " rpm")
                        .contains(mm(program.get("clearZMm")))
                        .contains("stick-out");
                clear = Math.max(clear, program.get("clearZMm").asDouble());
            }
            assertThat(text)
                    .contains("clear height Z "
                            + new BigDecimal(clear)
                                    .setScale(2, RoundingMode.HALF_UP)
                                    .stripTrailingZeros()
                                    .toPlainString()
                            + " mm: the cutter's tip goes up to it (clear of the jaws, which stand out 15 mm beyond the pipe);"
                            + " the pipe turns only there");
            for (JsonNode place : stick.get("places")) {
                assertThat(text)
                        .contains(place.get("collar").asText() + " "
                                + place.get("pattern").asText() + " " + mm(place.get("edgeMm")));
            }
        }
    }

    // The holder at the bottom of a hole stays above the jaws by the gap: out-of-round 0.6, jaws 15, gap 10 above the
    // crown at 80.05, down to the cutter's lowest point.
    @Test
    void stickOut_keepsTheHolderAboveTheJaws() {
        for (JsonNode stick : plan.get("sticks")) {
            for (JsonNode program : stick.get("programs")) {
                double holder = program.get("bottomZMm").asDouble()
                        + program.get("stickOutMm").asDouble();
                assertThat(holder)
                        .isGreaterThanOrEqualTo(80.05 + 0.6 + 15 + 10 - 1e-9)
                        .isLessThan(80.05 + 25.7);
            }
        }
    }

    @Test
    void places_boxesAndRuns_addUpToTheOrder() {
        Map<String, Integer> made = new HashMap<>();
        int sticks = 0;
        for (JsonNode stick : plan.get("sticks")) {
            sticks += stick.get("runs").asInt();
            for (JsonNode place : stick.get("places")) {
                made.merge(place.get("pattern").asText(), stick.get("runs").asInt(), Integer::sum);
            }
        }
        Map<String, Integer> boxes = new HashMap<>();
        plan.get("boxes")
                .forEach(b ->
                        boxes.put(b.get("pattern").asText(), b.get("pieces").asInt()));
        Map<String, Integer> patterns = new HashMap<>();
        plan.get("patterns")
                .forEach(p -> patterns.put(p.get("id").asText(), p.get("made").asInt()));
        assertThat(made).isEqualTo(patterns).isEqualTo(boxes);
        assertThat(plan.at("/batch/sticks").asInt())
                .isEqualTo(sticks)
                .isEqualTo(plan.at("/batch/leastSticks").asInt());
        assertThat(plan.at("/batch/layouts").asInt())
                .isEqualTo(plan.get("sticks").size());
        for (JsonNode program : plan.get("programs")) {
            assertThat(pack).containsKey(program.get("file").asText());
        }
        String csv = new String(pack.get("machine/sticks.csv"), StandardCharsets.UTF_8);
        int places = 0;
        for (JsonNode stick : plan.get("sticks")) {
            places += stick.get("places").size();
        }
        assertThat(csv.lines()).hasSize(1 + places);
        String[] row = csv.lines().skip(1).findFirst().orElseThrow().split(",");
        assertThat(csv).contains("edge at X (mm),mid-plane at X (mm),edge at X (in),mid-plane at X (in)");
        // An inch is 25.4 mm by its definition.
        for (int i = 4; i < 6; i++) {
            assertThat(Double.parseDouble(row[i]) / 25.4).isCloseTo(Double.parseDouble(row[i + 2]), within(6e-5));
        }
        assertThat(new String(pack.get("boxes.csv"), StandardCharsets.UTF_8).lines())
                .hasSize(1 + boxes.size());
    }

    /** No more than kind by kind with no rest used, no fewer than by length alone; both counted from the sheets. */
    @Test
    void lengthsToBuy_carryEveryStick() throws IOException {
        int count = 0;
        double net = 0;
        Map<Double, Integer> byStick = new HashMap<>();
        for (JsonNode stick : plan.get("sticks")) {
            byStick.merge(
                    stick.get("stickLengthMm").asDouble(), stick.get("runs").asInt(), Integer::sum);
        }
        for (Map.Entry<Double, Integer> kind : byStick.entrySet()) {
            int each = 0;
            while ((each + 1) * kind.getKey() + each * 3 <= 3000) {
                each++;
            }
            count += (kind.getValue() + each - 1) / each;
            net += kind.getValue() * kind.getKey();
        }
        double bought = 0;
        for (JsonNode need : plan.get("stock")) {
            if (need.get("role").asText().equals("collar")) {
                for (JsonNode layout : need.at("/cutting/layouts")) {
                    int runs = layout.get("runs").asInt();
                    int length = layout.get("stickLengthMm").asInt();
                    bought += runs * length;
                    assertThat(sheet("Stock to pull")).contains(runs + " of " + length + " mm");
                }
            }
        }
        assertThat(bought).isBetween(net, 3000.0 * count);
    }

    @Test
    void sheetOfManySticks_hasATally_andTheBatchPageTellsTheOtherOrder() {
        JsonNode first = plan.at("/sticks/0");
        int runs = first.get("runs").asInt();
        assertThat(runs).isGreaterThan(3);
        assertThat(sheet("Setup LA")).contains("Tally, a box for every stick").contains("1-" + Math.min(10, runs));
        int programs = plan.at("/batch/programRuns").asInt();
        assertThat(sheet("Which stick is run how often"))
                .contains("Two orders are possible.")
                .contains("but " + programs + " times a stick, and each stick loses its A0 and X0");
    }

    @Test
    void batchPage_saysHowOftenEachStickIsRun() {
        String text = sheet("Which stick is run how often");
        assertThat(text).contains("sticks " + plan.at("/batch/sticks").asText() + ", the fewest possible");
        for (JsonNode stick : plan.get("sticks")) {
            assertThat(text).contains(stick.get("id").asText());
        }
        assertThat(text).contains("What comes off, one box for each pattern");
    }

    @Test
    void pressPack_hasBoxesAndNoSticks() throws IOException {
        Production press = Production.of(PackJobs.metric(), List.of());
        Map<String, byte[]> files = PackContents.of(press);
        JsonNode json = new ObjectMapper().readTree(files.get("plan.json"));
        assertThat(json.get("sticks")).isEmpty();
        assertThat(json.has("batch")).isFalse();
        assertThat(json.get("boxes")).hasSameSizeAs(json.get("patterns"));
        assertThat(files).containsKey("boxes.csv").doesNotContainKey("machine/sticks.csv");
    }
}
