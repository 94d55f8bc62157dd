package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.TrialPlans;
import collarwright.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Start speeds on paper. The windbreak's saws turn 60 to 600 rpm, and 30 m/min at the edge of its 43 mm saw are
 * 30 000 mm in a minute, round after round of 135.1 mm: 222 rpm (by hand).
 */
class CutterTablesTest {

    private static String speedOf43(Plan plan) {
        List<List<Cell>> rows = new CutterTables(plan).grid().rows();
        return rows.stream()
                .filter(r -> r.get(0).text().startsWith("43 mm"))
                .findFirst()
                .orElseThrow()
                .get(4)
                .text();
    }

    @Test
    void speed_thatTheSpindleHas_isThatOfTheCuttingData() {
        assertThat(speedOf43(TrialPlans.turning(100, 3000))).isEqualTo("222 rpm");
    }

    @Test
    void speed_outsideTheSpindle_isTheNearestItHas() {
        assertThat(speedOf43(TrialPlans.turning(250, 3000))).isEqualTo("250 rpm");
        assertThat(speedOf43(TrialPlans.turning(10, 180))).isEqualTo("180 rpm");
    }

    @Test
    void speed_thatWouldBurnTheCutterOrStallIt_isNotGiven() {
        assertThat(speedOf43(TrialPlans.turning(8000, 24000)))
                .doesNotContain("8000")
                .contains("the spindle")
                .contains("too fast");
        assertThat(speedOf43(TrialPlans.turning(10, 40)))
                .contains("above 60 rpm")
                .contains("too slow");
    }
}
