package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.assembly.RaisingStep.Way;
import collarwright.testing.DomeJobs;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Walking through the lines by hand, strut by strut, fills every hole of the frame once. */
class RaisingLineTest {

    private final Plan plan = Planner.plan(DomeJobs.read(DomeJobs.named("shared-jobs", "meeting-shared")), List.of());
    private final List<RaisingLine> lines =
            RaisingLine.all(plan, plan.assembly().orElseThrow());

    RaisingLineTest() throws IOException {}

    @Test
    void lines_fillEveryHoleOnce_andSayWhatIsStillEmpty() {
        Map<Integer, TreeSet<Integer>> filled = new HashMap<>();
        int order = 0;
        for (RaisingLine line : lines) {
            assertThat(line.order()).isEqualTo(++order);
            for (RaisingLine.Seat seat : List.of(line.at(), line.other())) {
                TreeSet<Integer> holes = filled.computeIfAbsent(seat.node(), n -> new TreeSet<>());
                assertThat(holes.add(seat.hole())).isTrue();
                TreeSet<Integer> all = new TreeSet<>(holes);
                all.addAll(seat.empty());
                int type = plan.hubs().typeOf(seat.node());
                assertThat(all)
                        .hasSize(plan.hubs().types().get(type).struts().size())
                        .hasSize(holes.size() + seat.empty().size())
                        .allSatisfy(
                                h -> assertThat(plan.placement(type).holes()).contains(h - 1));
            }
        }
        assertThat(order).isEqualTo(plan.hubs().dome().memberCount());
        assertThat(lines.get(lines.size() - 1).at().empty()).isEmpty();
    }

    @Test
    void pushedStruts_goBetweenHubsThatStand() {
        TreeSet<Integer> stand = new TreeSet<>(plan.hubs().dome().feet());
        for (RaisingLine line : lines) {
            if (line.step().way() != Way.JOIN) {
                assertThat(stand).contains(line.at().node(), line.other().node());
                assertThat(line.joins()).isFalse();
            } else {
                assertThat(line.way()).isEqualTo("comes with it");
            }
            stand.add(line.at().node());
            stand.add(line.other().node());
        }
        assertThat(stand).hasSize(plan.hubs().dome().nodeCount());
    }

    @Test
    void orders_areThoseOfTheLines() {
        List<Integer> orders = RaisingLine.orders(plan, plan.assembly().orElseThrow());
        assertThat(new TreeSet<>(orders)).hasSize(lines.size()).contains(1, lines.size());
        lines.forEach(l -> assertThat(orders.get(l.step().member())).isEqualTo(l.order()));
    }
}
