package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.SawSettings;
import collarwright.geometry.Interval;
import collarwright.job.CsvForm;
import collarwright.job.CuttingSettings;
import collarwright.job.Job;
import collarwright.job.PriceList;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.BillOfMaterials.Kind;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.StockWork;
import collarwright.stock.RoundStock;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is bought, what it weighs and costs. */
class BuyTest {

    private static Job job(List<PriceList.Price> prices) {
        return PackJobs.metric()
                .with(new CuttingSettings(
                        SawSettings.USUAL, 0, 500, List.of(), List.of(), List.of(), List.of(), new PriceList(prices)));
    }

    private static List<PriceList.Price> prices(Job job) {
        String strut = job.strut().stock().name();
        return List.of(
                new PriceList.Price(strut, PriceList.Measure.LENGTH, 1000, "m", 2.5),
                new PriceList.Price(job.hub().ring().name(), PriceList.Measure.KILOGRAM, 1, "kg", 3),
                new PriceList.Price("tie", PriceList.Measure.PACK, 100, "pack of 100", 4.2));
    }

    // ASME B36.10M, table of dimensions and masses, from memory: NPS 1 and 2, schedule 40, plain end, kg/m as printed.
    @ParameterizedTest
    @CsvSource({"33.4, 3.38, 2.50", "60.3, 3.91, 5.44"})
    void weight_ofSteelPipe_isThatOfTheTable(double od, double wall, double kgPerMetre) {
        RoundStock pipe = new RoundStock(
                "pipe",
                "pipe",
                PackJobs.STEEL,
                Interval.of(od),
                Optional.of(Interval.of(wall)),
                false,
                false,
                0,
                List.of(),
                "ASME B36.10M");

        assertThat(pipe.kg(1000)).isCloseTo(kgPerMetre, Offset.offset(0.005));
    }

    @Test
    void bill_hasEverySeenPart_andItsCostAddsUp() throws IOException {
        Job job = job(prices(PackJobs.metric()));
        Plan plan = Planner.plan(job, List.of());
        StockWork work = StockWork.of(plan);
        BillOfMaterials bill = BillOfMaterials.of(plan, work);
        List<Map<String, String>> rows =
                CsvRecords.rows(new String(BuyCsv.print(plan, bill).csv(CsvForm.USUAL), StandardCharsets.UTF_8));

        double cost = 0;
        for (Map<String, String> row : rows) {
            cost += row.get("cost of all").isEmpty() ? 0 : Double.parseDouble(row.get("cost of all"));
        }
        assertThat(bill.cost().orElseThrow()).isCloseTo(cost, Offset.offset(1e-9));
        JsonNode json = new ObjectMapper().readTree(PlanJson.write(plan, List.of()));
        int ties = json.at("/order/ties").asInt();
        assertThat(count(rows, "fastener")).isEqualTo(ties);
        assertThat(count(rows, "strut")).isEqualTo(json.at("/order/struts").asInt());
        assertThat(count(rows, "collar")).isEqualTo(json.at("/order/collars").asInt());
        assertThat(count(rows, "ring")).isEqualTo(json.at("/order/rings").asInt());
        double sticks = 0;
        for (JsonNode stick : json.at("/stock/0/cutting/sticks")) {
            sticks += stick.get("taken").asInt() * stick.get("lengthMm").asDouble();
        }
        assertThat(json.at("/stock/0/cutting/proof/costIs").asText()).isEqualTo("price");
        assertThat(json.at("/stock/0/cutting/proof/cost").asDouble())
                .isCloseTo(sticks / 1000 * 2.5, Offset.offset(1e-6));
        double packs = StrictMath.ceil(ties / 100.0) * 4.2;
        assertThat(bill.rows().stream()
                        .filter(r -> r.kind() == Kind.FASTENER)
                        .findFirst()
                        .orElseThrow()
                        .cost()
                        .orElseThrow())
                .isCloseTo(packs, Offset.offset(0.005));
        assertThat(json.at("/buy/cost").asDouble()).isEqualTo(bill.cost().orElseThrow());
        assertThat(bill.unpriced())
                .allSatisfy(
                        r -> assertThat(r.name()).isEqualTo(job.hub().collar().name()));
    }

    // 1.015 and 2.675 have no exact binary form and lie below it; worked by hand: half a hundredth goes up.
    @ParameterizedTest
    @CsvSource({"1.015, 1.02", "2.675, 2.68", "1.005, 1.01", "0.004, 0.00"})
    void cost_atHalfAHundredth_goesUp(double price, double expected) {
        Job job = job(List.of(new PriceList.Price("tie", PriceList.Measure.PACK, 100000, "pack of 100000", price)));
        Plan plan = Planner.plan(job, List.of());

        assertThat(BillOfMaterials.of(plan, StockWork.of(plan)).cost()).contains(expected);
    }

    @Test
    void plugs_byTheKilogram_haveNoPrice() {
        PriceList list = new PriceList(List.of(new PriceList.Price("plug", PriceList.Measure.KILOGRAM, 1, "kg", 5)));

        assertThat(list.byLength("plug", 1000)).isEmpty();
    }

    @Test
    void bill_withoutPrices_hasNoCost_andStillWeighs() {
        Plan plan = Planner.plan(job(List.of()), List.of());
        BillOfMaterials bill = BillOfMaterials.of(plan, StockWork.of(plan));

        assertThat(bill.cost()).isEmpty();
        assertThat(bill.boughtKg()).isGreaterThan(bill.madeKg()).isPositive();
        assertThat(bill.longestBought()).isGreaterThan(bill.longestMade());
    }

    private static int count(List<Map<String, String>> rows, String kind) {
        return rows.stream()
                .filter(r -> r.get("kind").equals(kind))
                .mapToInt(r -> Integer.parseInt(r.get("how many")))
                .sum();
    }
}
