package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LeastCollarsTest {
    private static final Set<Code> CURED = Set.of(
            Code.WEB_BETWEEN_HOLES,
            Code.WEB_TO_EDGE,
            Code.STRUT_ENGAGEMENT,
            Code.STRUT_TIE_HOLE,
            Code.STRUT_CROWDING,
            Code.RING_CLEARANCE,
            Code.RING_COVER,
            Code.HOLE_TOO_WIDE);

    private static List<RoundStock> pipes() {
        List<RoundStock> pipes = new ArrayList<>();
        for (int od = 60; od <= 280; od += 10) {
            for (int wall = 3; wall <= 9; wall += 3) {
                pipes.add(Jobs.pipe("p" + od + "x" + wall, Interval.of(od), Interval.of(wall)));
            }
        }
        return pipes;
    }

    private static Job with(Job job, HubSettings hub) {
        return new Job(
                job.title(),
                job.revision(),
                job.order(),
                job.dome(),
                job.size(),
                job.strut(),
                hub,
                job.drilling(),
                job.limits(),
                job.shop());
    }

    private static Plan cutFrom(Job job, RoundStock pipe, double width, RoundStock ring, double ringWidth) {
        HubSettings hub =
                new HubSettings(pipe, width, ring, ringWidth, Fix.TIE, job.hub().endGap());
        return Planner.plan(with(job, hub), List.of());
    }

    private static boolean clean(Plan plan) {
        return plan.findings().stream()
                .filter(f -> f.level() != Level.NOTE)
                .map(Finding::code)
                .noneMatch(CURED::contains);
    }

    // Each proposal, written into the job, is planned without a warning about it; a millimetre less of width warns.
    @Test
    void of_job_proposesCollarsThatPlanWithoutAWarning() {
        Job job = Jobs.windbreak().job();
        List<CollarProposal> proposals = LeastCollars.of(Planner.plan(job, List.of()), pipes());
        assertThat(proposals).hasSize(LeastCollars.MOST);
        for (CollarProposal p : proposals) {
            assertThat(clean(cutFrom(job, p.collar(), p.width(), p.ring(), p.ringWidth())))
                    .isTrue();
            assertThat(clean(cutFrom(job, p.collar(), p.width() - 1, p.ring(), p.ringWidth())))
                    .isFalse();
            assertThat(p.tightest().margin()).isNotNegative();
        }
        assertThat(proposals)
                .extracting(p -> p.collar().od().nominal())
                .isSorted()
                .doesNotHaveDuplicates();
    }

    // All smaller pipes, with every ring that there is, do not do.
    @Test
    void of_job_firstIsTheSmallest() {
        Job job = Jobs.windbreak().job();
        CollarProposal first =
                LeastCollars.of(Planner.plan(job, List.of()), pipes()).get(0);
        for (RoundStock pipe : pipes()) {
            if (pipe.od().nominal() < first.collar().od().nominal()) {
                for (RoundStock ring : pipes()) {
                    if (ring.od().max()
                            < pipe.od().nominal()
                                    - 2 * pipe.wall().orElseThrow().max()) {
                        assertThat(clean(cutFrom(job, pipe, 120, ring, 80)))
                                .as(pipe.name() + " with " + ring.name())
                                .isFalse();
                    }
                }
            }
        }
    }

    // The same outside diameter in three walls: the one with the least slack is taken.
    @Test
    void of_wallsOfOneSize_takesTheLeastSlack() {
        Job job = Jobs.windbreak().job();
        CollarProposal first =
                LeastCollars.of(Planner.plan(job, List.of()), pipes()).get(0);
        for (RoundStock pipe : pipes()) {
            if (pipe.od().nominal() == first.collar().od().nominal()) {
                Plan plan = cutFrom(job, pipe, 120, first.ring(), 80);
                if (clean(plan)) {
                    double slack = plan.book().patterns().stream()
                            .flatMap(p -> p.holes().stream())
                            .mapToDouble(h -> h.slack())
                            .max()
                            .orElseThrow();
                    assertThat(slack).isGreaterThanOrEqualTo(first.slack() - 1e-12);
                }
            }
        }
    }

    @Test
    void of_noPipeLargeEnough_proposesNone() {
        Job job = Jobs.windbreak().job();
        assertThat(LeastCollars.of(
                        Planner.plan(job, List.of()),
                        pipes().stream().filter(p -> p.od().nominal() < 90).toList()))
                .isEmpty();
    }
}
