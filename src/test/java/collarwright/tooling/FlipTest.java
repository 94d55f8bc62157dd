package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.Heights;
import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.geometry.Vec3;
import collarwright.hub.HubType;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.strut.SizeRule;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Collars that may be put on upside down. */
class FlipTest {

    private static Plan plan(Jobs jobs) {
        return Planner.plan(jobs.job(), List.of());
    }

    private static Jobs rows(int frequency, int rows) {
        return Jobs.windbreak().dome(frequency, rows).size(new SizeRule.Radius(1000.0 * frequency));
    }

    private static Jobs sphere(int b, int c) {
        SphereSettings sphere =
                new SphereSettings(Base.ICOSAHEDRON, new Breakdown(b, c), Subdivision.CHORDS, Up.VERTEX);
        return Jobs.windbreak()
                .dome(new DomeSettings(sphere, new Cut.Tiers(sphere.tiers())))
                .size(new SizeRule.Radius(1000.0 * (b + c)));
    }

    private static Set<String> fingerprints(Plan plan) {
        return plan.book().patterns().stream().map(Pattern::fingerprint).collect(Collectors.toCollection(TreeSet::new));
    }

    // A half dome has left and right hub types at its foot and beside the mirror planes of its faces.
    @ParameterizedTest
    @CsvSource({"3, 5", "4, 6", "5, 8", "6, 9", "7, 11"})
    void exact_mirrorSymmetricDome_mergesTheMirrorPairs(int frequency, int rows) {
        Plan without = plan(rows(frequency, rows));
        Plan with = plan(rows(frequency, rows).flip());
        assertThat(without.book().patterns()).hasSameSizeAs(without.hubs().types());
        assertThat(with.book().patterns().size())
                .isLessThanOrEqualTo(without.book().patterns().size());
        assertThat(with.book().patterns().stream().mapToInt(Pattern::count).sum())
                .isEqualTo(with.hubs().dome().nodeCount());
        assertThat(fingerprints(with)).hasSize(with.book().patterns().size());
        Set<String> drilled =
                with.hubs().types().stream().map(FlipTest::drilled).collect(Collectors.toSet());
        assertThat(with.book().patterns()).hasSize(drilled.size());
    }

    // A hub type's gaps and leans as text, the first of all ways to read them round, forward and backward.
    private static String drilled(HubType type) {
        int n = type.struts().size();
        List<String> ways = new ArrayList<>();
        for (int first = 0; first < n; first++) {
            StringBuilder forward = new StringBuilder();
            StringBuilder backward = new StringBuilder();
            for (int at = 0; at < n; at++) {
                int on = (first + at) % n;
                int back = (first - at + n) % n;
                forward.append(text(type, on, on));
                backward.append(text(type, back, (back - 1 + n) % n));
            }
            ways.add(forward.toString());
            ways.add(backward.toString());
        }
        return Collections.min(ways);
    }

