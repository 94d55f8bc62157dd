package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CuttingPlanner;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StickLayout;
import collarwright.cutting.StockLength;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sums by hand: ten pieces and ten cuts of 3 mm on a stick of 6 m. */
class TightLayoutTest {

    private static StickLayout ten(double length) {
        CuttingTask task = new CuttingTask(
                List.of(new CutPiece("SA", length, 10)),
                List.of(StockLength.unlimited("6 m", 6000)),
                new SawSettings(3, 0, 0, 0));
        return CuttingPlanner.plan(task).layouts().get(0);
    }

    @Test
    void layoutWithRoomForEachCut_needsNoWords() {
        assertThat(SawPaper.tight(ten(596.9))).isEmpty();
    }

    @Test
    void layoutWithLessThanATenthForEachCut_isTold() {
        // 6000 − 10 × (596.95 + 3) = 0.5
        assertThat(SawPaper.tight(ten(596.95)).orElseThrow())
                .startsWith("Tight: 0.5 mm to spare over 10 cuts. A stick that is shorter by more, or a blade that cuts"
                        + " 0.05 mm wider, loses the last piece.");
    }

    @Test
    void lastCutThatEndsWithTheStick_isWhatThereIsToSpare() {
        // 6000 − 10 × 597.25 − 9 × 3 = 0.5, which the last cut takes
        assertThat(SawPaper.tight(ten(597.25)).orElseThrow()).startsWith("Tight: 0.5 mm to spare over 9 cuts.");
    }
}
