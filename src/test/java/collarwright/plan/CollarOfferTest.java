package collarwright.plan;

import static collarwright.plan.Plans.collar;
import static collarwright.plan.Plans.found;
import static collarwright.plan.Plans.hinted;
import static collarwright.plan.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CollarOfferTest {
    @Test
    void tooWide_strutThickerThanTheBore_offersThePipeThatWouldDo() {
        Jobs jobs = Jobs.windbreak().collar(collar(50));
        List<RoundStock> known =
                IntStream.rangeClosed(4, 40).mapToObj(i -> collar(10.0 * i)).toList();
        Plan plan = Planner.plan(jobs.job(), known);
        Finding finding = found(plan, Code.HOLE_TOO_WIDE).get(0);
        assertThat(finding.where().text()).isEqualTo("collar");
        assertThat(finding.expected()).isEqualTo("a bore wider than the strut, 40.20 mm");
        assertThat(finding.found()).isEqualTo("33.80 mm");
        assertThat(finding.hints()).hasSize(2);
        double offered = hinted(finding, "the smallest known pipe with room for these holes and this ring is pvc ");
        assertThat(offered % 10).isZero();
        // It would do, and none that is smaller would.
        assertThat(plan(jobs.collar(collar(offered))).makeable()).isTrue();
        for (double od = 60; od < offered; od += 10) {
            assertThat(plan(jobs.collar(collar(od))).makeable()).as("%s", od).isFalse();
        }
    }

    @Test
    void tooWide_noHoleLetsTheStrutLean_isSaid() {
        // 2v needs 18° for its longer strut: a 90 mm strut then needs more than a bore of 95 mm.
        Jobs jobs = Jobs.windbreak()
                .dome(2, 3)
                .strut(Jobs.pipe("thick", Interval.of(90), Interval.of(3)))
                .collar(Jobs.pipe("tight", Interval.of(105), Interval.of(5)))
                .cutters(Jobs.saw(94.9));
        List<Finding> findings = found(plan(jobs), Code.HOLE_TOO_WIDE);
        assertThat(findings).isNotEmpty();
        assertThat(findings.get(0).expected()).isEqualTo("a hole narrower than the collar's bore, 95.00 mm");
        assertThat(findings.get(0).hints()).containsExactly("take a wider collar pipe or a thinner strut");
    }

    @Test
    void tooWide_noHoleLetsTheStrutLean_offersAPipeToo() {
        Jobs jobs = Jobs.windbreak()
                .dome(2, 3)
                .strut(Jobs.pipe("thick", Interval.of(90), Interval.of(3)))
                .collar(Jobs.pipe("tight", Interval.of(105), Interval.of(5)))
                .cutters(Jobs.saw(94.9), Jobs.saw(97), Jobs.saw(98));
        Plan plan = Planner.plan(jobs.job(), List.of(collar(300), collar(320), collar(500)));
        assertThat(found(plan, Code.HOLE_TOO_WIDE))
                .isNotEmpty()
                .allMatch(f -> f.hints().get(0).contains("pvc 300.0"));
    }

    @Test
    void offer_onlyOtherMaterialOrBars_isNone() {
        Material steel = new Material("steel", "steel", false, 7850);
        RoundStock bar = collar(200);
        RoundStock solid = new RoundStock(
                "bar", "bar", bar.material(), bar.od(), java.util.Optional.empty(), true, true, 0, List.of(), "test");
        Plan plan = Planner.plan(
                Jobs.windbreak().collar(collar(50)).job(), List.of(Jobs.of(steel, collar(200)), solid, collar(45)));
        assertThat(found(plan, Code.HOLE_TOO_WIDE).get(0).hints()).containsExactly("take a wider collar pipe");
    }

    @Test
    void offer_pipeNarrowerThanTheStrut_isPassedOver() {
        Jobs jobs = Jobs.windbreak().collar(collar(50)).ring(Jobs.pipe("r", Interval.of(12), Interval.of(2)), 50);
        Plan plan = Planner.plan(jobs.job(), List.of(collar(45), collar(50), collar(300)));
        assertThat(found(plan, Code.HOLE_TOO_WIDE).get(0).hints().get(0)).contains("pvc 300.0");
    }

    @Test
    void offer_rackWithoutItsCutter_isNone() {
        Plan plan = Planner.plan(
                Jobs.windbreak().collar(collar(50)).cutters(Jobs.saw(30)).job(), List.of(collar(200)));
        assertThat(found(plan, Code.HOLE_TOO_WIDE).get(0).hints()).hasSize(1);
    }

    @Test
    void offer_ringThatFillsThePipe_isNone() {
        RoundStock ring = Jobs.pipe("r", Interval.of(190), Interval.of(4));
        Plan plan = Planner.plan(Jobs.windbreak().ring(ring, 50).job(), List.of(collar(202), collar(190)));
        assertThat(found(plan, Code.RING_CLEARANCE).get(0).hints()).hasSize(1);
        assertThat(found(plan, Code.STRUT_ENGAGEMENT)).isNotEmpty();
    }

    @Test
    void offer_manyFindings_standsFirstInEach() {
        Jobs jobs = Jobs.windbreak().collar(collar(104)).ring(Jobs.pipe("r", Interval.of(60), Interval.of(3)), 50);
        Plan plan = Planner.plan(jobs.job(), List.of(collar(300), collar(200)));
        List<Finding> stops =
                plan.findings().stream().filter(f -> f.level() == Level.STOP).toList();
        // A wider pipe does not keep the ends apart, a larger ring does; that is no reason to offer none.
        assertThat(stops).extracting(Finding::code).contains(Code.STRUT_CROWDING);
        assertThat(stops)
                .filteredOn(f -> f.code() != Code.STRUT_CROWDING)
                .isNotEmpty()
                .allMatch(
                        f -> f.hints()
                                .get(0)
                                .startsWith(
                                        "the smallest known pipe with room for these holes and this ring is pvc 200.0 (pvc 200.0 pipe, nominal"));
    }
}
