package collarwright.plan;

import static collarwright.plan.Plans.collar;
import static collarwright.plan.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.Limits;
import collarwright.strut.SizeRule;
import collarwright.strut.TieHole;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlannerLawsTest {
    // Whatever a shop may ask for, sensible or not: findings come out and never an exception, the same every time.
    @Test
    void plan_drawnJobs_areAnsweredWithFindings() {
        Seeds.each(250, draw -> {
            Plan plan = Planner.plan(drawn(draw).job(), List.of(collar(120), collar(200), collar(400)));
            boolean drilled = !plan.book().patterns().isEmpty();
            assertThat(drilled || !plan.makeable())
                    .as("a hole without a cutter stops")
                    .isTrue();
            assertThat(plan.makeable()).isEqualTo(plan.findings().stream().noneMatch(f -> f.level() == Level.STOP));
            assertThat(plan.findings())
                    .allMatch(f -> f.where().text().length() > 3 && !f.found().contains("NaN"));
            assertThat(plan.checks()).allMatch(c -> !Double.isNaN(c.value()));
            if (drilled) {
                assertThat(plan.book().patterns().stream()
                                .mapToInt(p -> p.count() * p.holes().size())
                                .sum())
                        .isEqualTo(2 * plan.hubs().dome().memberCount());
            }
        });
    }

    private static Jobs drawn(Seeds draw) {
        int frequency = draw.whole(1, 6);
        double strut = draw.between(4, 120);
        double collar = draw.between(10, 400);
        double wall = draw.between(0.3, 0.45 * collar);
        double ring = draw.between(3, collar);
        Jobs jobs = Jobs.windbreak()
                .dome(frequency, draw.whole(1, 3 * frequency))
                .size(
                        draw.coin()
                                ? new SizeRule.Radius(draw.between(20, 20_000))
                                : new SizeRule.LongestStrut(draw.between(1, 5000)))
                .strut(Jobs.pipe("s", new Interval(strut * 0.99, strut, strut * 1.01), Interval.of(strut / 20)))
                .collar(Jobs.pipe("c", Interval.of(collar), Interval.between(wall * 0.9, wall)))
                .ring(Jobs.pipe("r", Interval.of(ring), Interval.of(ring / 20)), draw.between(1, 100))
                .width(draw.between(1, 200))
                .endGap(draw.between(0, 20))
                .limits(new Limits(draw.between(-2, 0.5), 0.5, draw.between(-2, 0.5), 0.5, draw.between(0, 0.1), 1, 2))
                .cutters(draw.numbers(draw.whole(1, 30), strut, 1.6 * strut).stream()
                        .map(mm -> Jobs.saw(StrictMath.rint(mm * 10) / 10))
                        .distinct()
                        .toArray(Cutter[]::new));
        jobs = draw.coin() ? jobs.nearest(draw.between(0, 0.1)) : jobs;
        return draw.coin() ? jobs.noTieHole() : jobs.tieHole(new TieHole(6, draw.between(1, 40)));
    }
}
