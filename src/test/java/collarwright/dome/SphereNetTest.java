package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Counts, order and symmetry of whole sphere nets. */
class SphereNetTest {

    // Nodes per T. A. Siber, Icosadeltahedral Geometry of Geodesic Domes, Fullerenes and Viruses: A Tutorial on the
    // T-Number, Symmetry 12(4):556, 2020, for the icosahedron (V = 10T + 2, E = 30T, F = 20T); the others from memory
    // and
    // by Euler's formula.
    private static final Map<Base, Integer> PER_T =
            Map.of(Base.ICOSAHEDRON, 10, Base.OCTAHEDRON, 4, Base.TETRAHEDRON, 2);
    private static final Map<Base, Integer> STRUTS_AT_CORNER =
            Map.of(Base.ICOSAHEDRON, 5, Base.OCTAHEDRON, 4, Base.TETRAHEDRON, 3);
    private static final Map<Base, Integer> CORNERS =
            Map.of(Base.ICOSAHEDRON, 12, Base.OCTAHEDRON, 6, Base.TETRAHEDRON, 4);

    static Stream<Arguments> everyNet() {
        return Stream.of(Base.values()).flatMap(base -> Stream.of(Up.values()).map(up -> Arguments.of(base, up)));
    }

    @ParameterizedTest
    @EnumSource
    void counts_bOneToNineCZeroToNine_followFromT(Base base) {
        for (int b = 1; b <= 9; b++) {
            for (int c = 0; c <= 9; c++) {
                SphereNet net = new SphereNet(base, new Breakdown(b, c));
                int t = b * b + b * c + c * c;
                assertThat(net.nodeCount()).as("%s (%s, %s)", base, b, c).isEqualTo(PER_T.get(base) * t + 2);
                assertThat(net.edgeCount()).as("%s (%s, %s)", base, b, c).isEqualTo(3 * PER_T.get(base) * t);
                assertThat(base.nodesPerT()).isEqualTo(PER_T.get(base));
            }
        }
    }

    // V − E + F = 2 (Euler, textbook), F counted by going round every face.
    @ParameterizedTest
    @MethodSource("everyNet")
    void faces_bOneToNineCZeroToNine_areTrianglesAndFulfilEuler(Base base, Up up) {
        for (int b = 1; b <= 9; b++) {
            for (int c = 0; c <= 9; c++) {
                closes(base, new SphereNet(base, new Breakdown(b, c), Subdivision.CHORDS, up));
            }
            closes(base, new SphereNet(base, new Breakdown(b, 0), Subdivision.ARCS, up));
        }
    }

    private static void closes(Base base, SphereNet net) {
        NetWalk walk = new NetWalk(net);
        List<List<Integer>> faces = walk.faces();
        assertThat(net.nodeCount() - net.edgeCount() + faces.size()).isEqualTo(2);
        for (List<Integer> face : faces) {
            assertThat(face).hasSize(3);
            Vec3 a = net.node(face.get(0));
            assertThat(a.dot(net.node(face.get(1)).cross(net.node(face.get(2)))))
                    .as("counter-clockwise seen from outside")
                    .isPositive();
        }
        assertThat(walk.withStruts(STRUTS_AT_CORNER.get(base))).hasSize(CORNERS.get(base));
        assertThat(walk.withStruts(6)).hasSize(net.nodeCount() - CORNERS.get(base));
    }

    @ParameterizedTest
    @EnumSource
    void walk_bStepsThenLeftAndCSteps_leadsFromCornerToCorner(Base base) {
        for (int b = 1; b <= 5; b++) {
            for (int c = 0; c <= 5; c++) {
                NetWalk walk = new NetWalk(new SphereNet(base, new Breakdown(b, c)));
                List<Integer> corners = walk.withStruts(STRUTS_AT_CORNER.get(base));
                for (int corner : corners) {
                    for (int first : walk.neighbours(corner)) {
                        assertThat(walk(walk, corner, first, b, c, 1))
                                .as("%s (%s, %s)", base, b, c)
                                .isIn(corners);
                        if (c > 0 && b != c) {
                            assertThat(walk(walk, corner, first, b, c, -1))
                                    .as("%s (%s, %s), turned right", base, b, c)
                                    .isNotIn(corners);
                        }
                    }
                }
            }
        }
    }

    private static int walk(NetWalk walk, int corner, int first, int b, int c, int left) {
        int from = corner;
        int at = first;
        for (int step = 1; step < b + c; step++) {
            int next = walk.onward(from, at, step == b ? left : 0);
            from = at;
            at = next;
        }
        return at;
    }

