package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.job.Job;
import collarwright.job.Order;
import collarwright.job.Shop;
import collarwright.job.ShopTimes;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryPlan;
import collarwright.testing.Jobs;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WorkTimeTest {

    private static final WorkTime.Machines NOTHING =
            WorkTime.Machines.only(new RotaryPlan(List.of(), List.of(), List.of()).summary());

    // Common practice, no source: one minute each makes 500 connections 8 h 20 min.
    @Test
    void connections_fiveHundredAtAMinute_eightHoursTwenty() {
        WorkTime time = new WorkTime(
                List.of(new WorkTime.Row(WorkTime.Work.CONNECT, 500, 500 * ShopTimes.USUAL.connection())),
                ShopTimes.USUAL.money());
        assertThat(time.minutes(WorkTime.Place.SITE)).isEqualTo(8 * 60 + 20);
        assertThat(time.minutes(WorkTime.Place.SHOP)).isZero();
    }

    @Test
    void of_press_everyCountIsThatOfTheOrder() {
        Plan plan = plan(ShopTimes.USUAL, 4);
        WorkTime time = WorkTime.of(plan, NOTHING);
        OrderTotals made = OrderTotals.of(plan);
        assertThat(count(time, WorkTime.Work.CLAMP_COLLARS)).isEqualTo(made.collars());
        assertThat(count(time, WorkTime.Work.CUT_STRUTS)).isEqualTo(made.struts());
        // Every strut end of four domes, counted from the members; spares are not put up.
        assertThat(count(time, WorkTime.Work.CONNECT))
                .isEqualTo(4L * 2 * plan.hubs().dome().memberCount());
        // Holes: every strut end of the domes with a hole, and those of the spare collars.
        long holes = 0;
        for (var pattern : plan.book().patterns()) {
            holes += (long) pattern.holes().size() * plan.job().order().made(pattern.count());
        }
        assertThat(count(time, WorkTime.Work.DRILL_HOLES)).isEqualTo(holes);
        assertThat(time.rows()).noneMatch(r -> r.work() == WorkTime.Work.RUN_PROGRAMS);
    }

    @Test
    void of_anyTimes_sumsAreThoseOfThePrintedRows() {
        ShopTimes odd = new ShopTimes(
                7.3, 11, 3.1, 0.77, 13.9, 2, 59.9, ShopTimes.Hands.USUAL, new ShopTimes.Money(33, 21, "EUR"));
        WorkTime time = WorkTime.of(plan(odd, 3), NOTHING);
        long shop = 0;
        for (WorkTime.Row row : time.rows()) {
            assertThat(60.0 * row.minutes()).isBetween(row.seconds() - 1e-6, row.seconds() + 60);
            shop += row.work().place() == WorkTime.Place.SHOP ? row.minutes() : 0;
        }
        assertThat(time.minutes(WorkTime.Place.SHOP)).isEqualTo(shop);
        assertThat(time.cost(WorkTime.Place.SHOP)).isEqualTo(shop * 33 / 60.0);
    }

    @Test
    void of_machine_takesSticksRunsAndSecondsOfItsPrograms() {
        RotaryPlan.Summary summary = new RotaryPlan.Summary(5, 20, 20, 4, new ProgramFile.Effort(3000, 0, 0, 0, 0, 7));
        Plan plan = collarwright.picture.TrialPlans.windbreak();
        WorkTime time = WorkTime.of(plan, WorkTime.Machines.only(summary));
        boolean programmed = plan.job().shop().machine().programmed();
        assertThat(time.rows().stream()
                        .filter(r -> r.work() == WorkTime.Work.RUN_PROGRAMS)
                        .mapToDouble(WorkTime.Row::seconds)
                        .sum())
                .isEqualTo(programmed ? 3000 : 0);
    }

    @Test
    void times_below0OrNotFinite_refused() {
        for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new ShopTimes(
                            1, 1, 1, wrong, 1, 1, 1, ShopTimes.Hands.USUAL, new ShopTimes.Money(0, 0, "")))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new ShopTimes.Hands(1, wrong)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new ShopTimes.Hands(wrong, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new ShopTimes.Money(wrong, 0, "")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static long count(WorkTime time, WorkTime.Work work) {
        return time.rows().stream()
                .filter(r -> r.work() == work)
                .mapToLong(WorkTime.Row::count)
                .sum();
    }

    private static Plan plan(ShopTimes times, int domes) {
        Plan plan = collarwright.picture.TrialPlans.windbreak();
        Job job = plan.job();
        Shop press = new Shop(
                Jobs.press(),
                job.shop().programUnits(),
                job.shop().cutting(),
                Shop.Batch.USUAL,
                times,
                Optional.empty(),
                Optional.empty());
        Job other = new Job(
                job.title(),
                job.revision(),
                new Order(domes, 3),
                job.dome(),
                job.size(),
                job.strut(),
                job.hub(),
                job.drilling(),
                job.limits(),
                press);
        return Planner.plan(other, List.of());
    }
}
