package collarwright.plan;

import static collarwright.plan.Plans.found;
import static collarwright.plan.Plans.hinted;
import static collarwright.plan.Plans.least;
import static collarwright.plan.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.assembly.Assembly;
import collarwright.assembly.DrawnRooms;
import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.hub.Hubs;
import collarwright.job.Limits;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AssemblyChecksTest {

    private static RoundStock ring(double od) {
        return Jobs.pipe("ring", Interval.of(od), Interval.of(3));
    }

    /** Thin struts in collars of 200.2 mm. */
    private static Jobs thin(double ring) {
        return Jobs.windbreak()
                .strut(Jobs.pipe("thin", Interval.of(20), Interval.of(2)))
                .cutters(Jobs.saw(22), Jobs.saw(24))
                .ring(ring(ring), 50);
    }

    @Test
    void windbreak_goesTogether_andSaysByHowMuch() {
        Plan plan = plan(Jobs.windbreak());
        assertThat(plan.checks()).filteredOn(c -> c.code() == Code.STRUT_TRAVEL).hasSize(3);
        assertThat(plan.checks()).filteredOn(c -> c.code() == Code.RING_LAST).hasSize(6);
        assertThat(least(plan, Code.STRUT_TRAVEL)).isBetween(99.0, 102.0);
        assertThat(least(plan, Code.RING_LAST)).isCloseTo(2, within(1e-9));
        Limits more = new Limits(0, 0.5, 0, 0.5, 0.05, 1, 12);
        Check wide = plan(Jobs.windbreak().limits(more)).checks().stream()
                .filter(c -> c.code() == Code.STRUT_TRAVEL)
                .findFirst()
                .orElseThrow();
        Check usual = plan.checks().stream()
                .filter(c -> c.code() == Code.STRUT_TRAVEL)
                .findFirst()
                .orElseThrow();
        assertThat(wide.limits().warn() - usual.limits().warn()).isCloseTo(10, within(1e-9));
    }

    @Test
    void smallRing_stops_andEitherHintIsACure() {
        Finding stuck = found(plan(thin(45)), Code.ASSEMBLY_STUCK).get(0);
        assertThat(stuck.level()).isEqualTo(Level.STOP);
        double ring = hinted(stuck, "a centre ring of at least ");
        assertThat(found(plan(thin(ring)), Code.STRUT_TRAVEL)).isEmpty();
        assertThat(found(plan(thin(ring - 0.4)), Code.STRUT_TRAVEL)).isNotEmpty();
        double collar = hinted(stuck, "or a collar pipe of at most ");
        assertThat(found(plan(thin(45).collar(Plans.collar(collar - 0.1))), Code.ASSEMBLY_STUCK))
                .isEmpty();
    }

    @Test
    void smallRing_strutsThatMayBow_warns() {
        Material willow = new Material("willow", "willow", false, 500, 0.02);
        RoundStock rods = Jobs.of(willow, Jobs.pipe("rods", Interval.of(20), Interval.of(2)));
        Plan plan = plan(thin(45).strut(rods));
        assertThat(plan.makeable()).isTrue();
        assertThat(found(plan, Code.ASSEMBLY_BOW)).isNotEmpty().allSatisfy(f -> {
            assertThat(f.level()).isEqualTo(Level.WARN);
            assertThat(f.found()).contains("2.00 % that are allowed");
        });
        assertThat(found(plan, Code.ASSEMBLY_STUCK)).isEmpty();
    }

    // The ring is 4.4 mm thicker than nominal at its worst: 0.2 mm more than twice the gap.
    @Test
    void ringThickerThanTheGap_stops() {
        RoundStock worst = Jobs.pipe("ring", new Interval(89, 90, 94.4), Interval.of(4));
        Plan plan = plan(Jobs.windbreak().ring(worst, 50));
        assertThat(found(plan, Code.RING_LAST)).isNotEmpty().allSatisfy(f -> {
            assertThat(f.level()).isEqualTo(Level.STOP);
            assertThat(f.hints().get(0)).contains("0.2 mm larger");
        });
    }

    /** Rooms are drawn until a frame can go together only with a part in the air; what is told is counted by walking it. */
    @Test
    void partThatHangsInTheAir_isToldWithItsStruts() {
        Plan plan = plan(Jobs.windbreak().dome(2, 3));
        int[] held = new int[2];
        Seeds.each(400, draw -> {
            Assembly drawn = DrawnRooms.assembly(plan.hubs(), plan.assembly().orElseThrow(), draw);
            boolean stuck = !drawn.order().steps(Way.STUCK).isEmpty();
            int hanging = stuck ? 0 : hanging(plan.hubs(), drawn);
            List<Finding> told = new AssemblyChecks(plan.job(), plan.hubs(), plan.struts(), plan.book(), drawn)
                    .findings().stream()
                            .filter(f -> f.code() == Code.ASSEMBLY_HELD)
                            .toList();
            assertThat(told).hasSize(hanging > 0 ? 1 : 0).allSatisfy(f -> {
                assertThat(f.level()).isEqualTo(Level.WARN);
                assertThat(f.found()).startsWith(hanging + " struts join parts that do not reach the ground yet");
                assertThat(f.hints().get(0)).startsWith("prop these parts up");
            });
            held[hanging > 0 ? 1 : 0]++;
        });
        assertThat(held[0]).isPositive();
        assertThat(held[1]).isPositive();
    }

    // Struts that, as they go in, hang together with no foot.
    private static int hanging(Hubs hubs, Assembly assembly) {
        Set<Integer> in = new LinkedHashSet<>();
        int hanging = 0;
        for (RaisingStep step : assembly.order().steps()) {
            in.add(step.member());
            Set<Integer> grounded = new HashSet<>(hubs.dome().feet());
            boolean grown = true;
            while (grown) {
                grown = false;
                for (int m : in) {
                    if (grounded.contains(hubs.nodeAtA(m)) != grounded.contains(hubs.nodeAtB(m))) {
                        grounded.addAll(List.of(hubs.nodeAtA(m), hubs.nodeAtB(m)));
                        grown = true;
                    }
                }
            }
            hanging += grounded.contains(hubs.nodeAtA(step.member())) ? 0 : 1;
        }
        return hanging;
    }

    @Test
    void crowdedHubs_areNotAskedForAnOrder() {
        Plan plan = plan(Jobs.windbreak().ring(ring(40), 50));
        assertThat(found(plan, Code.STRUT_CROWDING)).isNotEmpty();
        assertThat(plan.assembly()).isEmpty();
    }
}