    // M. J. Wenninger, Spherical Models, Cambridge University Press, 1979 (as told in Wikipedia, "Geodesic
    // polyhedron"):
    // classes I and II are their own mirror images, class III is not.
    @ParameterizedTest
    @EnumSource
    void mirror_ofBAndC_isCAndB(Base base) {
        for (int b = 1; b <= 6; b++) {
            for (int c = 1; c <= 6; c++) {
                SphereNet net = new SphereNet(base, new Breakdown(b, c));
                SphereNet swapped = new SphereNet(base, new Breakdown(c, b));
                assertThat(new NodeFinder(net, 1e-12).segments(swapped, v -> new Vec3(v.x(), -v.y(), v.z())))
                        .as("%s (%s, %s)", base, b, c)
                        .isEqualTo(NodeFinder.segments(net));
                boolean itsOwn = new NodeFinder(net, 1e-12)
                        .segments(net, v -> new Vec3(v.x(), -v.y(), v.z()))
                        .equals(NodeFinder.segments(net));
                assertThat(itsOwn).as("%s (%s, %s)", base, b, c).isEqualTo(b == c);
            }
        }
    }

    @Test
    void turn_anyNetByItsSymmetry_givesTheSameSegments() {
        Seeds.each(60, draw -> {
            Base base = draw.oneOf(List.of(Base.values()));
            Up up = draw.oneOf(List.of(Up.values()));
            boolean arcs = draw.coin();
            Breakdown breakdown = new Breakdown(draw.whole(1, 12), arcs ? 0 : draw.whole(0, 12));
            SphereNet net = new SphereNet(base, breakdown, arcs ? Subdivision.ARCS : Subdivision.CHORDS, up);
            int times = switch (up) {
                case VERTEX -> STRUTS_AT_CORNER.get(base);
                case EDGE -> 2;
                case FACE -> 3;
            };
            double angle = 2 * StrictMath.PI * draw.whole(1, times - 1) / times;
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            assertThat(new NodeFinder(net, 1e-12)
                            .segments(net, v -> new Vec3(cos * v.x() - sin * v.y(), sin * v.x() + cos * v.y(), v.z())))
                    .as("%s %s %s arcs %s", base, breakdown, up, arcs)
                    .isEqualTo(NodeFinder.segments(net));
        });
    }

    @Test
    void nodes_anyNet_lieOnTheSphereAndCoordinatesAreTheirs() {
        Seeds.each(60, draw -> {
            Breakdown breakdown = new Breakdown(draw.whole(1, 30), draw.whole(0, 30));
            SphereNet net = new SphereNet(
                    draw.oneOf(List.of(Base.values())),
                    breakdown,
                    breakdown.c() == 0 ? Subdivision.ARCS : Subdivision.CHORDS,
                    draw.oneOf(List.of(Up.values())));
            double[] coordinates = net.coordinates();
            assertThat(coordinates).hasSize(3 * net.nodeCount());
            for (int node = 0; node < net.nodeCount(); node++) {
                assertThat(net.node(node).norm()).isCloseTo(1, within(1e-15));
                assertThat(net.node(node))
                        .isEqualTo(
                                new Vec3(coordinates[3 * node], coordinates[3 * node + 1], coordinates[3 * node + 2]));
            }
        });
    }

    @Test
    void edges_anyNet_standOnceInTheOrderOfTheirNodes() {
        Seeds.each(30, draw -> {
            SphereNet net = new SphereNet(
                    draw.oneOf(List.of(Base.values())), new Breakdown(draw.whole(1, 20), draw.whole(0, 20)));
            long before = -1;
            for (int edge = 0; edge < net.edgeCount(); edge++) {
                assertThat(net.edgeA(edge)).isLessThan(net.edgeB(edge));
                long pair = (long) net.edgeA(edge) * net.nodeCount() + net.edgeB(edge);
                assertThat(pair).isGreaterThan(before);
                before = pair;
            }
        });
    }

    @Test
    void coordinates_changedByTheCaller_leaveTheNetAlone() {
        SphereNet net = new SphereNet(Base.OCTAHEDRON, new Breakdown(2, 1));
        Vec3 before = net.node(0);
        net.coordinates()[0] = 7;
        assertThat(net.node(0)).isEqualTo(before);
    }

    @Test
    void largest_fullIcosahedron_closes() {
        closes(Base.ICOSAHEDRON, new SphereNet(Base.ICOSAHEDRON, new Breakdown(158, 0)));
    }

    @Test
    void arcs_ofClassTwoOrThree_areRefused() {
        for (int c = 1; c <= 3; c++) {
            Breakdown breakdown = new Breakdown(2, c);
            assertThatThrownBy(() -> new SphereNet(Base.ICOSAHEDRON, breakdown, Subdivision.ARCS, Up.VERTEX))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("class I");
        }
    }
}
