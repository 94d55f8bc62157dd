package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import collarwright.job.CuttingSettings;
import collarwright.job.Job;
import collarwright.paper.SawPaper;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.StockWork;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Reads the papers of the saw as a person does, and cuts by them. */
class SawPaperTest {

    private static final Pattern LAYOUT =
            Pattern.compile("Layout (U[A-Z]+): (?:(\\d+) sticks? of|offcut \\S+,) ([0-9.]+) mm");
    private static final Pattern LINE =
            Pattern.compile("(?<what>the stick|saw cuts|rest|trim of the first end|[A-Za-z]+) (?<count>\\d+)"
                    + " (?<each>\\d+\\.\\d{3}) (?<mm>\\d+\\.\\d{3}) (?<in>\\d+\\.\\d{4})");
    private static final Pattern STOP = Pattern.compile("^(\\d+) (S[A-Z]) (\\d+\\.\\d{3}) (\\d+\\.\\d{4}) .*");

    private static Job job() {
        Job job = PackJobs.metric();
        StockLength six = new StockLength("6 m", 6000, Optional.of(12.5), Optional.empty(), false);
        StockLength three = new StockLength("3 m", 3000, Optional.of(6.9), Optional.of(8), false);
        List<CuttingSettings.Offcut> offcuts = List.of(
                new CuttingSettings.Offcut("R-1", job.strut().stock().name(), 1850),
                new CuttingSettings.Offcut("R-2", job.strut().stock().name(), 320));
        SawSettings saw = new SawSettings(3.2, 10, 5, 0);
        return job.with(new CuttingSettings(saw, 0, 300, List.of(six, three), List.of(), List.of(), offcuts));
    }

    private static String text(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }

    private record Read(Map<String, Integer> made, Map<String, Double> lengths, int layouts) {}

    private static Read cut(String text) {
        Map<String, Integer> made = new HashMap<>();
        Map<String, Double> lengths = new LinkedHashMap<>();
        BigDecimal mm = BigDecimal.ZERO;
        BigDecimal in = BigDecimal.ZERO;
        int runs = 0;
        int layouts = 0;
        for (String line : text.lines().map(String::strip).toList()) {
            Matcher head = LAYOUT.matcher(line);
            if (head.matches()) {
                runs = head.group(2) == null ? 1 : Integer.parseInt(head.group(2));
                mm = BigDecimal.ZERO;
                in = BigDecimal.ZERO;
                layouts++;
                continue;
            }
            Matcher row = LINE.matcher(line);
            if (runs == 0 || !row.matches()) {
                continue;
            }
            String what = row.group("what");
            if (what.equals("the stick")) {
                assertThat(mm).as(line).isEqualByComparingTo(row.group("mm"));
                assertThat(in).as(line).isEqualByComparingTo(row.group("in"));
                continue;
            }
            mm = mm.add(new BigDecimal(row.group("mm")));
            in = in.add(new BigDecimal(row.group("in")));
            assertThat(new BigDecimal(row.group("in")).doubleValue() * 25.4)
                    .isCloseTo(
                            new BigDecimal(row.group("mm")).doubleValue(),
                            org.assertj.core.data.Offset.offset(25.4e-4));
            if (!List.of("saw cuts", "rest", "trim of the first end").contains(what)) {
                int count = Integer.parseInt(row.group("count"));
                made.merge(what, runs * count, Integer::sum);
                lengths.put(what, Double.parseDouble(row.group("each")));
                assertThat(new BigDecimal(row.group("each")).multiply(BigDecimal.valueOf(count)))
                        .isEqualByComparingTo(row.group("mm"));
            }
        }
        return new Read(made, lengths, layouts);
    }

    @Test
    void sticks_readBackFromPaper_giveExactlyThePartsOfThePlan_andAddUp() throws IOException {
        Plan plan = Planner.plan(job(), List.of());
        StockWork work = StockWork.of(plan);

        Read read = cut(text(SawPaper.print(plan, work).orElseThrow()));

        assertThat(read.layouts)
                .isEqualTo(work.layoutNames().stream().mapToInt(List::size).sum())
                .isGreaterThan(3);
        JsonNode json = new ObjectMapper().readTree(PlanJson.write(plan, List.of()));
        for (JsonNode type : json.get("strutTypes")) {
            String id = type.get("id").asText();
            assertThat(read.made.get(id))
                    .isEqualTo(plan.job().order().made(type.get("count").asInt()));
            assertThat(read.lengths.get(id) - type.get("cutMm").asDouble()).isBetween(-1e-9, 0.001);
        }
        assertThat(read.made.get("ring")).isEqualTo(json.at("/order/rings").asInt());
    }

    @Test
    void stops_areSetOnceEach_longToShort_withSignedErrors() throws IOException {
        Plan plan = Planner.plan(job(), List.of());

        List<String> rows = text(SawPaper.print(plan, StockWork.of(plan)).orElseThrow())
                .lines()
                .filter(l -> STOP.matcher(l).matches())
                .toList();

        assertThat(rows).hasSize(plan.struts().types().size());
        double before = Double.POSITIVE_INFINITY;
        for (String row : rows) {
            Matcher stop = STOP.matcher(row);
            assertThat(stop.matches()).isTrue();
            double mm = Double.parseDouble(stop.group(3));
            assertThat(mm).isLessThan(before);
            assertThat(Double.parseDouble(stop.group(4)) * 25.4)
                    .isCloseTo(mm, org.assertj.core.data.Offset.offset(25.4 * 0.5e-4 + 1e-9));
            before = mm;
        }
        assertThat(text(SawPaper.print(plan, StockWork.of(plan)).orElseThrow()))
                .contains("nearest", "1/16", "1/32", "Gang check", "PVC-U: how much it grows by heat is not known");
    }

    @Test
    void paper_sameJob_sameBytes_andNoneWithoutSticks() {
        Plan plan = Planner.plan(job(), List.of());

        assertThat(SawPaper.print(plan, StockWork.of(plan)).orElseThrow())
                .isEqualTo(SawPaper.print(plan, StockWork.of(plan)).orElseThrow());
        assertThat(SawPaper.print(plan, StockWork.NONE)).isEmpty();
    }
}
