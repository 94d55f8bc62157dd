package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.hub.Hubs;
import collarwright.plan.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Pictures are not mirrored: what stands where on paper is compared with the nodes in space, seen by an eye of the test's
 * own, never with the azimuths that the pictures were drawn from.
 */
class HandednessTest {

    private static final double WIDTH = 88;

    private final Plan plan = TrialPlans.windbreak();
    private final Hubs hubs = plan.hubs();
    private final Dome dome = hubs.dome();

    private static List<Written> written(Picture picture) {
        return Bitmaps.paint(picture, Bitmaps.blank(picture));
    }

    private static Spot middle(Written text) {
        return new Spot(text.x() + text.width() / 2, (text.top() + text.baseline()) / 2);
    }

    /** Directions from a node to its neighbours, by hole number. */
    private Map<Integer, Vec3> neighbours(int node) {
        Map<Integer, Vec3> found = new LinkedHashMap<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            if (dome.memberA(m) == node) {
                found.put(hubs.holeAtA(m), dome.node(dome.memberB(m)).minus(dome.node(node)));
            }
            if (dome.memberB(m) == node) {
                found.put(hubs.holeAtB(m), dome.node(dome.memberA(m)).minus(dome.node(node)));
            }
        }
        return found;
    }

    /** Where an eye outside the dome sees a direction, with the neighbour in hole 1 up on paper. */
    private static double seen(Vec3 axis, Vec3 first, Vec3 direction) {
        Vec3 up = first.minus(axis.times(first.dot(axis))).unit();
        // The eye looks along −axis; its right hand is forward × up.
        Vec3 right = axis.times(-1).cross(up);
        return Math.atan2(direction.dot(right), direction.dot(up));
    }

    private static void assertSameTurn(double actual, double expected) {
        assertThat(Math.abs(Math.IEEEremainder(actual - expected, 2 * Math.PI))).isLessThan(1e-6);
    }

    private static Spot number(List<Written> texts, int hole) {
        return middle(texts.stream()
                .filter(t -> t.bold() && t.text().equals(Integer.toString(hole)))
                .findFirst()
                .orElseThrow());
    }

    @Test
    void hubAndCollar_showHolesWhereAnEyeOutsideSeesTheNeighbours() {
        for (int i = 0; i < hubs.types().size(); i++) {
            int node = hubs.types().get(i).firstNode();
            Map<Integer, Vec3> neighbours = neighbours(node);
            Vec3 first = neighbours.get(1);
            var pattern = plan.book().patterns().get(i);
            for (Picture picture : Stream.of(
                            new HubPicture(plan, i, WIDTH),
                            new RingPicture(plan.job().hub().body(), pattern, WIDTH))
                    .toList()) {
                List<Written> texts = written(picture);
                Spot centre = new Spot(WIDTH / 2, WIDTH / 2 - 2);
                neighbours.forEach((hole, direction) -> {
                    Spot at = number(texts, hole);
                    assertSameTurn(
                            Math.atan2(at.x() - centre.x(), centre.y() - at.y()),
                            seen(dome.node(node), first, direction));
                });
            }
        }
    }

    @Test
    void strip_wrappedRoundTheHub_meetsTheNeighbours() {
        double outer = plan.job().hub().body().outerRadius();
        for (int i = 0; i < hubs.types().size(); i++) {
            int node = hubs.types().get(i).firstNode();
            Vec3 axis = dome.node(node);
            Map<Integer, Vec3> neighbours = neighbours(node);
            Vec3 first = neighbours.get(1);
            var pattern = plan.book().patterns().get(i);
            StripPicture strip = new StripPicture(
                    plan.job().hub().body(),
                    pattern,
                    new Figures(plan.job().shop().programUnits()),
                    180);
            List<Written> texts = written(strip);
            double scale = (180 - 2) / (2 * Math.PI * outer);
            neighbours.forEach((hole, direction) -> {
                // To the right on the outer face with TOP up is anticlockwise seen from above.
                double anticlockwise =
                        (number(texts, hole).x() - number(texts, 1).x()) / scale / outer;
                assertSameTurn(-anticlockwise, seen(axis, first, direction));
            });
        }
    }

    @Test
    void tiers_lieWhereAnEyeAboveTheDomeSeesThem() {
        List<Written> texts = written(new TierPicture(plan, 180));
        Spot centre = new Spot(90, 90);
        for (int node = 1; node < dome.nodeCount(); node++) {
            Spot at = middle(texts.get(node));
            // Up on paper is +x; an eye above, looking along −z, has −y at its right hand.
            assertSameTurn(
                    Math.atan2(at.x() - centre.x(), centre.y() - at.y()), Math.atan2(-dome.y(node), dome.x(node)));
        }
    }

    @Test
    void dome_isSeenFromOutside() {
        // A point to the right of the eye's line, as the eye sees it, lies to the right on paper.
        DomeView view = DomeView.ofDome();
        Vec3 right = view.toEye().times(-1).cross(view.up());
        assertThat(view.spot(right).x()).isBetween(1 - 1e-12, 1 + 1e-12);
        assertThat(view.spot(view.up()).y()).isBetween(-1 - 1e-12, -1 + 1e-12);
        assertThat(view.spot(view.toEye()).x()).isBetween(-1e-12, 1e-12);
    }
}
