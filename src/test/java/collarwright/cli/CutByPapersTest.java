package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads the papers of packs as a person at the saw does, by outside programs (poppler, Python's csv), cuts and drills by
 * them, and compares what lies on the bench with {@code plan.json}: by name as multisets, by length and hole to the
 * printed decimals. On every stick the printed numbers add up to its length, to the last digit.
 */
@NeedsChecker({Checker.POPPLER, Checker.OPENPYXL})
class CutByPapersTest {

    private static final BigDecimal INCH = new BigDecimal("25.4");

    static List<String> jobs() {
        return CutPacks.jobs();
    }

    private static Path pack(String job) {
        return CutPacks.folder(job);
    }

    private static JsonNode plan(String job) throws IOException {
        return CutPacks.plan(job);
    }

    private static List<Map<String, String>> table(String job, String file) {
        return CutPacks.table(job, file);
    }

    /** What is cut, by the names of plan.json, spares included. */
    private static Map<String, Integer> asked(JsonNode plan) {
        Map<String, Integer> asked = new TreeMap<>();
        for (JsonNode stock : plan.get("stock")) {
            if (!stock.has("cutting")) {
                continue;
            }
            switch (stock.get("role").asText()) {
                case "strut" ->
                    plan.get("strutTypes")
                            .forEach(t -> asked.put(
                                    t.get("id").asText(), t.get("made").asInt()));
                case "ring" -> asked.put("ring", plan.at("/order/rings").asInt());
                default -> {
                    // A machine drills collars on its own sticks, which the saw cuts first.
                    boolean machine = plan.has("sticks") && !plan.get("sticks").isEmpty();
                    plan.get(machine ? "sticks" : "patterns")
                            .forEach(b -> asked.put(
                                    b.get("id").asText(),
                                    b.get(machine ? "runs" : "made").asInt()));
                }
            }
        }
        return asked;
    }

    /** The length that the saw has to give each strut: its own, or the middle of those merged with it. */
    private static void struts(JsonNode plan, Map<String, BigDecimal> lengths, double decimals) {
        double merge = 0;
        for (JsonNode layout : plan.at("/stock/0/cutting/layouts")) {
            for (JsonNode piece : layout.get("pieces")) {
                BigDecimal cut =
                        Objects.requireNonNull(lengths.get(piece.get("piece").asText()));
                assertThat(cut.doubleValue()).isCloseTo(piece.get("lengthMm").asDouble(), within(decimals));
            }
        }
        for (JsonNode type : plan.get("strutTypes")) {
            BigDecimal cut = Objects.requireNonNull(lengths.get(type.get("id").asText()));
            merge = Math.max(
                    merge, Math.abs(cut.doubleValue() - type.get("cutMm").asDouble()));
        }
        assertThat(merge).isLessThanOrEqualTo(decimals + mergeMm(plan) / 2);
    }

    // Only one of the jobs merges lengths: 0.04 in.
    private static double mergeMm(JsonNode plan) {
        return plan.at("/job/title").asText().equals("Seed store, 3v") ? 0.04 * 25.4 : 0;
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void plans_areProven(String job) throws IOException {
        for (JsonNode stock : plan(job).get("stock")) {
            if (stock.has("cutting")) {
                assertThat(stock.at("/cutting/proof/proven").asBoolean())
                        .as(stock.get("role").asText())
                        .isTrue();
                assertThat(stock.at("/cutting/uncut")).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void sawPapers_sticks_giveWhatIsAsked_andAddUp(String job) throws IOException {
        JsonNode plan = plan(job);
        SawPapers papers = SawPapers.read(pack(job).resolve("struts/saw.pdf"));

        Map<String, Integer> made = new TreeMap<>();
        Map<String, BigDecimal> lengths = new LinkedHashMap<>();
        for (SawPapers.Stick stick : papers.sticks()) {
            BigDecimal mm = BigDecimal.ZERO;
            BigDecimal in = BigDecimal.ZERO;
            for (SawPapers.Line line : stick.parts()) {
                mm = mm.add(line.mm());
                in = in.add(line.in());
                together(stick, line);
            }
            assertThat(mm).as(stick.layout()).isEqualByComparingTo(stick.whole().mm());
            assertThat(in).as(stick.layout()).isEqualByComparingTo(stick.whole().in());
            for (SawPapers.Line piece : stick.pieces()) {
                made.merge(piece.what(), stick.runs() * piece.count(), Integer::sum);
                BigDecimal each = piece.mm().divide(BigDecimal.valueOf(piece.count()), 6, RoundingMode.HALF_UP);
                assertThat(lengths.getOrDefault(piece.what(), each)).isEqualByComparingTo(each);
                lengths.put(piece.what(), each);
            }
        }

        assertThat(made).isEqualTo(asked(plan));
        struts(plan, lengths, 0.001);
        assertThat(papers.sticks().stream().map(SawPapers.Stick::offcut).filter(o -> !o.isEmpty()))
                .doesNotHaveDuplicates();
    }

    // Millimetres multiply to the last digit; of inches a ten-thousandth may be lost each time.
    private static void together(SawPapers.Stick stick, SawPapers.Line line) {
        BigDecimal count = BigDecimal.valueOf(line.count());
        if (stick.inches()) {
            assertThat(line.each().multiply(count).subtract(line.in()).abs())
                    .as(stick.layout() + " " + line.what())
                    .isLessThanOrEqualTo(
                            new BigDecimal("0.00005").multiply(count).add(new BigDecimal("0.0001")));
        } else {
            assertThat(line.each().multiply(count))
                    .as(stick.layout() + " " + line.what())
                    .isEqualByComparingTo(line.mm());
        }
        assertThat(line.in().multiply(INCH).subtract(line.mm()).abs()).isLessThanOrEqualTo(new BigDecimal("0.00255"));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void sawPapers_stops_setOnceLongToShort_giveWhatIsAsked(String job) throws IOException {
        JsonNode plan = plan(job);
        SawPapers papers = SawPapers.read(pack(job).resolve("struts/saw.pdf"));

        Map<String, Integer> made = new TreeMap<>();
        Map<String, BigDecimal> lengths = new LinkedHashMap<>();
        Map<String, List<String>> sticks = new TreeMap<>();
        for (int i = 0; i < papers.stops().size(); i++) {
            SawPapers.Stop stop = papers.stops().get(i);
            if (i > 0 && papers.stops().get(i - 1).kind().equals(stop.kind())) {
                assertThat(stop.mm()).isLessThan(papers.stops().get(i - 1).mm());
            }
            assertThat(stop.in().multiply(INCH).subtract(stop.mm()).abs())
                    .isLessThanOrEqualTo(new BigDecimal("0.00128"));
            assertThat(stop.fractions()).as(stop.toString()).hasSize(2);
            fraction(stop.fractions().get(0), 16, stop.errors().get(0), stop.mm());
            fraction(stop.fractions().get(1), 32, stop.errors().get(1), stop.mm());
            for (SawPapers.From from : stop.from()) {
                made.merge(from.piece(), from.runs() * from.each(), Integer::sum);
                lengths.put(from.piece(), stop.mm());
                sticks.computeIfAbsent(from.layout(), l -> new ArrayList<>())
                        .add(from.runs() + " × " + from.each() + " " + from.piece());
            }
        }

        assertThat(made).isEqualTo(asked(plan));
        struts(plan, lengths, 0.001);
        // Stick by stick it is what the pages of the sticks say.
        for (SawPapers.Stick stick : papers.sticks()) {
            assertThat(sticks.remove(stick.layout()))
                    .containsExactlyInAnyOrderElementsOf(stick.pieces().stream()
                            .map(p -> stick.runs() + " × " + p.count() + " " + p.what())
                            .toList());
        }
        assertThat(sticks).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void sticksTable_givesWhatIsAsked_andAddsUp(String job) throws IOException {
        JsonNode plan = plan(job);

        Map<String, Integer> made = new TreeMap<>();
        Map<String, BigDecimal> lengths = new LinkedHashMap<>();
        Map<String, BigDecimal> sums = new TreeMap<>();
        Map<String, BigDecimal> sticks = new TreeMap<>();
        for (Map<String, String> row : table(job, "struts/sticks.csv")) {
            sums.merge(row.get("layout"), new BigDecimal(row.get("together (mm)")), BigDecimal::add);
            sticks.put(row.get("layout"), new BigDecimal(row.get("stick length (mm)")));
            if (!row.get("each (mm)").isEmpty()) {
                int many = Integer.parseInt(row.get("how many"));
                made.merge(row.get("what"), many * Integer.parseInt(row.get("sticks cut like this")), Integer::sum);
                lengths.put(row.get("what"), new BigDecimal(row.get("each (mm)")));
                assertThat(new BigDecimal(row.get("each (mm)")).multiply(BigDecimal.valueOf(many)))
                        .isEqualByComparingTo(row.get("together (mm)"));
                fraction(
                        row.get("each (to 1/32 in)").replace(" in", ""),
                        32,
                        new BigDecimal(row.get("error of the 1/32 (mm)")),
                        new BigDecimal(row.get("each (mm)")));
            }
        }

        assertThat(made).isEqualTo(asked(plan));
        struts(plan, lengths, 0.001);
        assertThat(sums).isNotEmpty().isEqualTo(sticks);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void cutList_andTraveller_giveTheStrutsOfThePlan_withTheirHoles(String job) throws IOException {
        JsonNode plan = plan(job);
        StrutSheets sheets = StrutSheets.read(pack(job).resolve("traveller.pdf"));
        Map<String, JsonNode> types = new TreeMap<>();
        plan.get("strutTypes").forEach(t -> types.put(t.get("id").asText(), t));

        assertThat(sheets.cuts()).hasSameSizeAs(types.keySet());
        for (StrutSheets.Cut cut : sheets.cuts()) {
            JsonNode type = Objects.requireNonNull(types.get(cut.type()));
            double length = sawn(type).doubleValue();
            assertThat(cut.made()).isEqualTo(type.get("made").asInt());
            assertThat(cut.perDome()).isEqualTo(type.get("count").asInt());
            assertThat(cut.mm().doubleValue()).isCloseTo(length, within(0.00501));
            assertThat(cut.in().doubleValue() * 25.4).isCloseTo(length, within(0.0128));
            assertThat(inches(cut.fraction()).multiply(INCH).doubleValue() - length)
                    .isCloseTo(cut.error().doubleValue(), within(0.00501));
        }
        // Of these jobs one has flats that are wider than their holes: nothing is drilled before struts are in.
        assertThat(sheets.stops()).hasSize(job.equals("flat-conduit") ? 0 : types.size());
        assertThat(pack(job).resolve("struts/stops.csv").toFile().exists()).isEqualTo(!job.equals("flat-conduit"));
        for (StrutSheets.Holes holes : sheets.stops()) {
            JsonNode type = Objects.requireNonNull(types.get(holes.type()));
            double length = type.get("cutMm").asDouble();
            double first = type.at("/ends/0/drillMm").asDouble();
            double second = type.at("/ends/1/drillMm").asDouble();
            assertThat(holes.made()).isEqualTo(type.get("made").asInt());
            assertThat(holes.first().doubleValue()).isCloseTo(first, within(0.00501));
            assertThat(length - holes.second().doubleValue()).isCloseTo(second, within(0.00501));
            assertThat(holes.fromOther().doubleValue()).isCloseTo(second, within(0.00501));
        }
        for (Map<String, String> row : table(job, "struts/cut-list.csv")) {
            JsonNode type = Objects.requireNonNull(types.get(row.get("strut type")));
            assertThat(row.get("to make")).isEqualTo(type.get("made").asText());
            assertThat(new BigDecimal(row.get("cut length (mm)"))).isEqualByComparingTo(sawn(type));
            same(row.get("tie hole from end a (mm)"), type.at("/ends/0/drillMm"));
            same(row.get("tie hole from end b (mm)"), type.at("/ends/1/drillMm"));
        }
        assertThat(table(job, "struts/cut-list.csv")).hasSameSizeAs(types.keySet());
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void traveller_sticks_giveTheStrutsOfThePlan(String job) throws IOException {
        JsonNode plan = plan(job);

        Map<String, Integer> made = new TreeMap<>();
        Map<String, BigDecimal> lengths = new LinkedHashMap<>();
        StrutSheets.read(pack(job).resolve("traveller.pdf"))
                .sticks()
                .values()
                .forEach(run -> run.pieces().forEach(p -> {
                    made.merge(p.type(), run.sticks() * p.count(), Integer::sum);
                    lengths.put(p.type(), p.length());
                }));

        Map<String, Integer> asked = asked(plan);
        asked.keySet().removeIf(k -> !k.startsWith("S"));
        assertThat(made).isEqualTo(asked);
        struts(plan, lengths, 0.001);
    }

    // The fraction is the nearest of its kind, and its error has the right sign.
    private static void fraction(String text, int parts, BigDecimal error, BigDecimal mm) {
        BigDecimal off = inches(text).multiply(INCH).subtract(mm);
        assertThat(off.subtract(error).abs()).as(text).isLessThanOrEqualTo(new BigDecimal("0.00501"));
        assertThat(off.abs().doubleValue()).isLessThanOrEqualTo(25.4 / parts / 2 + 1e-9);
        assertThat(inches(text)
                        .multiply(BigDecimal.valueOf(parts))
                        .stripTrailingZeros()
                        .scale())
                .isLessThanOrEqualTo(0);
    }

    // One length is told with one value: up to a thousandth, a millionth of it forgiven.
    private static BigDecimal sawn(JsonNode type) {
        return new BigDecimal(type.get("cutMm").asText())
                .subtract(new BigDecimal("1e-9"))
                .setScale(3, RoundingMode.CEILING);
    }

    private static void same(String printed, JsonNode number) {
        assertThat(Double.parseDouble(printed)).isCloseTo(number.asDouble(), within(0.000501));
    }

    // Such as 15-21/32: exact in binary parts of an inch.
    private static BigDecimal inches(String text) {
        BigDecimal sum = BigDecimal.ZERO;
        for (String part : text.strip().split("-")) {
            String[] ratio = part.split("/");
            sum = sum.add(new BigDecimal(ratio[0]).divide(new BigDecimal(ratio.length > 1 ? ratio[1] : "1")));
        }
        return sum;
    }
}
