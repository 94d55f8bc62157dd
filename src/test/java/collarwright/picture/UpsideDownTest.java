package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.DomeJobs;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pictures of hubs whose collars go on upside down, held against the nodes in space. */
class UpsideDownTest {

    private static final double WIDTH = 88;

    private final Plan plan;
    private final Dome dome;

    UpsideDownTest() throws IOException {
        plan = Planner.plan(DomeJobs.read(DomeJobs.named("shared-jobs", "mirrored")), List.of());
        dome = plan.hubs().dome();
    }

    private Map<Integer, Vec3> neighbours(int node) {
        Map<Integer, Vec3> found = new LinkedHashMap<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = plan.hubs().nodeAtA(m);
            int b = plan.hubs().nodeAtB(m);
            if (a == node) {
                found.put(plan.holeAtA(m), dome.node(b).minus(dome.node(a)));
            } else if (b == node) {
                found.put(plan.holeAtB(m), dome.node(a).minus(dome.node(b)));
            }
        }
        return found;
    }

    // The eye looks along -axis; its right hand is forward × up.
    private static double seen(Vec3 axis, Vec3 first, Vec3 direction) {
        Vec3 up = first.minus(axis.times(first.dot(axis))).unit();
        Vec3 right = axis.times(-1).cross(up);
        return Math.atan2(direction.dot(right), direction.dot(up));
    }

    @Test
    void hub_upsideDown_showsHolesWhereAnEyeOutsideSeesTheNeighbours() {
        assertThat(plan.book().flips()).isTrue();
        for (int type = 0; type < plan.hubs().types().size(); type++) {
            int node = plan.hubs().types().get(type).firstNode();
            Map<Integer, Vec3> neighbours = neighbours(node);
            HubPicture picture = new HubPicture(plan, type, WIDTH);
            List<Written> texts = Bitmaps.paint(picture, Bitmaps.blank(picture));
            neighbours.forEach((hole, direction) -> {
                Written text = texts.stream()
                        .filter(t -> t.bold() && t.text().equals(Integer.toString(hole)))
                        .findFirst()
                        .orElseThrow();
                double x = text.x() + text.width() / 2 - WIDTH / 2;
                double y = WIDTH / 2 - 2 - (text.top() + text.baseline()) / 2;
                double off = Math.atan2(x, y) - seen(dome.axis(node), neighbours.get(1), direction);
                assertThat(Math.abs(Math.IEEEremainder(off, 2 * Math.PI))).isLessThan(1e-6);
            });
            boolean flipped = plan.flipped(node);
            assertThat(picture.describe().contains("upside down (TOP inside)")).isEqualTo(flipped);
            assertThat(texts.stream().anyMatch(t -> t.text().equals("TOP inside")))
                    .isEqualTo(flipped);
        }
    }

    @Test
    void tiers_upsideDown_sayWhatADoubleRingIs() {
        assertThat(new TierPicture(plan, 180).describe()).contains("A double ring: the collar goes on upside down");
        assertThat(new TierPicture(TrialPlans.windbreak(), 180).describe()).doesNotContain("double ring");
    }
}
