package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.finding.Code;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.strut.SizeRule;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharedPatternsTest {

    private static Jobs jobs(int frequency, int rows, double radius) {
        return Jobs.windbreak()
                .dome(frequency, rows)
                .size(new SizeRule.Radius(radius))
                .shared(new SharingLimits(StrictMath.toRadians(1), 6));
    }

    private static Plan plan(Jobs jobs) {
        return Planner.plan(jobs.job(), List.of());
    }

    @ParameterizedTest
    @CsvSource({"3, 5, 2600, 6, 3", "4, 6, 3500, 8, 3", "2, 3, 1800, 4, 2"})
    void shared_halfDome_needsFewPatterns(int frequency, int rows, double radius, int exact, int shared) {
        Sharing sharing = plan(jobs(frequency, rows, radius)).book().sharing().orElseThrow();
        assertThat(sharing.exact()).isEqualTo(exact);
        assertThat(sharing.patterns()).isEqualTo(shared);
        assertThat(sharing.atLeast()).isEqualTo(shared);
    }

    // On whole spheres up to 16v the number of patterns found is the number that was shown to be needed, or one or two
    // more:
    // then both are told.
    @Test
    void shared_wholeSpheresUpToSixteen_areFewestOrSayWhatIsOpen() {
        for (int frequency = 2; frequency <= 16; frequency++) {
            Job job = jobs(frequency, 3 * frequency, 1000.0 * frequency).job();
            Hubs hubs = Hubs.of(Dome.of(new DomeSettings(frequency, 3 * frequency)));
            Plan plan = Planner.plan(job, List.of());
            Sharing sharing = plan.book().sharing().orElseThrow();
            int open = sharing.patterns() - sharing.atLeast();
            assertThat(open).as("%dv", frequency).isBetween(0, frequency < 6 ? 0 : 2);
            assertThat(plan.findings())
                    .filteredOn(f -> f.code() == Code.PATTERNS_SHARED)
                    .allMatch(f -> f.found().contains(open == 0 ? "and fewer do not" : "is not settled"));
            assertThat(sharing.exact()).isEqualTo(hubs.types().size());
        }
    }

    @Test
    void shared_randomLimits_everyStrutStaysWithinThem() {
        Seeds.each(25, draw -> {
            int frequency = draw.whole(2, 6);
            double extra = StrictMath.toRadians(draw.between(0, 2));
            double miss = draw.between(0, 8);
            Jobs jobs = jobs(frequency, 3 * frequency / 2, draw.between(500, 1200) * frequency)
                    .shared(new SharingLimits(extra, miss));
            Plan plan = plan(jobs);
            PatternBook book = plan.book();
            for (Joint joint : book.sharing().orElseThrow().joints()) {
                keeps(plan, joint.a(), joint.line().a(), extra, miss);
                keeps(plan, joint.b(), joint.line().b(), extra, miss);
            }
            assertThat(plan.findings())
                    .noneMatch(f ->
                            f.level() == Level.STOP && (f.code() == Code.HOLE_EXTRA_LEAN || f.code() == Code.HUB_MISS));
        });
    }

    private static void keeps(
            Plan plan, Joint.At at, collarwright.collar.StrutLine.End end, double extra, double miss) {
        Placement placement = plan.placement(at.hubType());
        double own = StrictMath.abs(
                plan.hubs().types().get(at.hubType()).struts().get(at.strut()).axialAngle());
        assertThat(StrictMath.abs(end.miss())).isLessThanOrEqualTo(miss + 1e-9);
        if (!plan.book().patterns().isEmpty()) {
            Hole hole = plan.book()
                    .patterns()
                    .get(placement.pattern())
                    .holes()
                    .get(placement.holes().get(at.strut()));
            assertThat(hole.neededLean()).isLessThanOrEqualTo(own + extra + 1e-7);
            assertThat(end.direction().lean()).isLessThanOrEqualTo(hole.neededLean() + 1e-12);
            double required = plan.job()
                    .hub()
                    .body()
                    .required(
                            40.2,
                            end.direction(),
                            plan.job().hub().body().wall().max());
            assertThat(hole.required()).isGreaterThanOrEqualTo(required - 1e-9);
            assertThat(hole.cutter().asDrilled().min()).isGreaterThanOrEqualTo(required);
        }
    }

    @Test
    void shared_noTolerance_keepsHubTypesApartUnlessTheyDrillAlike() {
        Plan exact = plan(Jobs.windbreak());
        Plan none = plan(jobs(3, 5, 2600).shared(new SharingLimits(0, 0)));
        assertThat(none.book().sharing().orElseThrow().extraLean()).isCloseTo(0, within(1e-9));
        assertThat(none.book().sharing().orElseThrow().miss()).isCloseTo(0, within(1e-6));
        assertThat(none.book().patterns().size())
                .isLessThanOrEqualTo(exact.book().patterns().size());
    }

    @Test
    void shared_everyMember_findsAHoleOfItsOwnAtEachHub() {
        Plan plan = plan(jobs(4, 6, 3500));
        var used = new HashSet<String>();
        for (int m = 0; m < plan.hubs().dome().memberCount(); m++) {
            assertThat(used.add(plan.hubs().nodeAtA(m) + "/" + plan.holeAtA(m))).isTrue();
            assertThat(used.add(plan.hubs().nodeAtB(m) + "/" + plan.holeAtB(m))).isTrue();
        }
        int counted = plan.book().patterns().stream().mapToInt(Pattern::count).sum();
        assertThat(counted).isEqualTo(plan.hubs().dome().nodeCount());
    }

    // A hub type joins with the turn that leaves its holes nearest: seen from the hub, each hole lies within the miss
    // of
    // where the strut points.
    @Test
    void shared_placements_putHolesWhereStrutsPoint() {
        Plan plan = plan(jobs(4, 6, 3500));
        double mid = plan.job().hub().body().midRadius();
        for (int type = 0; type < plan.hubs().types().size(); type++) {
            Placement placement = plan.placement(type);
            var struts = plan.hubs().types().get(type).struts();
            for (int i = 0; i < struts.size(); i++) {
                Hole hole = plan.book()
                        .patterns()
                        .get(placement.pattern())
                        .holes()
                        .get(placement.holes().get(i));
                double off = StrictMath.IEEEremainder(
                        hole.azimuth() - placement.onPattern(struts.get(i).azimuth()), 2 * StrictMath.PI);
                assertThat(mid * StrictMath.abs(StrictMath.sin(off))).isLessThanOrEqualTo(6 + 1e-9);
            }
        }
    }
}
