package collarwright.plan;

import static collarwright.plan.Plans.collar;
import static collarwright.plan.Plans.found;
import static collarwright.plan.Plans.hinted;
import static collarwright.plan.Plans.least;
import static collarwright.plan.Plans.plan;
import static collarwright.plan.Plans.worst;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeRule;
import collarwright.strut.TieHole;
import collarwright.testing.Jobs;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
    @Test
    void plan_soundJob_hasOnlyNotesOnFootMovementAndPvc() {
        Plan plan = plan(Jobs.windbreak());
        assertThat(plan.findings())
                .extracting(Finding::code)
                .containsExactly(Code.HUB_ONE_SIDED, Code.HUB_MOVEMENT, Code.LASER_PVC);
        assertThat(plan.makeable()).isTrue();
        assertThat(plan.struts().radius()).isEqualTo(2600);
        assertThat(plan.book().patterns()).hasSize(6);
        assertThat(plan.checks()).extracting(Check::code).isSorted();
        Plan again = plan(Jobs.windbreak());
        assertThat(again.checks()).isEqualTo(plan.checks());
        assertThat(again.book()).isEqualTo(plan.book());
        assertThat(plan.job()).isEqualTo(Jobs.windbreak().job());
    }

    @Test
    void checks_ofOneCode_haveTheWorstFirst() {
        List<Check> checks = plan(Jobs.windbreak()).checks();
        for (int i = 1; i < checks.size(); i++) {
            if (checks.get(i).code() == checks.get(i - 1).code()) {
                assertThat(checks.get(i).margin())
                        .isGreaterThanOrEqualTo(checks.get(i - 1).margin());
            }
        }
    }

    // The saws are 42.5 and 43 mm: the edge web is (width − 43)/2, its limits 0 and half of 43.
    @ParameterizedTest
    @CsvSource({"86.1, ", "86, ", "85.9, WARN", "43, WARN", "42.9, STOP", "10, STOP"})
    void webToEdge_width_decides(double width, Level level) {
        assertThat(worst(plan(Jobs.windbreak().width(width)), Code.WEB_TO_EDGE)).isEqualTo(level);
    }

    @Test
    void webToEdge_hintFollowed_isCured() {
        Finding finding = found(plan(Jobs.windbreak().width(60).cutters(Jobs.saw(43.27))), Code.WEB_TO_EDGE)
                .get(0);
        double width = hinted(finding, "cut the collar ");
        assertThat(width).isCloseTo(2 * 43.27, within(0.1));
        assertThat(found(plan(Jobs.windbreak().width(width).cutters(Jobs.saw(43.27))), Code.WEB_TO_EDGE))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"200, ", "160, ", "140, WARN", "112, WARN", "104, STOP"})
    void webBetweenHoles_collarPipe_decides(double od, Level level) {
        Jobs jobs = Jobs.windbreak()
                .collar(collar(od))
                .ring(Jobs.pipe("r", Interval.of(60), Interval.of(3)), 50)
                .cutters(Jobs.saw(43.5));
        Plan plan = plan(jobs);
        assertThat(worst(plan, Code.WEB_BETWEEN_HOLES)).isEqualTo(level);
        // The narrowest gap is 55.6906°; arcs along the inner wall where it is thickest, between the holes' edges.
        double inner = od / 2 - 8.1;
        double edge = StrictMath.atan2(21.75, StrictMath.sqrt(inner * inner - 21.75 * 21.75));
        assertThat(least(plan, Code.WEB_BETWEEN_HOLES))
                .isCloseTo(inner * (StrictMath.toRadians(55.6906) - 2 * edge), within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"140, WARN", "104, STOP"})
    void webBetweenHoles_hintFollowed_isCured(double od, Level level) {
        RoundStock ring = Jobs.pipe("r", Interval.of(60), Interval.of(3));
        Jobs jobs = Jobs.windbreak().collar(collar(od)).ring(ring, 50).cutters(Jobs.saw(43));
        Finding finding = found(plan(jobs), Code.WEB_BETWEEN_HOLES).get(0);
        assertThat(finding.level()).isEqualTo(level);
        double enough = hinted(finding, "of at least ");
        assertThat(enough).isGreaterThan(od);
        Level then = worst(plan(jobs.collar(collar(enough))), Code.WEB_BETWEEN_HOLES);
        assertThat(then).isEqualTo(level == Level.STOP ? Level.WARN : null);
    }

    @Test
    void webBetweenHoles_limitsOfTheJob_count() {
        Limits strict = new Limits(1.2, 1.3, 0, 0.5, 0.05, 1, 2);
        assertThat(worst(plan(Jobs.windbreak().limits(strict)), Code.WEB_BETWEEN_HOLES))
                .isEqualTo(Level.STOP);
        Limits lax = new Limits(-1, -1, 0, 0.5, 0.05, 1, 2);
        Jobs tight = Jobs.windbreak().collar(collar(104)).ring(Jobs.pipe("r", Interval.of(60), Interval.of(3)), 50);
        assertThat(found(plan(tight.limits(lax)), Code.WEB_BETWEEN_HOLES)).isEmpty();
    }

    // A larger end gap moves the ends out by the gap over the cosine of the angle, and the engagement goes down with
    // it:
    // from 37.47 mm at 11.90°, with limits at 0 and at half of 40.2 mm.
    @ParameterizedTest
    @CsvSource({"2, ", "18.9, ", "19.1, WARN", "38.6, WARN", "38.7, STOP"})
    void engagement_endGap_decides(double gap, Level level) {
        assertThat(worst(plan(Jobs.windbreak().endGap(gap)), Code.STRUT_ENGAGEMENT))
                .isEqualTo(level);
    }

    @ParameterizedTest
    @CsvSource({
        "6, 34.4, , ",
        "6, 34.6, WARN, pattern CB / hole 3",
        "30, 22.4, , ",
        "30, 22.6, WARN, pattern CB / hole 3"
    })
    void tieHole_itsPlaceAndSize_decide(double diameter, double fromEnd, Level level, String where) {
        Plan plan = plan(Jobs.windbreak().tieHole(new TieHole(diameter, fromEnd)));
        assertThat(worst(plan, Code.STRUT_TIE_HOLE)).isEqualTo(level);
        assertThat(found(plan, Code.STRUT_TIE_HOLE).stream()
                        .findFirst()
                        .map(f -> f.where().text())
                        .orElse(null))
                .isEqualTo(where);
    }

    @Test
    void tieHole_none_isNotChecked() {
        Plan plan = plan(Jobs.windbreak().noTieHole());
        assertThat(plan.findings())
                .extracting(Finding::code)
                .containsExactly(Code.HUB_ONE_SIDED, Code.HUB_MOVEMENT, Code.LASER_PVC);
        assertThat(plan.checks()).noneMatch(c -> c.code() == Code.STRUT_TIE_HOLE);
    }

    // Ends 40.2 mm thick at 55.69° touch 38.914 mm from the node. The shorter setback decides, that of SA with
    // 10.0384°:
    // (ring/2 + 2 + 20.1·sin)/cos is 38.914 for a ring of 65.63.
    @ParameterizedTest
    @CsvSource({"65.65, ", "65.61, STOP"})
    void crowding_ring_decides(double ring, Level level) {
        Jobs jobs = Jobs.windbreak().ring(Jobs.pipe("r", Interval.of(ring), Interval.of(3)), 50);
        Plan plan = plan(jobs);
        assertThat(worst(plan, Code.STRUT_CROWDING)).isEqualTo(level);
        if (level != null) {
            double more = hinted(found(plan, Code.STRUT_CROWDING).get(0), "a centre ring at least ");
            assertThat(more).isBetween(0.1, 0.2);
            Jobs cured = jobs.ring(Jobs.pipe("r", Interval.of(ring + more), Interval.of(3)), 50);
            assertThat(found(plan(cured), Code.STRUT_CROWDING)).isEmpty();
        }
    }

    @Test
    void slack_onlyWideCutters_warns() {
        Plan plan = plan(Jobs.windbreak().cutters(Jobs.saw(45)));
        assertThat(worst(plan, Code.HOLE_SLACK)).isEqualTo(Level.WARN);
        assertThat(plan.makeable()).isTrue();
        assertThat(found(plan, Code.HOLE_SLACK).get(0).expected()).isEqualTo("at most 2.00°");
        double needed = plan.book().sizes().get(0).size().required();
        assertThat(hinted(found(plan, Code.HOLE_SLACK).get(0), "a cutter nearer to "))
                .isCloseTo(needed, within(0.6));
    }

    // 42.3 mm is short of the longest strut's 11.90° by about 1° for nominal sizes.
    @ParameterizedTest
    @CsvSource({"1.5, WARN, ", "0.01, , STOP"})
    void nearest_shortCutter_warnsInsideTheBand(double band, Level reach, Level cutter) {
        Plan plan = plan(Jobs.windbreak().cutters(Jobs.saw(42.3)).nearest(StrictMath.toRadians(band)));
        assertThat(worst(plan, Code.HOLE_SHORT_OF_REACH)).isEqualTo(reach);
        assertThat(worst(plan, Code.HOLE_NO_CUTTER)).isEqualTo(cutter);
    }

    @Test
    void ringCover_narrowRing_warnsAndSaysHowWide() {
        RoundStock ring = Jobs.pipe("r", Interval.of(90), Interval.of(4.3));
        Plan plan = plan(Jobs.windbreak().ring(ring, 40));
        assertThat(worst(plan, Code.RING_COVER)).isEqualTo(Level.WARN);
        double wide = found(plan, Code.RING_COVER).stream()
                .mapToDouble(f -> hinted(f, "make the ring at least "))
                .max()
                .orElseThrow();
        assertThat(found(plan(Jobs.windbreak().ring(ring, wide)), Code.RING_COVER))
                .isEmpty();
        assertThat(found(plan(Jobs.windbreak().ring(ring, wide - 1)), Code.RING_COVER))
                .isNotEmpty();
    }

    // The bore is 200.2 − 2 · 8.1 = 184 mm with the thickest wall, and the end gap is 2 mm on either side.
    @ParameterizedTest
    @CsvSource({"179.9, ", "180.1, STOP"})
    void ringClearance_ring_decides(double od, Level level) {
        Jobs jobs = Jobs.windbreak().ring(Jobs.pipe("r", Interval.of(od), Interval.of(4.3)), 50);
        assertThat(worst(plan(jobs), Code.RING_CLEARANCE)).isEqualTo(level);
    }

    // The shortest strut, chord factor .34861549, needs its two setbacks of 51.29 mm, and 2 · 12 + 6 mm for two tie
    // holes.
    @ParameterizedTest
    @CsvSource({"381, ", "380, STOP", "1, STOP"})
    void strutTooShort_radius_decides(double radius, Level level) {
        Plan plan = plan(Jobs.windbreak().size(new SizeRule.Radius(radius)));
        assertThat(worst(plan, Code.STRUT_TOO_SHORT)).isEqualTo(level);
        // At 381 mm the struts are long enough, but collars of 200.2 mm would meet: .34861549 · 381 = 132.8 mm.
        assertThat(worst(plan, Code.HUB_SPACING)).isEqualTo(Level.STOP);
    }

    // Hubs stand .34861549 · radius apart; a collar is 200.2 mm wide.
    @ParameterizedTest
    @CsvSource({"574.4, ", "574.2, STOP"})
    void hubSpacing_radius_decides(double radius, Level level) {
        Plan plan = plan(Jobs.windbreak().size(new SizeRule.Radius(radius)));
        assertThat(worst(plan, Code.HUB_SPACING)).isEqualTo(level);
    }

    @ParameterizedTest
    @CsvSource({"179.8, 179.9, ", "179.8, 180.1, STOP"})
    void ringClearance_measuredLimits_countTheThickestRing(double od, double most, Level level) {
        RoundStock ring = Jobs.pipe("r", new Interval(179.5, od, most), Interval.of(4.3));
        assertThat(worst(plan(Jobs.windbreak().ring(ring, 50)), Code.RING_CLEARANCE))
                .isEqualTo(level);
    }

    @Test
    void strutTooShort_noTieHole_needsAMillimetre() {
        Plan plan = plan(Jobs.windbreak().noTieHole().size(new SizeRule.LongestStrut(0.5)));
        assertThat(found(plan, Code.STRUT_TOO_SHORT))
                .hasSize(3)
                .allMatch(f -> f.expected().equals("at least 1.00 mm"));
    }

    @Test
    void noCutter_rack_namesTheNearestTwoOfEachHole() {
        Cutter drill = new Cutter(
                "TW-41", CutterKind.TWIST, "41 mm", 41, Interval.of(41), true, 8, 90, 80, 600, "metric-twist");
        Plan plan = plan(Jobs.windbreak().cutters(Jobs.saw(30), Jobs.saw(42), drill, Jobs.saw(250)));
        List<Finding> findings = found(plan, Code.HOLE_NO_CUTTER);
        assertThat(findings).hasSize(3).allMatch(f -> f.level() == Level.STOP);
        assertThat(findings.get(0).where().text()).isEqualTo("hole for strut SA (axial angle 10.04°)");
        assertThat(findings.get(0).found())
                .isEqualTo("the nearest are twist drill 41 mm (metric-twist) and hole saw 42 mm (metric-hole-saws)");
        assertThat(findings.get(0).expected()).isEqualTo("a cutter of at least 42.26 mm as drilled, below 184.00 mm");
        assertThat(plan.makeable()).isFalse();
        assertThat(plan.book().patterns()).isEmpty();
        assertThat(plan.checks()).noneMatch(c -> c.code() == Code.WEB_TO_EDGE);
    }

    @Test
    void noCutter_hintFollowed_isCured() {
        Finding last = found(plan(Jobs.windbreak().cutters(Jobs.saw(42))), Code.HOLE_NO_CUTTER)
                .get(2);
        double size = hinted(last, "add a cutter of ");
        assertThat(found(plan(Jobs.windbreak().cutters(Jobs.saw(42), Jobs.saw(size))), Code.HOLE_NO_CUTTER))
                .isEmpty();
    }

    // The foot hubs of a cap open to more than half a turn: nothing stands on that side to crowd.
    @Test
    void crowding_openSideOfACap_isNotCounted() {
        Plan plan = plan(Jobs.windbreak().dome(1, 1).cutters(Jobs.saw(52.5)));
        List<Check> crowding = plan.checks().stream()
                .filter(c -> c.code() == Code.STRUT_CROWDING)
                .toList();
        assertThat(crowding).hasSize(2).allMatch(c -> c.margin() > 0);
        assertThat(crowding).extracting(c -> c.where().text()).noneMatch(text -> text.endsWith("holes 3 and 1"));
    }

    @Test
    void findings_mixed_haveStopsFirst() {
        Job measured = Jobs.windbreak().job();
        Plan plan = plan(Jobs.windbreak()
                .width(40)
                .cutters(Jobs.saw(45))
                .strut(Jobs.unmeasured(measured.strut().stock())));
        assertThat(plan.findings()).extracting(Finding::level).isSorted().contains(Level.STOP, Level.WARN, Level.NOTE);
        assertThat(plan.makeable()).isFalse();
    }

    @Test
    void plan_noteOnly_isMakeable() {
        Job measured = Jobs.windbreak().job();
        Plan plan = plan(Jobs.windbreak().strut(Jobs.unmeasured(measured.strut().stock())));
        assertThat(plan.findings())
                .extracting(Finding::level)
                .containsOnly(Level.NOTE)
                .hasSize(4);
        assertThat(plan.makeable()).isTrue();
    }
}