    private static String text(HubType type, int strut, int gap) {
        double lean = StrictMath.abs(type.struts().get(strut).axialAngle());
        return StrictMath.round(1e6 * type.gapAfter(gap)) + "/" + StrictMath.round(1e6 * lean) + " ";
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "3, 1", "3, 2"})
    void exact_leftAndRightTurningSphere_takeTheSameCollars(int b, int c) {
        assertThat(fingerprints(plan(sphere(b, c).flip())))
                .isEqualTo(fingerprints(plan(sphere(c, b).flip())));
        assertThat(fingerprints(plan(sphere(b, c)))).isNotEqualTo(fingerprints(plan(sphere(c, b))));
    }

    @Test
    void shared_drawnDomes_neverNeedMorePatternsWithFlips() {
        Seeds.each(12, draw -> {
            SharingLimits limits = new SharingLimits(StrictMath.toRadians(draw.between(0, 1.5)), draw.between(0, 7));
            int frequency = draw.whole(2, 6);
            int rows = draw.whole(frequency, 3 * frequency);
            Sharing without =
                    plan(rows(frequency, rows).shared(limits)).book().sharing().orElseThrow();
            Sharing with = plan(rows(frequency, rows).shared(limits).flip())
                    .book()
                    .sharing()
                    .orElseThrow();
            assertThat(with.patterns()).isLessThanOrEqualTo(without.patterns());
            assertThat(with.atLeast()).isLessThanOrEqualTo(with.patterns());
            assertThat(with.exact()).isLessThanOrEqualTo(without.exact());
            assertThat(with.extraLean()).isLessThanOrEqualTo(limits.extraLean() + 1e-9);
            assertThat(with.miss()).isLessThanOrEqualTo(limits.miss() + 1e-9);
        });
    }

    // From node data alone, as somebody would who hangs the collars: pattern, which way up, and where UP is. Each
    // hole's
    // axis must then point along its strut, seen along the hub's axis; with converging heights the strut's own line
    // must
    // pass the middle of the hole.
    @ParameterizedTest
    @CsvSource({"true, 0, 0", "false, 0, 0", "false, 1, 6", "true, 1, 6"})
    void nodeData_putIntoSpace_pointAlongTheStruts(boolean converging, double extra, double miss) {
        Seeds.each(6, draw -> {
            Jobs jobs = draw.whole(0, 1) == 0 ? rows(draw.whole(3, 6), 9) : sphere(draw.whole(2, 3), draw.whole(1, 3));
            jobs.flip();
            if (converging) {
                jobs.converging();
            }
            if (miss > 0) {
                jobs.shared(new SharingLimits(StrictMath.toRadians(extra), miss));
            }
            Plan plan = plan(jobs);
            Dome dome = plan.hubs().dome();
            for (int m = 0; m < dome.memberCount(); m++) {
                int a = plan.hubs().nodeAtA(m);
                int b = plan.hubs().nodeAtB(m);
                check(plan, new int[] {a, b, plan.holeAtA(m)}, miss);
                check(plan, new int[] {b, a, plan.holeAtB(m)}, miss);
            }
        });
    }

    private static void check(Plan plan, int[] from, double miss) {
        int node = from[0];
        Dome dome = plan.hubs().dome();
        Vec3 axis = dome.axis(node);
        Vec3 strut = point(dome, from[1]).minus(point(dome, node)).unit();
        Vec3 up = across(new Vec3(0, 0, 1), axis);
        up = up.norm() < 1e-6 ? across(new Vec3(1, 0, 0), axis) : up;
        Vec3 top = plan.flipped(node) ? axis.times(-1) : axis;
        int pattern = plan.placement(plan.hubs().typeOf(node)).pattern();
        Hole hole = plan.book().patterns().get(pattern).holes().get(from[2] - 1);
        // Rodrigues' rotation of UP about TOP, clockwise seen with TOP toward the eye.
        double past = hole.azimuth() - plan.turn(node);
        Vec3 radial =
                up.unit().times(StrictMath.cos(past)).plus(up.unit().cross(top).times(StrictMath.sin(past)));
        double middle = plan.job().hub().body().midRadius();
        Vec3 along = across(strut, axis).unit();
        double off = middle * radial.minus(along).norm();
        assertThat(off).as("%s hole %d", dome.nodeId(node), from[2]).isLessThanOrEqualTo(miss + 1e-5);
        if (miss == 0 && plan.job().hub().heights() == Heights.CONVERGING) {
            int type = plan.hubs().typeOf(node);
            double below = HubSeat.of(plan, type).collar().mean();
            Vec3 centre = axis.times(-below).plus(radial.times(middle)).plus(top.times(hole.height()));
            assertThat(centre.minus(strut.times(centre.dot(strut))).norm()).isLessThan(1e-4);
        }
    }

    private static Vec3 point(Dome dome, int node) {
        return new Vec3(dome.x(node), dome.y(node), dome.z(node));
    }

    private static Vec3 across(Vec3 v, Vec3 axis) {
        return v.minus(axis.times(v.dot(axis)));
    }

    @Test
    void shared_flipsThatSaveNothing_areNotMade() {
        Seeds.each(6, draw -> {
            SharingLimits limits = new SharingLimits(StrictMath.toRadians(draw.between(0, 1)), draw.between(0, 6));
            int frequency = draw.whole(2, 5);
            Plan without = plan(rows(frequency, 2 * frequency).shared(limits));
            Plan with = plan(rows(frequency, 2 * frequency).shared(limits).flip());
            boolean saves =
                    with.book().patterns().size() < without.book().patterns().size();
            assertThat(with.book().flips()).isEqualTo(saves);
            if (!saves) {
                assertThat(with.book().patterns()).isEqualTo(without.book().patterns());
            }
        });
    }

    // With holes at heights, a collar turned over has them on the other side.
    @Test
    void converging_mirrorPairsOfHubsThatLeanInward_stayApart() {
        Plan flat = plan(rows(4, 6).flip());
        Plan converging = plan(rows(4, 6).converging().flip());
        assertThat(converging.book().patterns().size())
                .isGreaterThanOrEqualTo(flat.book().patterns().size());
        assertThat(converging.hubs().types()).hasSameSizeAs(flat.hubs().types());
        for (int type = 0; type < converging.hubs().types().size(); type++) {
            Placement placement = converging.placement(type);
            var holes = converging.book().patterns().get(placement.pattern()).holes();
            var struts = converging.hubs().types().get(type).struts();
            double mid = converging.job().hub().body().midRadius();
            double meets = Double.NaN;
            for (int i = 0; i < struts.size(); i++) {
                double height =
                        placement.outward(holes.get(placement.holes().get(i)).height());
                double here = height + mid * StrictMath.tan(struts.get(i).axialAngle());
                assertThat(Double.isNaN(meets) ? here : meets).isCloseTo(here, within(1e-6));
                meets = here;
            }
        }
    }
}
