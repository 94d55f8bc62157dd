package collarwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Fillings of one stick beside all fillings there are. */
class KnapsackTest {

    private static Model model(List<Double> lengths, int count, double kerf) {
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            pieces.add(new CutPiece("P" + i, lengths.get(i), count));
        }
        return Model.of(
                new CuttingTask(pieces, List.of(StockLength.unlimited("stick", 6000)), new SawSettings(kerf, 0, 0, 0)));
    }

    private static long best(Model model, long[] values, int kind, long room) {
        if (kind == values.length) {
            return 0;
        }
        long most = 0;
        for (int take = 0; take <= model.demand[kind] && take * model.weight[kind] <= room; take++) {
            long rest = best(model, values, kind + 1, room - take * model.weight[kind]);
            most = StrictMath.max(most, take * values[kind] + rest);
        }
        return most;
    }

    @Test
    void filling_isTheBestOfAll_andItsBoundTheSame() {
        Seeds.each(400, draw -> {
            // Near lengths as a dome has them, or short ones, below a cell of the bound, beside long ones.
            boolean near = draw.coin();
            double kerf = near ? 3 : 0;
            List<Double> lengths = new ArrayList<>();
            for (int i = draw.whole(2, 8); i > 0; i--) {
                lengths.add(
                        near ? draw.between(1100, 1400) : draw.coin() ? draw.between(300, 1200) : draw.between(0.3, 2));
            }
            Model model = model(lengths, draw.whole(1, 4), kerf);
            long[] values = new long[model.kinds()];
            for (int i = 0; i < values.length; i++) {
                values[i] = (long) (model.weight[i] * draw.between(0.98, 1.02));
            }
            Knapsack.Filling filling = new Knapsack(model).fill(values, model.demand, model.capacity[0]);
            assertThat(filling.value())
                    .isEqualTo(best(model, values, 0, model.capacity[0]))
                    .isEqualTo(filling.bound());
            long weight = 0;
            long value = 0;
            for (int i = 0; i < values.length; i++) {
                assertThat(filling.counts()[i]).isBetween(0, model.demand[i]);
                weight += filling.counts()[i] * model.weight[i];
                value += filling.counts()[i] * values[i];
            }
            assertThat(weight).isLessThanOrEqualTo(model.capacity[0]);
            assertThat(value).isEqualTo(filling.value());
        });
    }

    // 72 lengths between 0.96 m and 1.41 m, some 4,000 pieces, three stocks: without the bound by cells such a plan was
    // cut
    // off 1.8 % above its bound.
    @Test
    void plan_ofManyNearLengths_costsProvenLeast() {
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 72; i++) {
            double length = 960.97 + 445.5 * StrictMath.sqrt(i / 71.0);
            pieces.add(new CutPiece("P" + i, StrictMath.rint(length * 1000) / 1000, 30 + i % 3 * 30));
        }
        List<StockLength> stocks = List.of(
                StockLength.unlimited("3 m", 3000),
                StockLength.unlimited("5 m", 5000),
                StockLength.unlimited("6 m", 6000));
        CutPlan plan = CuttingPlanner.plan(new CuttingTask(pieces, stocks, new SawSettings(3, 0, 0, 0)));
        assertThat(plan.proof().gap()).isZero();
    }
}
