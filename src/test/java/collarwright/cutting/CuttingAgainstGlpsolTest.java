package collarwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.Glpsol;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Small drawn jobs against the integer solver of the GNU Linear Programming Kit (Debian package glpk-utils), on another model
 * than ours: which piece goes on which single stick.
 */
@Tag("oracle")
@NeedsChecker(Checker.GLPSOL)
class CuttingAgainstGlpsolTest {

    private static CuttingTask drawn(Seeds draw) {
        List<CutPiece> pieces = new ArrayList<>();
        int kinds = draw.whole(2, 4);
        for (int i = 0; i < kinds; i++) {
            pieces.add(new CutPiece("P" + i, draw.whole(400, 1900), draw.whole(1, 3)));
        }
        boolean priced = draw.coin();
        List<StockLength> stocks = new ArrayList<>();
        for (int i = draw.whole(0, 3); i > 0; i--) {
            stocks.add(StockLength.offcut("R" + i, draw.whole(500, 2500)));
        }
        int first = draw.whole(2000, 3500);
        for (int length : draw.coin() ? List.of(first) : List.of(first, first + draw.whole(300, 1500))) {
            Optional<Double> price = priced ? Optional.of(draw.whole(100, 900) / 100.0) : Optional.empty();
            Optional<Integer> atHand =
                    draw.whole(0, 3) == 0 && length != first ? Optional.of(draw.whole(1, 2)) : Optional.empty();
            stocks.add(new StockLength(length + " mm", length, price, atHand, false));
        }
        int grip = draw.whole(0, 3) == 0 ? 60 : 0;
        return new CuttingTask(
                pieces, stocks, new SawSettings(draw.whole(0, 4), draw.coin() ? 5 : 0, draw.coin() ? 12 : 0, grip));
    }

    /** One variable for each single stick and each piece on it; cost and, behind it, the number of new sticks. */
    private static String model(CuttingTask task) {
        SawSettings saw = task.saw();
        StringBuilder cost = new StringBuilder();
        StringBuilder rules = new StringBuilder();
        StringBuilder whole = new StringBuilder();
        StringBuilder limits = new StringBuilder();
        List<StringBuilder> made = new ArrayList<>();
        task.pieces().forEach(p -> made.add(new StringBuilder()));
        int pieces = task.pieces().stream().mapToInt(CutPiece::count).sum();
        int sticks = 0;
        for (StockLength stock : task.stocks()) {
            int most = StrictMath.min(stock.atHand().orElse(pieces), pieces);
            for (int k = 0; k < most; k++, sticks++) {
                double each = stock.offcut() ? 0 : stock.price().orElse(stock.length()) + 0.0001;
                cost.append(" + ").append(each).append(" y").append(sticks);
                // The last cut needs no room behind it, unless the saw has to hold what is left.
                double room = stock.length() - saw.trimFirst();
                room += saw.grip() > 0 ? -StrictMath.max(saw.grip(), saw.trimLast()) : saw.kerf() - saw.trimLast();
                rules.append(" s").append(sticks).append(':');
                for (int i = 0; i < task.pieces().size(); i++) {
                    String x = "x" + i + "_" + sticks;
                    rules.append(" + ")
                            .append(task.pieces().get(i).length() + saw.kerf())
                            .append(' ')
                            .append(x);
                    made.get(i).append(" + ").append(x);
                    whole.append(' ').append(x).append('\n');
                }
                rules.append(" - ").append(room).append(" y").append(sticks).append(" <= 0\n");
                if (k > 0) {
                    rules.append(" o" + sticks + ": y" + (sticks - 1) + " - y" + sticks + " >= 0\n");
                }
                limits.append(" 0 <= y").append(sticks).append(" <= 1\n");
                whole.append(" y").append(sticks).append('\n');
            }
        }
        for (int i = 0; i < made.size(); i++) {
            rules.append(
                    " d" + i + ":" + made.get(i) + " >= " + task.pieces().get(i).count() + "\n");
        }
        return "Minimize\n obj:" + cost + "\nSubject To\n" + rules + "Bounds\n" + limits + "General\n" + whole
                + "End\n";
    }

    @Test
    void smallJobs_costAndSticks_areThoseOfTheSolver() {
        Seeds.each(40, draw -> {
            CuttingTask task = drawn(draw);
            CutPlan plan = CuttingPlanner.plan(task);
            CutPlans.sound(plan);
            if (plan.uncut().isEmpty()) {
                double optimum = Glpsol.optimum(model(task), true).orElseThrow();
                assertThat(plan.proof().proven()).isTrue();
                double ours = plan.proof().cost() + 0.0001 * plan.newSticks();
                assertThat(ours).isCloseTo(optimum, within(1e-6 * optimum + 1e-7));
            } else if (task.pieces().stream().allMatch(p -> p.length() <= task.longestPiece())) {
                assertThat(Glpsol.optimum(model(task), true)).isEmpty();
            }
        });
    }
}
