package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every dome: all portions of frequencies 1 to 6, and some of the large ones. */
class DomeLawsTest {
    static Stream<Dome> domes() {
        Stream<DomeSettings> small = IntStream.rangeClosed(1, 6)
                .boxed()
                .flatMap(n -> IntStream.rangeClosed(1, 3 * n).mapToObj(rows -> new DomeSettings(n, rows)));
        Stream<DomeSettings> large = Stream.of(
                new DomeSettings(9, 14), new DomeSettings(16, 48), new DomeSettings(17, 30), new DomeSettings(64, 192));
        return Stream.concat(small, large).map(Dome::of);
    }

    @ParameterizedTest
    @MethodSource("domes")
    void nodes_everyDome_areUniqueAndOnTheSphere(Dome dome) {
        Set<String> ids = new HashSet<>();
        for (int node = 0; node < dome.nodeCount(); node++) {
            assertThat(dome.node(node).norm()).isCloseTo(1, within(1e-15));
            assertThat(ids.add(dome.nodeId(node))).as(dome.nodeId(node)).isTrue();
        }
        assertThat(ids.stream()
                        .map(id -> id.substring(id.indexOf('-')))
                        .map(String::length)
                        .distinct())
                .as("places are padded to one width")
                .hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("domes")
    void tiers_everyDome_countStrutsFromTheApex(Dome dome) {
        Faces faces = Faces.of(dome);
        int[] steps = new int[dome.nodeCount()];
        Arrays.fill(steps, -1);
        steps[0] = 0;
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        while (!next.isEmpty()) {
            int node = next.remove();
            for (int other : faces.neighbours(node)) {
                if (steps[other] < 0) {
                    steps[other] = steps[node] + 1;
                    next.add(other);
                }
            }
        }
        for (int node = 0; node < dome.nodeCount(); node++) {
            assertThat(dome.tierOf(node)).isEqualTo(steps[node]);
        }
        assertThat(dome.tierCount()).isEqualTo(dome.settings().rows() + 1);
    }

    @ParameterizedTest
    @MethodSource("domes")
    void places_everyTier_runClockwiseFromTheMeridian(Dome dome) {
        for (int tier = 1; tier < dome.tierCount(); tier++) {
            double before = -1e-12;
            for (int node = dome.firstOfTier(tier); node < dome.firstOfTier(tier + 1); node++) {
                // Clockwise seen from above: against the usual sense of the angle from +x to +y.
                double angle = -StrictMath.atan2(dome.y(node), dome.x(node));
                angle = angle < -1e-12 ? angle + 2 * StrictMath.PI : angle;
                assertThat(angle).as(dome.nodeId(node)).isGreaterThan(before);
                before = angle;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void members_everyDome_standOnceInOrder(Dome dome) {
        long before = -1;
        for (int m = 0; m < dome.memberCount(); m++) {
            assertThat(dome.memberA(m)).isLessThan(dome.memberB(m));
            long pair = (long) dome.memberA(m) * dome.nodeCount() + dome.memberB(m);
            assertThat(pair).isGreaterThan(before);
            before = pair;
            assertThat(dome.chordFactor(m))
                    .isCloseTo(
                            dome.node(dome.memberB(m))
                                    .minus(dome.node(dome.memberA(m)))
                                    .norm(),
                            within(1e-15));
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void faces_everyDome_fulfilEuler(Dome dome) {
        // A dome is a disc, V − E + F = 1; a whole sphere has 2. Textbook (Euler).
        int euler = dome.settings().whole() ? 2 : 1;
        assertThat(dome.nodeCount() - dome.memberCount() + Faces.of(dome).count())
                .isEqualTo(euler);
    }
}
