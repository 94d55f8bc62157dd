package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.job.CsvForm;
import collarwright.job.CuttingSettings;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Reads the tables of sticks and of offcuts back, and cuts by them. */
class SticksCsvTest {

    private static final SawSettings SAW = new SawSettings(3.2, 10, 5, 0);

    private static Job job(double merge, List<CuttingSettings.Offcut> offcuts) {
        Job job = PackJobs.metric();
        StockLength six = new StockLength("6 m", 6000, Optional.of(12.5), Optional.empty(), false);
        StockLength three = new StockLength("3 m", 3000, Optional.of(6.9), Optional.of(8), false);
        return job.with(new CuttingSettings(SAW, merge, 300, List.of(six, three), List.of(), List.of(), offcuts));
    }

    private static List<CuttingSettings.Offcut> offcuts(Job job) {
        String strut = job.strut().stock().name();
        return List.of(
                new CuttingSettings.Offcut("R-1", strut, 1850),
                new CuttingSettings.Offcut("R-2", strut, 320),
                new CuttingSettings.Offcut("R-3", job.hub().ring().name(), 500));
    }

    private static List<Map<String, String>> rows(Table table) {
        return CsvRecords.rows(new String(table.csv(CsvForm.USUAL), StandardCharsets.UTF_8));
    }

    @Test
    void sticks_readBack_giveExactlyThePartsOfThePlan_andAddUp() throws IOException {
        Job job = job(0, offcuts(PackJobs.metric()));
        Plan plan = Planner.plan(job, List.of());
        StockWork work = StockWork.of(plan);
        assertThat(work.needs().get(0).plan().orElseThrow().proof().proven()).isTrue();

        Map<String, BigDecimal> sums = new HashMap<>();
        Map<String, BigDecimal> sticks = new HashMap<>();
        Map<String, Integer> made = new HashMap<>();
        Map<String, Double> lengths = new HashMap<>();
        for (Map<String, String> row : rows(SticksCsv.sticks(plan, work))) {
            String layout = row.get("layout");
            sums.merge(layout, new BigDecimal(row.get("together (mm)")), BigDecimal::add);
            sticks.put(layout, new BigDecimal(row.get("stick length (mm)")));
            if (!row.get("each (mm)").isEmpty()) {
                int count = Integer.parseInt(row.get("how many")) * Integer.parseInt(row.get("sticks cut like this"));
                made.merge(row.get("what"), count, Integer::sum);
                lengths.put(row.get("what"), Double.parseDouble(row.get("each (mm)")));
            }
        }

        assertThat(sums).isNotEmpty();
        sums.forEach((layout, sum) -> assertThat(sum).isEqualByComparingTo(sticks.get(layout)));
        JsonNode json = new ObjectMapper().readTree(PlanJson.write(plan, List.of()));
        for (JsonNode type : json.get("strutTypes")) {
            String id = type.get("id").asText();
            assertThat(made.get(id))
                    .isEqualTo(job.order().made(type.get("count").asInt()));
            assertThat(lengths.get(id) - type.get("cutMm").asDouble()).isBetween(-1e-9, 0.001);
        }
        assertThat(made.get("ring")).isEqualTo(json.at("/order/rings").asInt());
        int collars = made.entrySet().stream()
                .filter(e -> e.getKey().startsWith("C"))
                .mapToInt(Map.Entry::getValue)
                .sum();
        assertThat(collars).isEqualTo(json.at("/order/collars").asInt());
    }

    @Test
    void offcuts_goOnToTheNextJob_withTheirNames() {
        Job job = job(0, offcuts(PackJobs.metric()));
        StockWork work = StockWork.of(Planner.plan(job, List.of()));

        List<CuttingSettings.Offcut> next = work.offcuts();
        assertThat(next.stream().map(CuttingSettings.Offcut::id))
                .doesNotHaveDuplicates()
                .contains("R-2");
        assertThat(next)
                .contains(offcuts(job).get(1))
                .doesNotContain(offcuts(job).get(0));
        assertThat(next).allSatisfy(o -> assertThat(o.length()).isGreaterThanOrEqualTo(300));
        assertThat(next.stream().filter(o -> !o.id().startsWith("R-")))
                .allSatisfy(o -> assertThat(o.id()).startsWith(job.revision() + "-"));
        List<Map<String, String>> rows = rows(SticksCsv.offcuts(work));
        assertThat(rows).hasSameSizeAs(next);
        assertThat(rows.get(0)).containsKeys("offcut", "stock", "length (mm)", "check");

        // What is left of one job costs the next one nothing.
        StockWork after = StockWork.of(Planner.plan(job(0, next), List.of()));
        double before = work.needs().get(0).plan().orElseThrow().proof().cost();
        assertThat(after.needs().get(0).plan().orElseThrow().proof().cost()).isLessThanOrEqualTo(before + 12.5);
    }

    @Test
    void merged_lengthsThatDifferLittle_haveOneStop() {
        Plan exact = Planner.plan(job(0, List.of()), List.of());
        double most =
                exact.struts().types().stream().mapToDouble(t -> t.cut()).max().orElseThrow();
        double least =
                exact.struts().types().stream().mapToDouble(t -> t.cut()).min().orElseThrow();
        StockWork merged = StockWork.of(Planner.plan(job(most - least, List.of()), List.of()));

        assertThat(merged.needs().get(0).plan().orElseThrow().task().pieces())
                .allSatisfy(p -> assertThat(p.length()).isEqualTo((most + least) / 2));
    }

    @Test
    void stockWithoutLengths_isNotPlanned_andStillNeeded() {
        Job job = PackJobs.inch();
        StockWork work = StockWork.of(Planner.plan(job, List.of()));

        StockNeed strut = work.needs().get(0);
        assertThat(strut.plan().isPresent()).isEqualTo(!strut.stock().lengths().isEmpty());
        assertThat(work.needs().get(1).plan()).isEmpty();
        assertThat(work.findings()).noneMatch(f -> f.code() == Code.STOCK_USED_UP);
        assertThat(strut.netLength()).isPositive();
    }
}
