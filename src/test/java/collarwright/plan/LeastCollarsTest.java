package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.Profiles;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LeastCollarsTest {
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

    private static Plan cutFrom(Job job, RoundStock pipe, double width, RoundStock ring, double ringWidth, double gap) {
        return Planner.plan(with(job, new HubSettings(pipe, width, ring, ringWidth, Fix.TIE, gap)), List.of());
    }

    private static Plan made(Job job, CollarProposal p, double wider, double gap) {
        return cutFrom(job, p.collar(), p.width() + wider, p.ring(), p.ringWidth(), gap);
    }

    // Of any code.
    private static boolean clean(Plan plan) {
        return plan.findings().stream().allMatch(f -> f.level() == Level.NOTE);
    }

    // Each proposal, written into the job, is planned without a warning about it; a millimetre less of width warns.
    @Test
    void of_job_proposesCollarsThatPlanWithoutAWarning() {
        Job job = Jobs.windbreak().job();
        List<CollarProposal> proposals = LeastCollars.of(Planner.plan(job, List.of()), pipes());
        assertThat(proposals).hasSize(LeastCollars.MOST);
        for (CollarProposal p : proposals) {
            assertThat(clean(made(job, p, 0, p.endGap()))).isTrue();
            assertThat(clean(made(job, p, -1, p.endGap()))).isFalse();
            assertThat(p.endGap() < 0.5 || !clean(made(job, p, 0, p.endGap() - 0.5)))
                    .isTrue();
            assertThat(p.margins()).extracting(Check::margin).allMatch(m -> m >= -1e-9);
            assertThat(p.margins())
                    .extracting(Check::code)
                    .contains(
                            Code.WEB_BETWEEN_HOLES,
                            Code.WEB_TO_EDGE,
                            Code.HOLE_SLACK,
                            Code.STRUT_ENGAGEMENT,
                            Code.STRUT_CROWDING,
                            Code.RING_COVER,
                            Code.RING_LAST,
                            Code.STRUT_TRAVEL)
                    .doesNotHaveDuplicates();
            assertThat(p.step()).isPositive();
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
                        for (double gap : List.of(0.0, 1.0, 2.0, 3.0)) {
                            assertThat(clean(cutFrom(job, pipe, 120, ring, 80, gap)))
                                    .as(pipe.name() + " with " + ring.name())
                                    .isFalse();
                        }
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
                Plan plan = cutFrom(job, pipe, 120, first.ring(), 80, first.endGap());
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

    /** The seedling house: its smallest collars could once not be put together. */
    @Test
    void of_inchSample_everyProposalIsMadeWithoutAWarning() {
        Profiles profiles = Profiles.load(List.of(new BundledProfiles()));
        Job job = sample("seedling-house", profiles);
        List<CollarProposal> proposals = LeastCollars.of(Planner.plan(job, List.of()), profiles.allStock());

        assertThat(proposals).isNotEmpty();
        for (CollarProposal p : proposals) {
            assertThat(made(job, p, 0, p.endGap()).findings()).as(p.toString()).allMatch(f -> f.level() == Level.NOTE);
        }
    }

    private static Job sample(String name, Profiles profiles) {
        Path file = ProjectFolder.top().resolve("output-samples/" + name + "/job.toml");
        try {
            return JobReader.read(file.toString(), Files.readString(file), profiles)
                    .job()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
