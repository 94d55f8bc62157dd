package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A vertex, an edge or a face up. */
class UpTest {

    // The corners of the base, highest first.
    private static List<Vec3> highest(Base base, Up up) {
        SphereNet solid = new SphereNet(base, new Breakdown(1, 0), Subdivision.CHORDS, up);
        return IntStream.range(0, solid.nodeCount())
                .mapToObj(solid::node)
                .sorted(Comparator.comparingDouble(Vec3::z).reversed())
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void vertexUp_anyBase_hasOneHighestCornerAndOneOverTheMeridian(Base base) {
        List<Vec3> corners = highest(base, Up.VERTEX);
        assertThat(corners.get(0)).isEqualTo(new Vec3(0, 0, 1));
        assertThat(corners.get(1).z()).isLessThan(0.9);
        assertThat(corners).anyMatch(c -> c.x() > 0.5 && StrictMath.abs(c.y()) < 1e-15);
        assertThat(Up.VERTEX.turned(base)).isEqualTo(base.corners());
    }

    @ParameterizedTest
    @EnumSource
    void edgeUp_anyBase_hasTwoHighestCornersOverTheXAxis(Base base) {
        List<Vec3> corners = highest(base, Up.EDGE);
        Vec3 one = corners.get(0);
        Vec3 other = corners.get(1);
        assertThat(one.z())
                .isCloseTo(other.z(), within(1e-15))
                .isGreaterThan(corners.get(2).z() + 0.1);
        assertThat(one.x()).isCloseTo(-other.x(), within(1e-15));
        assertThat(one.y()).isCloseTo(0, within(1e-15));
        assertThat(other.y()).isCloseTo(0, within(1e-15));
        assertThat(Up.EDGE.turned(base).get(0).x()).isNegative();
        assertThat(Up.EDGE.turned(base).get(1).x()).isPositive();
        assertThat(Up.EDGE.turned(base).get(1).z()).isCloseTo(one.z(), within(1e-15));
    }

    @ParameterizedTest
    @EnumSource
    void faceUp_anyBase_hasThreeHighestCornersOneOverTheMeridian(Base base) {
        List<Vec3> corners = highest(base, Up.FACE);
        for (int i = 1; i < 3; i++) {
            assertThat(corners.get(i).z()).isCloseTo(corners.get(0).z(), within(1e-15));
        }
        assertThat(corners.get(2).z()).isGreaterThan(corners.get(3).z() + 0.1);
        Vec3 first = Up.FACE.turned(base).get(base.faces().get(0)[0]);
        assertThat(first.z()).isCloseTo(corners.get(0).z(), within(1e-15));
        assertThat(first.x()).isPositive();
        assertThat(first.y()).isCloseTo(0, within(1e-15));
    }

    // For circumradius 1 the middle of an edge is at the midradius, the middle of a face at the inradius: textbook
    // figures.
    @Test
    void heights_ofTheHighestCorners_areTheSolidsMidradiusAndInradius() {
        double phi = (1 + StrictMath.sqrt(5)) / 2;
        double ico = StrictMath.sqrt(phi * phi + 1);
        assertHeights(Base.ICOSAHEDRON, phi / ico, phi * phi / StrictMath.sqrt(3) / ico);
        assertHeights(Base.OCTAHEDRON, StrictMath.sqrt(0.5), StrictMath.sqrt(1.0 / 3));
        assertHeights(Base.TETRAHEDRON, StrictMath.sqrt(1.0 / 3), 1.0 / 3);
    }

    private static void assertHeights(Base base, double midradius, double inradius) {
        assertThat(highest(base, Up.EDGE).get(0).z()).isCloseTo(midradius, within(1e-15));
        assertThat(highest(base, Up.FACE).get(0).z()).isCloseTo(inradius, within(1e-15));
    }

    @Test
    void turning_anyNet_keepsDistancesAndHandedness() {
        Seeds.each(60, draw -> {
            Base base = draw.oneOf(List.of(Base.values()));
            boolean arcs = draw.coin();
            Breakdown breakdown = new Breakdown(draw.whole(1, 9), arcs ? 0 : draw.whole(0, 9));
            Subdivision subdivision = arcs ? Subdivision.ARCS : Subdivision.CHORDS;
            SphereNet before = new SphereNet(base, breakdown, subdivision, Up.VERTEX);
            SphereNet after = new SphereNet(base, breakdown, subdivision, draw.coin() ? Up.EDGE : Up.FACE);
            assertThat(NodeFinder.segments(after)).isEqualTo(NodeFinder.segments(before));
            for (int k = 0; k < 100; k++) {
                int a = draw.whole(0, before.nodeCount() - 1);
                int b = draw.whole(0, before.nodeCount() - 1);
                int c = draw.whole(0, before.nodeCount() - 1);
                assertThat(after.node(a).minus(after.node(b)).norm())
                        .isCloseTo(before.node(a).minus(before.node(b)).norm(), within(2e-15));
                assertThat(volume(after, a, b, c)).isCloseTo(volume(before, a, b, c), within(4e-15));
            }
        });
    }

    private static double volume(SphereNet net, int a, int b, int c) {
        return net.node(a).dot(net.node(b).cross(net.node(c)));
    }

    // A coordinate that is 0 in geometry comes out as 0 but for rounding, never as something in between.
    @Test
    void coordinates_nearZero_areZeroButForRounding() {
        Seeds.each(60, draw -> {
            boolean arcs = draw.coin();
            SphereNet net = new SphereNet(
                    draw.oneOf(List.of(Base.values())),
                    new Breakdown(draw.whole(1, 16), arcs ? 0 : draw.whole(0, 16)),
                    arcs ? Subdivision.ARCS : Subdivision.CHORDS,
                    draw.oneOf(List.of(Up.values())));
            for (double coordinate : net.coordinates()) {
                double size = StrictMath.abs(coordinate);
                assertThat(size < 1e-15 || size > 1e-9).as("%s", coordinate).isTrue();
            }
        });
    }
}
