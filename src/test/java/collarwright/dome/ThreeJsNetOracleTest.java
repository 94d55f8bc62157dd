package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Vec3;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ThreeJs;
import collarwright.testing.ThreeJs.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole nets beside IcosahedronGeometry and its like, and beside ConvexHull (three.js, npm package three). */
@NeedsChecker(Checker.THREE_JS)
class ThreeJsNetOracleTest {

    // Its numbers are 32-bit floats.
    private static final double SAME = 2e-6;
    private static final double FLAT = 1e-12;

    @ParameterizedTest
    @CsvSource({"ICOSAHEDRON, ICO", "OCTAHEDRON, OCTA", "TETRAHEDRON, TETRA"})
    void classOne_turnedOntoTheirs_hasTheSameNodesAndEdges(Base base, Solid solid) {
        for (int frequency : new int[] {1, 2, 3, 4, 5, 6, 7, 8, 13}) {
            SphereNet net = new SphereNet(base, new Breakdown(frequency, 0));
            ThreeJs.Sphere theirs = ThreeJs.sphere(solid, frequency);
            List<Vec3> points = theirs.points().stream()
                    .map(p -> new Vec3(p.x(), p.y(), p.z()))
                    .toList();
            NodeFinder finder = new NodeFinder(net, SAME);
            Vec3[] frame = theirFrame(points, theirs.edges(), base);
            List<Integer> ours = points.stream()
                    .map(p -> finder.at(new Vec3(p.dot(frame[0]), p.dot(frame[1]), p.dot(frame[2]))))
                    .toList();
            assertThat(ours).as("%s, %s", base, frequency).doesNotContain(-1).doesNotHaveDuplicates();
            assertThat(ours).hasSize(net.nodeCount());
            Set<List<Integer>> edges = new HashSet<>();
            theirs.edges().forEach(e -> edges.add(pair(ours.get(e.from()), ours.get(e.to()))));
            assertThat(edges).as("%s, %s", base, frequency).isEqualTo(NodeFinder.segments(net));
        }
    }

    private static List<Integer> pair(int a, int b) {
        return List.of(StrictMath.min(a, b), StrictMath.max(a, b));
    }

    // Our frame among their points: z through a corner of the solid (not six struts), x over the nearest other corner.
    // Any
    // two neighbouring corners do, since turning the solid brings each such pair onto each other.
    private static Vec3[] theirFrame(List<Vec3> points, List<ThreeJs.Edge> edges, Base base) {
        int[] struts = new int[points.size()];
        edges.forEach(e -> {
            struts[e.from()]++;
            struts[e.to()]++;
        });
        List<Vec3> corners = new ArrayList<>(IntStream.range(0, struts.length)
                .filter(i -> struts[i] != 6)
                .mapToObj(points::get)
                .toList());
        assertThat(corners).hasSize(base.nodesPerT() + 2);
        Vec3 up = corners.remove(0).unit();
        Vec3 near = corners.stream()
                .min(Comparator.comparingDouble(c -> c.minus(up).norm()))
                .orElseThrow();
        Vec3 meridian = near.minus(up.times(near.dot(up))).unit();
        return new Vec3[] {meridian, up.cross(meridian), up};
    }

    private static final List<int[]> BREAKDOWNS = Stream.concat(
                    IntStream.rangeClosed(1, 4)
                            .boxed()
                            .flatMap(b -> IntStream.rangeClosed(0, 4).mapToObj(c -> new int[] {b, c})),
                    Stream.of(new int[] {5, 0}, new int[] {6, 0}, new int[] {6, 1}, new int[] {1, 6}, new int[] {5, 5}))
            .toList();

    @ParameterizedTest
    @EnumSource(names = {"ICOSAHEDRON", "OCTAHEDRON"})
    void hull_ofTheNodes_hasTheNetsEdges(Base base) {
        for (int[] pair : BREAKDOWNS) {
            SphereNet net = new SphereNet(base, new Breakdown(pair[0], pair[1]));
            assertThat(hull(net)).as("%s (%s, %s)", base, pair[0], pair[1]).isEqualTo(NodeFinder.segments(net));
        }
    }

    // The tetrahedron's triangles are pushed out so unevenly that some nets fold inward: their edges that fold inward
    // are
    // off the hull, and an edge between two triangles of one plane may be.
    @Test
    void hull_ofATetrahedronsNodes_leavesOutTheEdgesThatFoldInward() {
        for (int[] pair : BREAKDOWNS) {
            SphereNet net = new SphereNet(Base.TETRAHEDRON, new Breakdown(pair[0], pair[1]));
            Set<List<Integer>> left = NodeFinder.segments(net);
            left.removeAll(hull(net));
            Map<List<Integer>, Double> folds = folds(net);
            folds.forEach((edge, fold) -> {
                String where = "(" + pair[0] + ", " + pair[1] + ") " + edge + " folds " + fold;
                if (fold > FLAT) {
                    assertThat(left).as(where).contains(edge);
                } else if (fold < -FLAT) {
                    assertThat(left).as(where).doesNotContain(edge);
                }
            });
        }
    }

    // Six times the volume of the four nodes of the two triangles at an edge, above 0 where they fold inward.
    private static Map<List<Integer>, Double> folds(SphereNet net) {
        Map<List<Integer>, Integer> third = new HashMap<>();
        for (List<Integer> face : new NetWalk(net).faces()) {
            for (int k = 0; k < 3; k++) {
                third.put(List.of(face.get(k), face.get((k + 1) % 3)), face.get((k + 2) % 3));
            }
        }
        Map<List<Integer>, Double> folds = new HashMap<>();
        for (List<Integer> edge : NodeFinder.segments(net)) {
            Vec3 a = net.node(edge.get(0));
            Vec3 b = net.node(edge.get(1)).minus(a);
            Vec3 left = net.node(third.get(edge)).minus(a);
            Vec3 right = net.node(third.get(List.of(edge.get(1), edge.get(0)))).minus(a);
            folds.put(edge, b.cross(left).dot(right));
        }
        return folds;
    }

    private static Set<List<Integer>> hull(SphereNet net) {
        List<ThreeJs.Point> points = IntStream.range(0, net.nodeCount())
                .mapToObj(net::node)
                .map(v -> new ThreeJs.Point(v.x(), v.y(), v.z()))
                .toList();
        Set<List<Integer>> hull = new HashSet<>();
        ThreeJs.hull(points).forEach(e -> hull.add(List.of(e.from(), e.to())));
        return hull;
    }
}
