package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.hub.HubStrut;
import collarwright.job.Job;
import collarwright.testing.Jobs;
import org.junit.jupiter.api.Test;

class RingSeatTest {
    // End faces as points in space: the strut through the middle of its hole, from its node (on the hub's axis)
    // outward.
    @Test
    void of_everyHub_reachesFromTheLowestToTheHighestPointOfItsEnds() {
        Job job = Jobs.windbreak().job();
        Plan plan = Planner.plan(job, java.util.List.of());
        double mid = job.hub().body().midRadius();
        for (int i = 0; i < plan.hubs().types().size(); i++) {
            HubPart part = HubPart.all(plan.hubs(), plan.struts(), plan.book(), job.hub())
                    .get(i);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (HubStrut strut : part.type().struts()) {
                double lean = strut.axialAngle();
                Vec3 along = new Vec3(StrictMath.cos(lean), 0, -StrictMath.sin(lean));
                Vec3 hole = new Vec3(mid, 0, 0);
                Vec3 node = hole.minus(along.times(mid / along.x()));
                double setback =
                        plan.struts().types().get(strut.strutType()).a().setback();
                Vec3 up = new Vec3(StrictMath.sin(lean), 0, StrictMath.cos(lean));
                for (int round = 0; round < 360; round += 5) {
                    Vec3 rim = node.plus(along.times(setback))
                            .plus(up.times(20.1 * StrictMath.cos(StrictMath.toRadians(round))));
                    low = StrictMath.min(low, rim.z());
                    high = StrictMath.max(high, rim.z());
                }
            }
            RingSeat seat = RingSeat.of(part, 40.2);
            assertThat(seat.low()).isCloseTo(low, within(1e-9));
            assertThat(seat.high()).isCloseTo(high, within(1e-9));
            assertThat(seat.width()).isCloseTo(high - low, within(1e-9));
            assertThat(seat.middle()).isCloseTo((high + low) / 2, within(1e-9));
            assertThat(seat.width()).as("a ring covers at least a strut end").isGreaterThan(39);
            assertThat(HubSeat.of(plan, i).ring()).isEqualTo(seat);
            assertThat(HubSeat.of(plan, i).collar().mean()).isPositive();
        }
    }
}
