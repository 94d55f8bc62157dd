package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DomeTest {
    private static Dome dome(int frequency, int rows) {
        return Dome.of(new DomeSettings(frequency, rows));
    }

    @Test
    void dome_smallestCap_isAFiveSidedPyramid() {
        Dome dome = dome(1, 1);
        assertThat(dome.source()).isEqualTo(new DomeSettings(1, 1));
        assertThat(dome.nodeCount()).isEqualTo(6);
        assertThat(dome.memberCount()).isEqualTo(10);
        assertThat(dome.tierCount()).isEqualTo(2);
        assertThat(dome.node(0)).isEqualTo(new Vec3(0, 0, 1));
        // A neighbour of the apex lies over +x at z = 1/√5: elementary.
        assertThat(dome.x(1)).isCloseTo(2 / StrictMath.sqrt(5), within(1e-15));
        assertThat(dome.y(1)).isZero();
        assertThat(dome.z(1)).isCloseTo(1 / StrictMath.sqrt(5), within(1e-15));
        assertThat(dome.y(2)).as("places run clockwise seen from above").isNegative();
    }

    @Test
    void nodeId_tiers_arePaddedToTheWidest() {
        Dome dome = dome(3, 5);
        assertThat(dome.nodeId(0)).isEqualTo("T0-01");
        assertThat(dome.nodeId(dome.firstOfTier(3) + 6)).isEqualTo("T3-07");
        assertThat(dome.nodeId(dome.nodeCount() - 1)).isEqualTo("T5-15");
        assertThat(dome(1, 3).nodeId(11)).isEqualTo("T3-1");
        assertThat(dome(25, 30).nodeId(0)).isEqualTo("T0-001");
    }

    @Test
    void tierOf_everyNode_isWhereItStarts() {
        Dome dome = dome(4, 12);
        for (int tier = 0; tier < dome.tierCount(); tier++) {
            for (int node = dome.firstOfTier(tier); node < dome.firstOfTier(tier + 1); node++) {
                assertThat(dome.tierOf(node)).isEqualTo(tier);
            }
        }
        assertThat(dome.firstOfTier(dome.tierCount())).isEqualTo(dome.nodeCount());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void dome_wholeSphere_isTheSphereBuiltFaceByFace(int frequency) {
        Dome dome = dome(frequency, 3 * frequency);
        FaceByFaceSphere other = new FaceByFaceSphere(frequency);
        List<Vec3> nodes =
                IntStream.range(0, dome.nodeCount()).mapToObj(dome::node).toList();
        assertThat(other.points()).hasSize(dome.nodeCount()).allMatch(p -> FaceByFaceSphere.find(nodes, p) >= 0);
        List<String> ours = IntStream.range(0, dome.memberCount())
                .mapToObj(m -> dome.memberA(m) + "-" + dome.memberB(m))
                .toList();
        List<String> theirs = other.edges().stream()
                .map(e -> new int[] {
                    FaceByFaceSphere.find(nodes, other.points().get(e[0])),
                    FaceByFaceSphere.find(nodes, other.points().get(e[1]))
                })
                .map(e -> StrictMath.min(e[0], e[1]) + "-" + StrictMath.max(e[0], e[1]))
                .toList();
        assertThat(ours).containsExactlyInAnyOrderElementsOf(theirs);
    }

    @Test
    void foot_halfDome_standsOnTheEquator() {
        Dome dome = dome(4, 6);
        assertThat(dome.lowestZ()).isCloseTo(0, within(1e-15));
        assertThat(dome.footRadius()).isCloseTo(1, within(1e-15));
    }

    @Test
    void foot_wholeSphere_hasNoFloor() {
        assertThat(dome(3, 9).footRadius()).isZero();
        assertThat(dome(3, 9).lowestZ()).isEqualTo(-1);
    }

    @Test
    void foot_everyPortion_isLowestOfAllNodes() {
        for (int n = 1; n <= 10; n++) {
            for (int rows = 1; rows < 3 * n; rows++) {
                Dome dome = dome(n, rows);
                double lowest = IntStream.range(0, dome.nodeCount())
                        .mapToDouble(dome::z)
                        .min()
                        .orElseThrow();
                double widest = IntStream.range(dome.firstOfTier(rows), dome.nodeCount())
                        .mapToDouble(i -> new Vec3(dome.x(i), dome.y(i), 0).norm())
                        .max()
                        .orElseThrow();
                assertThat(dome.lowestZ()).as("frequency %d, rows %d", n, rows).isEqualTo(lowest);
                assertThat(dome.footRadius()).isCloseTo(widest, within(1e-15));
            }
        }
    }

    @Test
    void dome_noSuchNodeOrMember_isRefused() {
        Dome dome = dome(2, 3);
        assertThatThrownBy(() -> dome.node(26)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> dome.node(-1)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> dome.chordFactor(65)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
