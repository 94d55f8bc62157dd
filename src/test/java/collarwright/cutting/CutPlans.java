package collarwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Checks of plans by adding up, and jobs for them. */
final class CutPlans {

    private CutPlans() {}

    /** Cuts by the layouts and compares with what was asked. */
    static void sound(CutPlan plan) {
        CuttingTask task = plan.task();
        int[] got = new int[task.pieces().size()];
        for (StickLayout layout : plan.layouts()) {
            double sum = task.saw().trimFirst();
            int pieces = 0;
            for (StickLayout.Portion portion : layout.portions()) {
                got[portion.piece()] += layout.runs() * portion.count();
                sum += portion.count() * task.pieces().get(portion.piece()).length();
                pieces += portion.count();
            }
            double rest =
                    layout.stock().length() - sum - (pieces - 1) * task.saw().kerf();
            double held = StrictMath.max(task.saw().grip(), task.saw().trimLast());
            assertThat(rest)
                    .isGreaterThanOrEqualTo((task.saw().grip() > 0 ? task.saw().kerf() : 0) + held - 1e-6);
            StickLayout.Sums sums = layout.sums();
            assertThat(sums.trim() + sums.pieces() + sums.kerf() + sums.remainder())
                    .isCloseTo(sums.length(), org.assertj.core.data.Offset.offset(1e-9));
        }
        for (int i = 0; i < got.length; i++) {
            int uncut = plan.uncut().isEmpty() ? 0 : plan.uncut().get(i);
            assertThat(got[i] + uncut).isEqualTo(task.pieces().get(i).count());
        }
        for (StockLength stock : task.stocks()) {
            assertThat(plan.taken(stock)).isLessThanOrEqualTo(stock.atHand().orElse(Integer.MAX_VALUE));
        }
    }

    /** Pieces of a shop: cut lengths of 0.5 to 1.8 m, as many as told in all. */
    static List<CutPiece> shop(Seeds draw, int kinds, int pieces) {
        List<CutPiece> all = new ArrayList<>();
        int left = pieces;
        for (int i = 0; i < kinds; i++) {
            int others = kinds - 1 - i;
            int count = others == 0 ? left : draw.whole(1, StrictMath.max(1, 2 * left / (kinds - i)));
            count = StrictMath.min(count, left - others);
            left -= count;
            all.add(new CutPiece("P" + i, draw.between(500, 1800), count));
        }
        return all;
    }

    /** Three pieces of 250 to 500 for each bin of 1000, as {@code length:count}. */
    static String triplets(int bins, int seed) {
        Seeds draw = Seeds.of(seed);
        Map<Integer, Integer> counts = new TreeMap<>();
        for (int bin = 0; bin < bins; bin++) {
            int a = draw.whole(380, 490);
            int b = draw.whole(250, (1000 - a) / 2);
            for (int piece : new int[] {a, b, 1000 - a - b}) {
                counts.merge(piece, 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .map(e -> e.getKey() + ":" + e.getValue())
                .collect(Collectors.joining(" "));
    }
}
