package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a cut leaves: feet, places on one meridian, whole spheres. */
class CutLawsTest {

    private static SphereSettings drawn(Seeds draw) {
        Breakdown breakdown = new Breakdown(draw.whole(1, 4), draw.whole(0, 4));
        Base base = draw.oneOf(List.of(Base.values()));
        Up up = draw.oneOf(List.of(Up.values()));
        return new SphereSettings(base, breakdown, Subdivision.CHORDS, up);
    }

    private static Map<String, Integer> struts(Dome dome) {
        Map<String, Integer> struts = new HashMap<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            struts.merge(dome.nodeId(dome.memberA(m)), 1, Integer::sum);
            struts.merge(dome.nodeId(dome.memberB(m)), 1, Integer::sum);
        }
        return struts;
    }

    // A foot is a hub that has fewer struts than in the whole sphere; ids may be padded otherwise, so places are
    // compared.
    @Test
    void feet_areTheHubsThatLostStruts() {
        Seeds.each(60, draw -> {
            SphereSettings sphere = drawn(draw);
            Dome whole = Dome.of(new DomeSettings(sphere, new Cut.Tiers(sphere.tiers())));
            Dome cut = Dome.of(new DomeSettings(sphere, new Cut.Tiers(draw.whole(1, sphere.tiers()))));
            Map<String, Integer> before = struts(whole);
            Map<String, Integer> after = struts(cut);
            Set<Integer> lost = new TreeSet<>();
            for (int node = 0; node < cut.nodeCount(); node++) {
                int had = before.getOrDefault(whole.nodeId(node), 0);
                assertThat(whole.node(node)).isEqualTo(cut.node(node));
                if (after.getOrDefault(cut.nodeId(node), 0) < had) {
                    lost.add(node);
                }
            }
            assertThat(cut.feet()).as("%s", sphere).containsExactlyElementsOf(lost);
        });
    }

    // (2, 1) to its sixth tier: the cut takes off the lowest hub alone, and the five round it are left with five
    // struts.
    @Test
    void feet_ofTheLeftTurnedDome_areFive() {
        SphereSettings sphere =
                new SphereSettings(Base.ICOSAHEDRON, new Breakdown(2, 1), Subdivision.CHORDS, Up.VERTEX);
        Dome dome = Dome.of(new DomeSettings(sphere, new Cut.Tiers(6)));
        assertThat(dome.nodeCount()).isEqualTo(71);
        assertThat(dome.feet()).hasSize(5);
    }

    @Test
    void whole_isWhatHasNoFeet() {
        Seeds.each(60, draw -> {
            DomeSettings settings = new DomeSettings(drawn(draw), new Cut.Height(draw.between(-1, -0.6)));
            assertThat(settings.whole())
                    .as("%s", settings)
                    .isEqualTo(Dome.of(settings).feet().isEmpty());
        });
    }

    // Nodes whose turns differ by rounding alone stand by height; the mirror plane of class I and II has many.
    @Test
    void places_onOneMeridian_runFromAbove() {
        Seeds.each(60, draw -> {
            Dome dome = Dome.of(new DomeSettings(drawn(draw), new Cut.Height(draw.between(-1, 0))));
            for (int node = 1; node < dome.nodeCount(); node++) {
                if (dome.tierOf(node) == dome.tierOf(node - 1)) {
                    double more = turn(dome, node) - turn(dome, node - 1);
                    assertThat(more).isGreaterThan(-1e-9);
                    if (more < 1e-9) {
                        assertThat(dome.z(node)).isLessThanOrEqualTo(dome.z(node - 1));
                    }
                }
            }
        });
    }

    private static double turn(Dome dome, int node) {
        double x = dome.x(node);
        double y = dome.y(node);
        double turn = StrictMath.hypot(x, y) < 1e-9 ? 0 : -StrictMath.atan2(y, x);
        turn = turn < -1e-9 ? turn + 2 * StrictMath.PI : turn;
        return turn > 2 * StrictMath.PI - 1e-9 ? 0 : turn;
    }

    @Test
    void openings_keepTheFeetThatAreLeft() {
        Opening opening = new Opening(List.of("T5-01"), List.of(), java.util.Optional.empty(), List.of(), List.of());
        DomeSettings settings = new DomeSettings(
                new SphereSettings(Base.ICOSAHEDRON, new Breakdown(3, 0), Subdivision.CHORDS, Up.VERTEX),
                new Cut.Tiers(5),
                Form.SPHERE,
                new Foot.Natural(),
                false,
                List.of(opening));
        Dome open = Dome.of(settings).finished(1000, Girth.NONE, new java.util.ArrayList<>());
        assertThat(open.feet()).hasSize(14);
    }
}
